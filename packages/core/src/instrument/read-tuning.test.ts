import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, problemIn, valueIn } from '../given.ts';
import { formatMidi, parsePitch } from '../pitch/pitch.ts';
import { formatHelmholtz } from '../pitch/pitch-helmholtz.ts';
import { readTuning } from './read-tuning.ts';

/** What a text was taken for: its notation and its open strings. */
function taken(text: string): string {
  const { notation, tuning, guessed } = valueIn(readTuning(text));
  expect(guessed).toBe(notation === 'letters');
  return `${notation}: ${tuning.id}`;
}

// Middle C is C4 (American standard pitch notation; A4 is the 440 Hz of ISO 16:1975).
describe('octaves by number', () => {
  test.each([
    ['E2-A2-D3-G3-B3-E4'],
    ['E2,A2,D3,G3,B3,E4'],
    ['E2, A2, D3, G3, B3, E4'],
    ['e2 a2 d3 g3 b3 e4'],
    ['E2–A2–D3–G3–B3–E4'],
    ['E2A2D3G3B3E4'],
    [' E2 - A2 - D3 - G3 - B3 - E4 '],
  ])('of %s', (text) => {
    expect(taken(text)).toBe('scientific: E2-A2-D3-G3-B3-E4');
  });

  test.each([
    ['E♭2 A♭2 C♯3', 'Eb2-Ab2-C#3'],
    ['Fs1-Bb1', 'F#1-Bb1'],
    ['G3/G3-D4/D4', 'G3/G3-D4/D4'],
    ['C-1-G-1-D0', 'C-1-G-1-D0'],
    ['B0', 'B0'],
  ])('of %s are %s', (text, id) => {
    expect(taken(text)).toBe(`scientific: ${id}`);
  });
});

// Guitar and bass in Helmholtz notation: computed from its definition (see pitch-helmholtz.test.ts).
describe('octaves by case and strokes', () => {
  test.each([
    ["E A d g b e'", 'E2-A2-D3-G3-B3-E4'],
    ['E-A-d-g-b-e′', 'E2-A2-D3-G3-B3-E4'],
    ["E, A, d, g, b, e'", 'E2-A2-D3-G3-B3-E4'],
    ['E, A, D G', 'E1-A1-D2-G2'],
    ['E͵ A͵ D G', 'E1-A1-D2-G2'],
    [',E ,A D G', 'E1-A1-D2-G2'],
    ['EE AA D G', 'E1-A1-D2-G2'],
    ['E₁ A₁ D G', 'E1-A1-D2-G2'],
    ['B,, E, A, D G', 'B0-E1-A1-D2-G2'],
    ['E,A,D G', 'E1-A1-D2-G2'],
    ['E, A, D, G,', 'E1-A1-D1-G1'],
    ["g/g d'/d' a'/a' e''/e''", 'G3/G3-D4/D4-A4/A4-E5/E5'],
    ['g d¹ a¹ e²', 'G3-D4-A4-E5'],
    ["Bb eb' f♯'", 'Bb2-Eb4-F#4'],
  ])('of %s are %s', (text, id) => {
    expect(taken(text)).toBe(`helmholtz: ${id}`);
  });
});

describe('letters alone', () => {
  test.each([
    ['B E A D G B E', 'B1-E2-A2-D3-G3-B3-E4'],
    ['BEADGBE', 'B1-E2-A2-D3-G3-B3-E4'],
    ['b-e-a-d-g-b-e', 'B1-E2-A2-D3-G3-B3-E4'],
    ['B, E, A, D, G, B, E', 'B1-E2-A2-D3-G3-B3-E4'],
    ['DADGAD', 'D2-A2-D3-G3-A3-D4'],
    ['dadgad', 'D2-A2-D3-G3-A3-D4'],
    ['EADGBe', 'E2-A2-D3-G3-B3-E4'],
    ['EbAbDbGbBbEb', 'Eb2-Ab2-Db3-Gb3-Bb3-Eb4'],
    ['E♭A♭D♭G♭B♭E♭', 'Eb2-Ab2-Db3-Gb3-Bb3-Eb4'],
    ['Eb Ab Db Gb Bb Eb', 'Eb2-Ab2-Db3-Gb3-Bb3-Eb4'],
    ['C#F#BEADGBE', 'C#1-F#1-B1-E2-A2-D3-G3-B3-E4'],
    ['FsBEADGBE', 'F#1-B1-E2-A2-D3-G3-B3-E4'],
    ['GG DD AA EE', 'G2/G2-D3/D3-A3/A3-E4/E4'],
    ['G/G D/D', 'G3/G3-D4/D4'],
    ['D A d', 'D2-A2-D3'],
    ['E', 'E4'],
  ])('in %s are %s', (text, id) => {
    expect(taken(text)).toBe(`letters: ${id}`);
  });
});

describe('a text that may mean two things is told which was taken, and what else it may be', () => {
  test.each([
    ['E, A, D, G', 'letters E2-A2-D3-G3', 'helmholtz E1-A1-D1-G2'],
    ['E,A,D,G', 'letters E2-A2-D3-G3', 'helmholtz E1-A1-D1-G2'],
    ['C G d a', 'letters C3-G3-D4-A4', 'helmholtz C2-G2-D3-A3'],
    ['GG DD AA EE', 'letters G2/G2-D3/D3-A3/A3-E4/E4', 'helmholtz G1-D1-A1-E1'],
    ['eadgbe', 'letters E2-A2-D3-G3-B3-E4', 'letters E2-A2-D3-Gb3-E4'],
    ["C, G, d'", 'helmholtz C2-G2-D4', 'helmholtz C1-G1-D4'],
  ])('%s', (text, first, second) => {
    const { alternative, ...read } = valueIn(readTuning(text));
    expect([read, alternative].map((one) => `${one?.notation} ${one?.tuning.id}`)).toEqual([first, second]);
  });

  test.each(['E2-A2', "E A d g b e'", 'BEADGBE', 'EbAbDb', 'E A D G', 'a, b, c', 'D A d'])(
    'and one that may not, or sounds the same both ways, has no other: %s',
    (text) => {
      expect(valueIn(readTuning(text)).alternative).toBeUndefined();
    },
  );

  test('and letters run together go by the number of strings, where the instrument has one', () => {
    const read = (text: string) => valueIn(readTuning(text, { instrument: INSTRUMENTS.guitar }));
    expect(read('ebabdbgbbbeb').tuning.id).toBe('Eb2-Ab2-Db3-Gb3-Bb3-Eb4');
    expect(read('EADGbe').tuning.id).toBe('E2-A2-D3-G3-B3-E4');
    expect(read('eadgbe')).not.toHaveProperty('alternative');
  });
});

describe('a tuning is read as it is written', () => {
  const strings = fc.array(fc.record({ midi: fc.integer({ min: 12, max: 127 }), sharps: fc.boolean() }), {
    minLength: 2,
    maxLength: 14,
  });
  const pitchesOf = (given: readonly { readonly midi: number; readonly sharps: boolean }[]) =>
    given.map(({ midi, sharps }) => valueIn(parsePitch(formatMidi(midi, sharps))));

  test('in scientific notation', () => {
    fc.assert(
      fc.property(strings, fc.constantFrom('-', ' ', ', ', '–'), (given, between) => {
        const names = pitchesOf(given).map(({ name }) => name);
        const { notation, tuning } = valueIn(readTuning(names.join(between)));
        expect([notation, tuning.id]).toEqual(['scientific', names.join('-')]);
      }),
    );
  });

  test('in Helmholtz notation', () => {
    fc.assert(
      fc.property(strings, fc.constantFrom('-', ' '), (given, between) => {
        const pitches = pitchesOf(given);
        // Without any prime, and with commas at every gap or none, it would be letters.
        fc.pre(pitches.some(({ octave }) => octave >= 4));
        const text = pitches.map(formatHelmholtz).join(between);
        const read = valueIn(readTuning(text));
        const all = [read, read.alternative].map((one) => `${one?.notation} ${one?.tuning.id}`);
        expect(all).toContain(`helmholtz ${pitches.map(({ name }) => name).join('-')}`);
      }),
    );
  });
});

describe('a typed tuning is refused', () => {
  const ways =
    "open strings, low to high, in scientific (E2-A2-D3-G3-B3-E4), Helmholtz (E A d g b e') or letters (E A D G B E or EADGBE)";
  const scientific = 'a note and its octave (middle C is C4), such as E2, F#1 or Bb3';
  const letter = 'a letter from A to G, then b or # (or s for #), such as A, Bb, F#';
  const helmholtz = "a note in Helmholtz notation, such as E, (which is E1), E (E2), e (E3) or e' (E4)";
  const mixed = 'an octave number as at other strings here, such as E2: one notation for all strings';

  test.each([
    ['a letter past G', 'H9', 'tuning[0]', 'H9', scientific],
    ['an octave out of reach', 'E2-E11', 'tuning[1]', 'E11', scientific],
    ['a letter past G among letters', 'E-H-D', 'tuning[1]', 'H', letter],
    ['letters run together with one past G', 'EADGHE', 'tuning', 'EADGHE', ways],
    ['constructor', 'constructor', 'tuning', 'constructor', ways],
    ['__proto__', '__proto__', 'tuning', '__proto__', ways],
    ['numbers and none', 'E2 A D3', 'tuning[1]', 'A', mixed],
    ['numbers and strokes', "E2 A2 d'", 'tuning[2]', "d'", mixed],
    ['strokes below a small letter', 'c, d e', 'tuning[0]', 'c,', helmholtz],
    ['a comma by itself', 'E , A D', 'tuning[1]', ',', helmholtz],
    ['half a course', 'G/ D/D', 'tuning[0]', '', letter],
    ['a look-alike sharp', 'E F＃', 'tuning[1]', 'F＃', letter],
    ['a Cyrillic letter for A', 'EА', 'tuning', 'EА', ways],
  ])('where it has %s', (_what, text, field, value, expected) => {
    expect(problemIn(readTuning(text))).toEqual({ field, value, expected });
  });

  const count = (strings: number) =>
    `1 to 14 open strings, low to high, such as E2-A2-D3-G3-B3-E4; this has ${strings}`;

  test.each([
    ['', 0],
    ['   ', 0],
    ['---', 0],
    [Array(40).fill('E2').join('-'), 40],
    [Array(40).fill('E').join(' '), 40],
    ['E'.repeat(40), 40],
    [Array(15).fill("e'").join(' '), 15],
  ])('where it has no strings or too many: %s', (text, strings) => {
    const problem = problemIn(readTuning(text, { field: 'open' }));
    expect([problem.field, problem.expected]).toEqual(['open', count(strings)]);
  });

  test('where letters would climb beyond the last note that MIDI has', () => {
    const problem = problemIn(readTuning('C B A G F E D C B A G F E D'));
    expect(problem.expected).toBe(
      'strings that each lie above the one before and end by G9, or octaves (E2-A2-D3)',
    );
  });

  test.each([
    'E2-'.repeat(50_000),
    'E'.repeat(100_000),
    `${'b'.repeat(100_000)}x`,
    `E,${' '.repeat(100_000)}x`,
    'E,'.repeat(50_000),
    `E${"'".repeat(100_000)}`,
  ])('where it is very long, within a moment: %.5s', (text) => {
    const start = Date.now();
    expect(readTuning(text).ok).toBe(false);
    expect(Date.now() - start).toBeLessThan(2000);
  });
});
