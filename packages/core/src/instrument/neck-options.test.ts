import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, problemIn } from '../given.ts';
import { buildNeck, type Neck, type NeckOptions, stringFretDistanceMm } from './neck.ts';

const lengthsOf = (neck: Neck) => neck.strings.map(({ scaleLengthMm }) => scaleLengthMm);

describe('a scale length', () => {
  test('is that of the instrument, on every string', () => {
    expect(neckOf(INSTRUMENTS.bass).scaleLengthMm).toBe(863.6);
    expect(lengthsOf(neckOf(INSTRUMENTS.bass))).toEqual([863.6, 863.6, 863.6, 863.6]);
  });

  test.each([200, 762, 1200])('of %i mm may stand for it, and moves the frets', (scaleLengthMm) => {
    const neck = neckOf(INSTRUMENTS.bass, { scaleLengthMm });
    expect(neck.scaleLengthMm).toBe(scaleLengthMm);
    expect(lengthsOf(neck)).toEqual([scaleLengthMm, scaleLengthMm, scaleLengthMm, scaleLengthMm]);
    expect(neck.slots[12]?.distanceMm).toBe(scaleLengthMm / 2);
    expect(neck.strings[0]?.midiBySlot).toEqual(neckOf(INSTRUMENTS.bass).strings[0]?.midiBySlot);
  });
});

// Fanned frets are told by the lengths of the two outer strings (common practice, no source); frets stay
// straight only where the strings between lie evenly between them.
describe('fanned frets', () => {
  const neck = neckOf(INSTRUMENTS.sevenString, { scaleLengthsMm: { bass: 686, treble: 648 } });

  test('give each string its own length, evenly from string 1 to the bass', () => {
    for (const [at, mm] of [648, 654.333, 660.667, 667, 673.333, 679.667, 686].entries()) {
      expect(neck.strings[at]?.scaleLengthMm).toBeCloseTo(mm, 3);
    }
    expect([neck.strings[0]?.scaleLengthMm, neck.strings[6]?.scaleLengthMm]).toEqual([648, 686]);
  });

  test('are measured for the hand on the longest string, whichever side it is on', () => {
    expect([neck.scaleLengthMm, neck.slots[12]?.distanceMm]).toEqual([686, 343]);
    const reversed = neckOf(INSTRUMENTS.guitar, { scaleLengthsMm: { bass: 610, treble: 640 } });
    expect([reversed.scaleLengthMm, reversed.slots[12]?.distanceMm]).toEqual([640, 320]);
  });

  // L · (1 − 2^(−n/12)) on each string's own length.
  test('lie on each string where its own length puts them', () => {
    const [treble, bass] = [neck.strings[0], neck.strings[6]];
    const twelfth = neck.slots[12];
    if (!treble || !bass || !twelfth) throw new Error('no such string or fret');
    expect(stringFretDistanceMm(treble, twelfth)).toBe(324);
    expect(stringFretDistanceMm(bass, twelfth)).toBe(343);
  });

  test('of a single string are those of its length', () => {
    const single = neckOf(INSTRUMENTS.guitar, { scaleLengthsMm: { bass: 700, treble: 600 } }, 'E2');
    expect(lengthsOf(single)).toEqual([700]);
  });
});

describe('an option of a neck is refused', () => {
  /** As it may come from outside, where no type is checked. */
  const refuse = (options: object, instrument = INSTRUMENTS.guitar) =>
    problemIn(buildNeck(instrument, instrument.tunings[0], options as NeckOptions));
  const { NaN: nan, POSITIVE_INFINITY: infinity } = Number;

  test.each([
    [199.9, '199.9'],
    [1200.1, '1200.1'],
    [0, '0'],
    [-648, '-648'],
    [nan, 'NaN'],
    [infinity, 'Infinity'],
    ['648', '"648"'],
    [null, 'null'],
  ])('where a scale length is %j', (length, value) => {
    const expected = 'a length in millimetres from 200 to 1200';
    expect(refuse({ scaleLengthMm: length })).toEqual({ field: 'scaleLengthMm', value, expected });
    expect(refuse({ scaleLengthsMm: { bass: length, treble: 648 } })).toEqual({
      field: 'scaleLengthsMm.bass',
      value,
      expected,
    });
    expect(refuse({ scaleLengthsMm: { bass: 648, treble: length } })).toEqual({
      field: 'scaleLengthsMm.treble',
      value,
      expected,
    });
  });

  test('where there are both one length and two', () => {
    expect(refuse({ scaleLengthMm: 650, scaleLengthsMm: { bass: 686, treble: 648 } })).toEqual({
      field: 'scaleLengthMm',
      value: '650',
      expected: 'one length or the lengths of the outer strings, not both',
    });
  });

  test.each([
    ['a string that is not there', [1, 7], 'capoStrings[1]', '7'],
    ['string 0', [0], 'capoStrings[0]', '0'],
    ['half a string', [1.5], 'capoStrings[0]', '1.5'],
    ['no number', [nan], 'capoStrings[0]', 'NaN'],
    ['a number in words', ['1'], 'capoStrings[0]', '"1"'],
    ['no list', 3, 'capoStrings', '3'],
    ['a list in words', '1,2', 'capoStrings', '"1,2"'],
  ])('where a capo covers %s', (_what, capoStrings, field, value) => {
    expect(refuse({ capoFret: 2, capoStrings })).toEqual({
      field,
      value,
      expected: 'strings of this neck by number, 1 to 6',
    });
  });

  test('where a capo covers no string', () => {
    expect(refuse({ capoFret: 2, capoStrings: [] })).toEqual({
      field: 'capoStrings',
      value: '',
      expected: 'at least one string that reaches below fret 2',
    });
  });

  test('where a capo lies on a short string alone, below its beginning', () => {
    const { field, value } = problemIn(
      buildNeck(INSTRUMENTS.banjo, INSTRUMENTS.banjo.tunings[0], { capoFret: 2, capoStrings: [5] }),
    );
    expect([field, value]).toEqual(['capoStrings', '5']);
  });

  test.each([
    [{ frets: '22' }, 'frets', '"22"'],
    [{ frets: null }, 'frets', 'null'],
    [{ capoFret: '2' }, 'capo', '"2"'],
    [{ capoFret: infinity }, 'capo', 'Infinity'],
  ])('where a number is none: %j', (options, field, value) => {
    const problem = refuse(options);
    expect([problem.field, problem.value]).toEqual([field, value]);
  });

  test.each([0, 15])('where the tuning has %i strings', (count) => {
    const [standard] = INSTRUMENTS.guitar.tunings;
    const courses = Array.from({ length: count }, () => standard.courses[0] ?? []);
    const problem = problemIn(buildNeck(INSTRUMENTS.guitar, { ...standard, courses } as typeof standard));
    expect(problem).toEqual({
      field: 'tuning',
      value: standard.name,
      expected: `1 to 14 open strings, low to high, such as E2-A2-D3-G3-B3-E4; this has ${count}`,
    });
  });
});
