import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { formatMidi } from '../pitch/pitch.ts';
import { transposeTuning } from './transpose.ts';
import { openStringNames, parseTuning } from './tuning.ts';

const GUITAR = 'E2-A2-D3-G3-B3-E4';
const moved = (text: string, semitones: number): string =>
  valueIn(transposeTuning(valueIn(parseTuning(text)), semitones)).name;

// The lower tunings of a guitar by their usual names: E flat, D, C sharp, C and B (common practice, no source).
describe('a tuning moved as a whole', () => {
  test.each([
    [GUITAR, 0, 'E2 A2 D3 G3 B3 E4'],
    [GUITAR, -1, 'Eb2 Ab2 Db3 Gb3 Bb3 Eb4'],
    [GUITAR, -2, 'D2 G2 C3 F3 A3 D4'],
    [GUITAR, -3, 'C#2 F#2 B2 E3 G#3 C#4'],
    [GUITAR, -4, 'C2 F2 Bb2 Eb3 G3 C4'],
    [GUITAR, -5, 'B1 E2 A2 D3 F#3 B3'],
    [GUITAR, 1, 'F2 Bb2 Eb3 Ab3 C4 F4'],
    [GUITAR, 2, 'F#2 B2 E3 A3 C#4 F#4'],
    [GUITAR, 5, 'A2 D3 G3 C4 E4 A4'],
    [GUITAR, 12, 'E3 A3 D4 G4 B4 E5'],
    ['Eb2-Ab2-Db3-Gb3-Bb3-Eb4', 1, 'E2 A2 D3 G3 B3 E4'],
    ['G4-C4-E4-A4', 2, 'A4 D4 F#4 B4'],
    ['Cb2-F##2', -12, 'Cb1 F##1'],
  ])('%s by %i semitones is %s', (text, semitones, name) => {
    expect(moved(text, semitones)).toBe(name);
  });

  test('takes the plainest names where one interval would give C flat or B sharp', () => {
    expect(moved('E2-G#2-C3', -1)).toBe('D#2 G2 B2');
    expect(moved('F2-F#2-D3', -1)).toBe('E2 F2 C#3');
    expect(moved('F2-F#2-Bb2-D3-Eb3', -1)).toBe('E2 F2 A2 Db3 D3');
  });

  test('moves every string of a course', () => {
    const tuning = valueIn(transposeTuning(valueIn(parseTuning('G3/G4-C4/C4')), -2));
    expect(tuning.id).toBe('F3/F4-Bb3/Bb3');
  });

  const tunings = fc
    .array(fc.record({ midi: fc.integer({ min: 0, max: 127 }), sharps: fc.boolean() }), {
      minLength: 1,
      maxLength: 14,
    })
    .map((strings) =>
      valueIn(parseTuning(strings.map(({ midi, sharps }) => formatMidi(midi, sharps)).join('-'))),
    );

  test('sounds as many semitones away, and back again as before', () => {
    fc.assert(
      fc.property(tunings, fc.integer({ min: -127, max: 127 }), (tuning, semitones) => {
        const midis = tuning.courses.map(([{ midi }]) => midi);
        const isPossible = midis.every((midi) => midi + semitones >= 0 && midi + semitones <= 127);
        const result = transposeTuning(tuning, semitones);
        expect(result.ok).toBe(isPossible);
        if (!result.ok) return;
        expect(result.value.courses.map(([{ midi }]) => midi)).toEqual(midis.map((midi) => midi + semitones));
        const back = valueIn(transposeTuning(result.value, -semitones));
        expect(back.courses.map(([{ midi }]) => midi)).toEqual(midis);
      }),
    );
  });

  test('has names that are read back, with one accidental at most', () => {
    fc.assert(
      fc.property(tunings, fc.integer({ min: -40, max: 40 }), (tuning, semitones) => {
        const result = transposeTuning(tuning, semitones);
        if (!result.ok) return;
        expect(parseTuning(result.value.id)).toEqual({ ok: true, value: result.value });
        for (const name of openStringNames(result.value)) expect(name).toMatch(/^[A-G][b#]?-?\d$/);
      }),
    );
  });

  test('by octaves keeps its names', () => {
    fc.assert(
      fc.property(tunings, fc.integer({ min: -4, max: 4 }), (tuning, octaves) => {
        const result = transposeTuning(tuning, 12 * octaves);
        if (!result.ok) return;
        const letters = (name: string): string => name.replace(/-?\d$/, '');
        expect(openStringNames(result.value).map(letters)).toEqual(openStringNames(tuning).map(letters));
      }),
    );
  });
});

describe('moving a tuning is refused', () => {
  const tuning = valueIn(parseTuning(GUITAR));

  test.each([[-41], [64], [0.5], [Number.NaN], [Number.NEGATIVE_INFINITY]])(
    'by %d semitones',
    (semitones) => {
      expect(problemIn(transposeTuning(tuning, semitones))).toEqual({
        field: 'transpose',
        value: String(semitones),
        expected:
          'a whole number of semitones from -40 to 63, so that E2 A2 D3 G3 B3 E4 stays within MIDI notes 0 to 127',
      });
    },
  );

  test('beyond its last octave either way, and no sooner', () => {
    expect(moved(GUITAR, -40)).toBe('C-1 F-1 Bb-1 Eb0 G0 C1');
    expect(moved(GUITAR, 63)).toBe('G7 C8 F8 Bb8 D9 G9');
  });
});
