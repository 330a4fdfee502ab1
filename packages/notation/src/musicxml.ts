/**
 * Pieces as MusicXML 4.0 (W3C Music Notation Community Group): one part with a staff and a tablature staff
 * of the same notes. Pitches sound; an octave clef says where they are written. There is no key signature:
 * every accidental stands at its note. The count-in is left to whoever counts.
 */
import { fail, type Neck, type Piece, type Result, succeed } from '@stillroot/core';
import { refuseProgram } from './midi-program.ts';
import { measureElement, type Score, type StaffClef } from './musicxml-measure.ts';
import { escapeXml, forAnyFont } from './neck-svg-text.ts';
import { tabStaff } from './tab-staff.ts';
import { writtenBars } from './written-bars.ts';
import { writtenPitch } from './written-pitch.ts';

/** Notes keep their seven letters, or are spelled for the eye. */
export type Spelling = 'strict' | 'readable';

/** What a score is called, and how its instrument is written and sounds. */
export interface MusicXmlOptions {
  readonly title: string;
  readonly clef: StaffClef;
  /** General MIDI level 1, counted from 0. */
  readonly midiProgram: number;
  /** An id of MusicXML's list of sounds: `pluck.guitar`. */
  readonly musicXmlSound: string;
  /** Strict where absent. */
  readonly spelling?: Spelling;
}

const HEAD = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">
<score-partwise version="4.0">`;

/**
 * A piece as a MusicXML document. Refused where a note lies outside the octaves 0 to 9, which are all that
 * MusicXML has, or where there is no such program.
 * @param neck on which the piece is played
 */
export function musicXml(piece: Piece, neck: Neck, options: MusicXmlOptions): Result<string> {
  const { clef, midiProgram, spelling = 'strict' } = options;
  const refusal = refuseProgram(midiProgram);
  if (refusal) return refusal;
  const score: Score = { piece, clef, tab: tabStaff(neck), pitchOf: speller(piece, spelling) };
  const written = [...score.tab.tuning, ...piece.notes.map(score.pitchOf)];
  if (!written.every(({ octave }) => octave >= 0 && octave <= 9)) {
    return fail('tuning', neck.tuning.name, { kind: 'musicxml-octaves' });
  }
  const bars = writtenBars(piece);
  const measures = bars.map((bar, at) => measureElement(score, bar, at, bars.length));
  const parts = [HEAD, heading(neck, options), '<part id="P1">', ...measures, '</part>', '</score-partwise>'];
  return succeed(`${parts.join('\n')}\n`);
}

function speller({ sections }: Piece, spelling: Spelling): Score['pitchOf'] {
  const scales = new Map(sections.map(({ modeIndex, scale }) => [modeIndex, scale]));
  return ({ note, degree, modeIndex, midi }) => {
    const readable = spelling === 'readable' ? scales.get(modeIndex)?.readable[degree - 1] : undefined;
    return writtenPitch(readable ?? note, midi);
  };
}

function heading({ instrument }: Neck, { title, midiProgram, musicXmlSound }: MusicXmlOptions): string {
  const name = escapeXml(instrument.name);
  return [
    `<work><work-title>${escapeXml(forAnyFont(title))}</work-title></work>`,
    '<identification><encoding><software>Stillroot</software>',
    '<supports element="accidental" type="yes"/><supports element="beam" type="yes"/>',
    '</encoding></identification>',
    `<part-list><score-part id="P1"><part-name>${name}</part-name>`,
    `<score-instrument id="P1-I1"><instrument-name>${name}</instrument-name>`,
    `<instrument-sound>${escapeXml(musicXmlSound)}</instrument-sound></score-instrument>`,
    '<midi-instrument id="P1-I1"><midi-channel>1</midi-channel>',
    `<midi-program>${midiProgram + 1}</midi-program></midi-instrument>`,
    '</score-part></part-list>',
  ].join('');
}
