import { type Neck, type Piece, type PlayedNote, quartersPerMinute, toAscii } from '@stillroot/core';
import { musicXml } from '@stillroot/notation';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unwrap } from '../reference/in-core.ts';
import { type Played, pieces } from './any-piece.ts';
import { EXPORTS } from './export-count.ts';
import { openSchema } from './musicxml-schema.ts';
import { type ReadNote, type ReadScore, readMusicXml } from './read-musicxml.ts';

const checkAgainstSchema = openSchema();

function textOf(
  { neck, piece, midiProgram, clef }: Played,
  spelling: 'strict' | 'readable' = 'strict',
): string {
  const options = { title: 'Any <♯> & 𝄫', clef, midiProgram, musicXmlSound: 'pluck.guitar', spelling };
  return unwrap(musicXml(piece, neck, options));
}

const timesOf = (notes: readonly Pick<ReadNote, 'startTicks' | 'durationTicks' | 'midi'>[], from = 0) =>
  notes.map(({ startTicks, durationTicks, midi }) => [startTicks - from, durationTicks, midi]);

/** The fret on the neck that the number on the tablature staff stands for. */
function fretOnNeck(neck: Neck, score: ReadScore, { string, fret, fretName }: ReadNote): number {
  if (fret === undefined) return Number(fretName);
  if (fret === 0) return 0;
  const isCapoItself = score.capo === 0 && fret === neck.capoFret && neck.capoStrings.includes(string ?? 0);
  return isCapoItself ? 0 : fret + score.capo;
}

/** Whether a string's frets count semitones from the nut or the capo: not where frets are missing, nor on a short string. */
function countsSemitones({ strings, slots, capoStrings }: Neck, string: number): boolean {
  const isLong = strings[string - 1]?.startSlot === 0 || capoStrings.includes(string);
  return isLong && slots.every(({ fret, semitones }) => fret === semitones);
}

function expectPlaces(neck: Neck, score: ReadScore, notes: readonly PlayedNote[]): void {
  for (const [at, { string, fret, finger }] of notes.entries()) {
    const read = score.tab[at];
    if (read === undefined) throw new Error('a note is missing');
    expect(read.string).toBe(string);
    expect(fretOnNeck(neck, score, read)).toBe(fret);
    expect(score.staff[at]?.finger).toBe(finger);
    if (countsSemitones(neck, string)) {
      expect((score.openMidi[string - 1] ?? Number.NaN) + score.capo + (read.fret ?? Number.NaN)).toBe(
        read.midi,
      );
    }
  }
}

function expectForm({ piece, clef, midiProgram, neck }: Played, score: ReadScore): void {
  const { beats, unit } = piece.timing.meter;
  expect(score.meter).toBe(`${beats}/${unit}`);
  expect(score.tempo).toBeCloseTo(quartersPerMinute(piece.timing), 9);
  expect(score.clefs).toEqual([`${clef.sign} ${clef.line} ${clef.octaveChange}`, 'TAB 5 0']);
  expect(score.midiProgram).toBe(midiProgram + 1);
  expect(score.openMidi).toHaveLength(neck.strings.length);
  expect(score.totalTicks).toBe(piece.totalTicks - piece.countInTicks);
  expect(
    score.marks.map(({ ticks, mark, name }) => [
      ticks + piece.countInTicks,
      Number(mark),
      toAscii(name.replaceAll('×', '##')),
    ]),
  ).toEqual(piece.sections.map(({ startTicks, modeIndex, name }) => [startTicks, modeIndex + 1, name]));
  expect(score.ends.map(({ ticks, style }) => [ticks + piece.countInTicks, style])).toEqual(
    piece.sections.map(({ endTicks }, at) => [
      endTicks,
      at === piece.sections.length - 1 ? 'light-heavy' : 'light-light',
    ]),
  );
}

describe('every MusicXML file', () => {
  test('is read by another library as what core said, on both staves', () => {
    fc.assert(
      fc.property(fc.noBias(pieces), (played) => {
        const { neck, piece } = played;
        const score = readMusicXml(textOf(played));
        expect(score.faults).toEqual([]);
        const expected = timesOf(piece.notes, piece.countInTicks);
        expect(timesOf(score.staff)).toEqual(expected);
        expect(timesOf(score.tab)).toEqual(expected);
        expect(score.staff.map(({ name }) => name)).toEqual(piece.notes.map(({ note }) => note));
        expectPlaces(neck, score, piece.notes);
        expectForm(played, score);
      }),
      { numRuns: EXPORTS },
    );
  }, 600_000);

  test('in the readable spelling sounds the same, with one accidental a note at the most', () => {
    fc.assert(
      fc.property(fc.noBias(pieces), (played) => {
        const { piece } = played;
        const score = readMusicXml(textOf(played, 'readable'));
        expect(timesOf(score.staff)).toEqual(timesOf(piece.notes, piece.countInTicks));
        expect(score.staff.map(({ name }) => name)).toEqual(readableNames(piece));
      }),
      { numRuns: EXPORTS / 4 },
    );
  }, 600_000);

  test.skipIf(!checkAgainstSchema)(
    'holds against the schema of MusicXML 4.0',
    () => {
      fc.assert(
        fc.property(fc.noBias(pieces), (played) => {
          checkAgainstSchema?.(textOf(played));
        }),
        { numRuns: EXPORTS },
      );
    },
    600_000,
  );
});

function readableNames({ notes, sections }: Piece): readonly (string | undefined)[] {
  return notes.map(({ degree, modeIndex }) => {
    const section = sections.find((one) => one.modeIndex === modeIndex);
    return section?.scale.readable[degree - 1];
  });
}

describe('the check against the schema', () => {
  test.skipIf(!checkAgainstSchema)('refuses elements in another order', () => {
    const [played] = fc.sample(pieces, { numRuns: 1, seed: 1 });
    if (!played) throw new Error('no piece');
    const text = textOf(played);
    expect(() => checkAgainstSchema?.(text)).not.toThrow();
    const broken = text
      .replace('<staves>2</staves>', '')
      .replace('</clef><staff', '</clef><staves>2</staves><staff');
    expect(broken).not.toBe(text);
    expect(() => checkAgainstSchema?.(broken)).toThrow(/staves/);
  });
});
