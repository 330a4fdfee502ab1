import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, problemIn } from '../given.ts';
import { buildNeck, fretNumber, type Neck, type NeckString, openSlot } from './neck.ts';

function stringOf(neck: Neck, number: number): NeckString {
  const string = neck.strings[number - 1];
  if (string === undefined) throw new Error(`no string ${number}`);
  return string;
}

/** What a string sounds, as `fret=note number`, up to a slot. */
function soundsOf(neck: Neck, number: number, toSlot: number): string {
  const string = stringOf(neck, number);
  return string.midiBySlot
    .slice(0, toSlot + 1)
    .flatMap((midi, slot) => (midi < 0 ? [] : [`${fretNumber(neck, string, slot)}=${midi}`]))
    .join(' ');
}

describe('a neck', () => {
  test('counts strings from 1 at the highest-sounding side', () => {
    const neck = neckOf(INSTRUMENTS.guitar);
    expect(neck.strings.map(({ number, openMidi }) => [number, openMidi])).toEqual([
      [1, 64],
      [2, 59],
      [3, 55],
      [4, 50],
      [5, 45],
      [6, 40],
    ]);
  });

  test('has a semitone a fret, and its slots in equal temperament', () => {
    const neck = neckOf(INSTRUMENTS.guitar);
    expect(neck.slots).toHaveLength(23);
    expect(neck.slots[12]).toEqual({ fret: 12, semitones: 12, distanceMm: 324 });
    expect(soundsOf(neck, 6, 3)).toBe('0=40 1=41 2=42 3=43');
  });

  test.each([
    ['E1-A1-D2-G2', 4],
    ['B0-E1-A1-D2-G2-C3', 6],
    ['E2', 1],
  ])('takes a tuning typed by hand, %s, of %i strings', (openStrings, count) => {
    expect(neckOf(INSTRUMENTS.bass, {}, openStrings).strings).toHaveLength(count);
  });

  test('takes another number of frets', () => {
    expect(neckOf(INSTRUMENTS.guitar, { frets: 24 }).slots.at(-1)?.fret).toBe(24);
    expect(neckOf(INSTRUMENTS.guitar, { frets: 1 }).slots).toHaveLength(2);
    expect(neckOf(INSTRUMENTS.guitar, { frets: 36 }).slots).toHaveLength(37);
  });
});

describe('the open slot of a neck', () => {
  test.each([
    ['the nut', INSTRUMENTS.guitar, {}, 0],
    ['the capo', INSTRUMENTS.guitar, { capoFret: 3 }, 3],
    ['the nut, where a capo leaves strings out', INSTRUMENTS.guitar, { capoFret: 3, capoStrings: [1, 2] }, 0],
    ['the nut, whatever the short string', INSTRUMENTS.banjo, {}, 0],
    ['the capo, counting the frets that there are', INSTRUMENTS.dulcimer, { capoFret: 6.5 }, 7],
  ])('is that of %s', (_what, instrument, options, slot) => {
    expect(openSlot(neckOf(instrument, options))).toBe(slot);
  });
});

describe('a capo', () => {
  test('raises every string; frets keep the numbers of the whole neck', () => {
    const neck = neckOf(INSTRUMENTS.guitar, { capoFret: 2 });
    expect(neck.strings.map(({ openMidi }) => openMidi)).toEqual([66, 61, 57, 52, 47, 42]);
    expect(soundsOf(neck, 6, 4)).toBe('0=42 3=43 4=44');
    expect(stringOf(neck, 6).midiBySlot.slice(0, 2)).toEqual([-1, -1]);
  });

  test('on some strings leaves the others as they are', () => {
    const neck = neckOf(INSTRUMENTS.guitar, { capoFret: 2, capoStrings: [3, 4, 5] });
    expect(neck.strings.map(({ openMidi }) => openMidi)).toEqual([64, 59, 57, 52, 47, 40]);
    expect(soundsOf(neck, 5, 4)).toBe('0=47 3=48 4=49');
    expect(soundsOf(neck, 6, 4)).toBe('0=40 1=41 2=42 3=43 4=44');
  });

  test('says which strings it shortens', () => {
    expect(neckOf(INSTRUMENTS.guitar).capoStrings).toEqual([]);
    expect(neckOf(INSTRUMENTS.guitar, { capoStrings: [1] }).capoStrings).toEqual([]);
    expect(neckOf(INSTRUMENTS.guitar, { capoFret: 2 }).capoStrings).toEqual([1, 2, 3, 4, 5, 6]);
    expect(neckOf(INSTRUMENTS.guitar, { capoFret: 2, capoStrings: [5, 3, 4, 3] }).capoStrings).toEqual([
      3, 4, 5,
    ]);
    expect(neckOf(INSTRUMENTS.banjo, { capoFret: 2 }).capoStrings).toEqual([1, 2, 3, 4]);
  });
});

// The five-string banjo's drone begins at the fifth fret; tablature counts its frets from the nut of the
// long strings (common practice, no source).
describe('a short string', () => {
  test('is open at its start, 0, and its other frets have the numbers of the whole neck', () => {
    const neck = neckOf(INSTRUMENTS.banjo);
    expect(stringOf(neck, 5)).toMatchObject({ startSlot: 5, openMidi: 67 });
    expect(soundsOf(neck, 5, 8)).toBe('0=67 6=68 7=69 8=70');
    expect(soundsOf(neck, 1, 3)).toBe('0=62 1=63 2=64 3=65');
  });

  test('has no frets below its start', () => {
    expect(stringOf(neckOf(INSTRUMENTS.banjo), 5).midiBySlot.slice(0, 5)).toEqual([-1, -1, -1, -1, -1]);
  });

  test.each([
    [2, 67, '0=67 6=68 7=69'],
    [5, 67, '0=67 6=68 7=69'],
    [7, 69, '0=69 8=70'],
  ])('with a capo at fret %i is open at note number %i', (capoFret, openMidi, sounds) => {
    const neck = neckOf(INSTRUMENTS.banjo, { capoFret });
    expect(stringOf(neck, 5).openMidi).toBe(openMidi);
    expect(soundsOf(neck, 5, sounds.split(' ').length === 3 ? 7 : 8)).toBe(sounds);
  });

  test('is not counted where a tuning typed by hand has another number of strings', () => {
    const neck = neckOf(INSTRUMENTS.banjo, {}, 'D3-G3-B3-D4');
    expect(neck.strings.every(({ startSlot }) => startSlot === 0)).toBe(true);
  });

  test('keeps its start in another tuning of as many strings', () => {
    expect(stringOf(neckOf(INSTRUMENTS.banjo, {}, 'A4-E3-A3-D4-E4'), 5)).toMatchObject({
      startSlot: 5,
      openMidi: 69,
    });
  });
});

describe('partial frets', () => {
  const neck = neckOf(INSTRUMENTS.dulcimer);

  test('are the only ones there are, an added one called by its half', () => {
    expect(neck.slots.slice(0, 10).map(({ fret }) => fret)).toEqual([0, 1, 2, 3, 4, 5, 6, 6.5, 7, 8]);
    expect(soundsOf(neck, 3, 8)).toBe('0=50 1=52 2=54 3=55 4=57 5=59 6=60 6.5=61 7=62');
    expect(neck.slots.find(({ fret }) => fret === 7)?.distanceMm).toBe(350);
  });

  test('leave some notes out of the whole neck', () => {
    expect([...neck.pitchClasses].toSorted((a, b) => a - b)).toEqual([0, 1, 2, 4, 6, 7, 8, 9, 11]);
    expect(neckOf(INSTRUMENTS.guitar).pitchClasses.size).toBe(12);
  });

  test('take a capo where one of them is', () => {
    expect(neckOf(INSTRUMENTS.dulcimer, { capoFret: 6.5 }).strings.map(({ openMidi }) => openMidi)).toEqual([
      73, 68, 61,
    ]);
  });

  test('are cut at the number of frets', () => {
    expect(neckOf(INSTRUMENTS.dulcimer, { frets: 6 }).slots.at(-1)?.fret).toBe(6);
    expect(neckOf(INSTRUMENTS.dulcimer, { frets: 36 }).slots.at(-1)?.fret).toBe(16);
  });
});

describe('the tuning of a neck', () => {
  test("has the instrument's own id and name where it is one of those", () => {
    const [standard] = INSTRUMENTS.guitar.tunings;
    const guitar = {
      ...INSTRUMENTS.guitar,
      tunings: [{ ...standard, id: 'standard', name: 'Standard' }] as const,
    };
    expect(neckOf(guitar, {}, 'E2 A2 D3 G3 B3 E4').tuning).toBe(guitar.tunings[0]);
    expect(neckOf(guitar, {}, 'D2 A2 D3 G3 B3 E4').tuning.id).toBe('D2-A2-D3-G3-B3-E4');
  });
});

describe('a neck is refused', () => {
  const refuse = (instrument: (typeof INSTRUMENTS)[keyof typeof INSTRUMENTS], options: object) =>
    problemIn(buildNeck(instrument, instrument.tunings[0], options));

  test.each([[0], [-1], [1.5], [37], [Number.NaN], [Number.POSITIVE_INFINITY]])('with %d frets', (frets) => {
    expect(refuse(INSTRUMENTS.guitar, { frets })).toEqual({
      field: 'frets',
      value: String(frets),
      expected: 'a whole number of frets from 1 to 36',
    });
  });

  test('with fewer frets than the one at which its short string begins', () => {
    expect(refuse(INSTRUMENTS.banjo, { frets: 4 })).toEqual({
      field: 'frets',
      value: '4',
      expected: 'a whole number of frets from 5 to 36',
    });
    expect(neckOf(INSTRUMENTS.banjo, { frets: 5 }).slots).toHaveLength(6);
  });

  test.each([[-1], [0.5], [22], [99], [Number.NaN]])('with a capo at fret %d of 22', (capoFret) => {
    expect(refuse(INSTRUMENTS.guitar, { capoFret })).toEqual({
      field: 'capo',
      value: String(capoFret),
      expected: 'a fret of this neck from 0 (none) to 21',
    });
  });

  test.each([[6.25], [8.5], [16]])('with a capo at fret %d of a dulcimer', (capoFret) => {
    expect(refuse(INSTRUMENTS.dulcimer, { capoFret })).toEqual({
      field: 'capo',
      value: String(capoFret),
      expected: 'a fret of this neck from 0 (none) to 15',
    });
  });
});
