/**
 * Playing: what a query asks of a piece, and the piece as files.
 */
import { modeEntryOf } from '@stillroot/catalog';
import type {
  Meter,
  NoteValue,
  Pattern,
  Piece,
  PlayOptions,
  Problem,
  Result,
  Scale,
  Style,
} from '@stillroot/core';
import { midiFile, musicXml, type Spelling, timingText } from '@stillroot/notation';
import { ProblemReply } from '../problem-reply.ts';
import { type AskedNeck, orRefuse } from '../resolve.ts';

/** What may be asked of a piece and its files. */
export interface PlayQuery {
  readonly pattern: Pattern;
  readonly value: NoteValue;
  readonly tempo: number;
  readonly meter: Meter;
  readonly bars?: number | undefined;
  readonly countIn: number;
  readonly repeats: number;
  readonly rest: number;
  readonly drone: boolean;
  /** Whether chords sound, or the degrees on which they stand. */
  readonly vamp: boolean | readonly number[];
  readonly seed: number;
  readonly spelling: Spelling;
}

/** What a query asks of a piece, as core takes it. */
export function playOptions(query: PlayQuery): PlayOptions {
  const { pattern, value, tempo, meter, bars, countIn, repeats, rest, vamp, seed } = query;
  return {
    pattern,
    noteValue: value,
    tempoBpm: tempo,
    meter,
    countInBars: countIn,
    repeats,
    restBeats: rest,
    seed,
    ...(bars !== undefined && { bars }),
    ...(typeof vamp !== 'boolean' && { vampDegrees: vamp }),
  };
}

/** Root and mode, under the name by which the mode is known. */
export function knownName({ root, mode }: Scale): string {
  return `${root.name} ${modeEntryOf(mode).name}`;
}

/** What a piece's files are called, and about. */
export interface Titles {
  readonly title: string;
  /** What there is to say about it, a line each. */
  readonly remarks: readonly string[];
}

/** A piece as a Standard MIDI File. */
export function midiOf(piece: Piece, asked: AskedNeck, query: PlayQuery, titles: Titles): Uint8Array {
  const { name, midiProgram } = asked.instrument;
  const remarks = [...titles.remarks, timingText(piece)];
  const { title } = titles;
  const { drone, vamp } = query;
  return orUnplayable(
    midiFile(piece, { title, trackName: name, midiProgram, drone, vamp: vamp !== false, remarks }),
  );
}

/** A piece as MusicXML. */
export function musicXmlOf(piece: Piece, asked: AskedNeck, query: PlayQuery, { title }: Titles): string {
  const { clef, midiProgram, musicXmlSound } = asked.instrument;
  const { spelling } = query;
  return orUnplayable(musicXml(piece, asked.neck, { title, clef, midiProgram, musicXmlSound, spelling }));
}

/** Whether there is something to be played as it was asked for, and what there is instead. */
export interface Playable {
  readonly isPlayable: boolean;
  readonly style: Style;
  readonly alternative: { readonly style: Style; readonly fret?: number } | undefined;
}

/**
 * A piece; a problem where the parameters are wrong, or where there is nothing to be played: it names what
 * could be.
 */
export function pieceIn(made: Result<Piece>, { isPlayable, style, alternative }: Playable): Piece {
  if (isPlayable) return orRefuse(made);
  if (!alternative) return orUnplayable(made);
  const at = alternative.fret === undefined ? ' without a fret' : `&fret=${alternative.fret}`;
  const expected = `style=${alternative.style}${at}, which can be played`;
  return orUnplayable(made, [{ field: 'style', value: style, expected }]);
}

function orUnplayable<T>(result: Result<T>, more: readonly Problem[] = []): T {
  if (result.ok) return result.value;
  throw new ProblemReply('cannotBePlayed', [result.problem, ...more]);
}
