import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, STEPS, scaleOf } from '../given.ts';
import { openSlot } from '../instrument/neck.ts';
import {
  type Area,
  areasOfWidth,
  climbLength,
  climbLine,
  mapArea,
  markArea,
  midiOfStep,
  newMarks,
  rootsIn,
} from './area.ts';

const { guitar, banjo } = INSTRUMENTS;
const aMinor = scaleOf('A', STEPS.aeolian);

describe('the areas of a neck', () => {
  test('of five frets are every stretch from the nut to the last fret', () => {
    const areas = areasOfWidth(neckOf(guitar), 5, 'near-the-nut');
    expect(areas).toHaveLength(19);
    expect([areas[0], areas.at(-1)]).toEqual([
      { fromSlot: 0, toSlot: 4 },
      { fromSlot: 18, toSlot: 22 },
    ]);
  });

  test('begin at the capo where there is one on every string', () => {
    expect(openSlot(neckOf(guitar, { capoFret: 3 }))).toBe(3);
    expect(areasOfWidth(neckOf(guitar, { capoFret: 3 }), 5, 'near-the-nut')[0]).toEqual({
      fromSlot: 3,
      toSlot: 7,
    });
    expect(openSlot(neckOf(guitar, { capoFret: 3, capoStrings: [1, 2] }))).toBe(0);
  });

  test('begin above the nut where no string may be open', () => {
    expect(areasOfWidth(neckOf(guitar), 5, 'never')[0]).toEqual({ fromSlot: 1, toSlot: 5 });
    expect(areasOfWidth(neckOf(guitar), 5, 'anywhere')[0]).toEqual({ fromSlot: 0, toSlot: 4 });
  });

  test('wider than the neck are none', () => {
    expect(areasOfWidth(neckOf(guitar, { frets: 3 }), 5, 'near-the-nut')).toEqual([]);
  });
});

describe('the map of an area', () => {
  test('takes in the open strings only at the nut', () => {
    const atNut = mapArea(neckOf(guitar), { fromSlot: 0, toSlot: 4 }, 'near-the-nut');
    expect(atNut[40]).toEqual([{ string: 6, slot: 0, isOpen: true }]);
    expect(atNut[59]).toEqual([
      { string: 3, slot: 4, isOpen: false },
      { string: 2, slot: 0, isOpen: true },
    ]);
    expect(mapArea(neckOf(guitar), { fromSlot: 1, toSlot: 4 }, 'near-the-nut')[40]).toBeUndefined();
  });

  test('takes in the open strings anywhere, or nowhere, where that is asked', () => {
    const openIn = (area: Area, use: 'anywhere' | 'never') =>
      mapArea(neckOf(guitar), area, use)
        .flatMap((options) => options ?? [])
        .filter(({ isOpen }) => isOpen);
    expect(openIn({ fromSlot: 5, toSlot: 8 }, 'anywhere')).toHaveLength(6);
    expect(openIn({ fromSlot: 0, toSlot: 4 }, 'never')).toEqual([]);
  });

  test('is marked where it has a note', () => {
    const marks = newMarks();
    for (const use of ['near-the-nut', 'anywhere', 'never'] as const) {
      for (const area of [
        { fromSlot: 0, toSlot: 4 },
        { fromSlot: 5, toSlot: 9 },
      ]) {
        markArea(neckOf(banjo), area, use, marks);
        const map = mapArea(neckOf(banjo), area, use);
        expect([...marks].map(Boolean)).toEqual([...marks.keys()].map((midi) => map[midi] !== undefined));
      }
    }
  });

  test('has every note as often as it lies there', () => {
    const map = mapArea(neckOf(guitar), { fromSlot: 5, toSlot: 9 }, 'near-the-nut');
    expect(map.flatMap((options) => options ?? [])).toHaveLength(6 * 5);
    expect(map[64]).toEqual([
      { string: 3, slot: 9, isOpen: false },
      { string: 2, slot: 5, isOpen: false },
    ]);
  });

  test('has no stopped note of a short string at or below its start', () => {
    const map = mapArea(neckOf(banjo), { fromSlot: 0, toSlot: 6 }, 'near-the-nut');
    const onFifth = map.flatMap((options) => options ?? []).filter(({ string }) => string === 5);
    expect(onFifth).toEqual([
      { string: 5, slot: 5, isOpen: true },
      { string: 5, slot: 6, isOpen: false },
    ]);
  });
});

describe('a climb', () => {
  const map = mapArea(neckOf(guitar), { fromSlot: 5, toSlot: 8 }, 'near-the-nut');

  test('goes on as long as the next note is in the area', () => {
    const marks = newMarks();
    markArea(neckOf(guitar), { fromSlot: 5, toSlot: 8 }, 'near-the-nut', marks);
    expect(rootsIn(marks, aMinor)).toEqual([45, 57, 69]);
    // A2 to A3; the B above lies at fret 4 or 9.
    expect(climbLength(marks, aMinor, 45)).toBe(8);
    expect(climbLength(marks, aMinor, 69)).toBe(3);
    expect(climbLength(marks, aMinor, 44)).toBe(0);
    // From the G below the A, which is not there, and from the third degree, C.
    expect(climbLength(marks, aMinor, 45, -1)).toBe(0);
    expect(climbLength(marks, aMinor, 45, 2)).toBe(6);
  });

  test('is a line of the places of its notes', () => {
    const line = climbLine(map, aMinor, 45, 3);
    expect(line).toEqual([
      { options: [{ string: 6, slot: 5, isOpen: false }], holdsHand: false },
      { options: [{ string: 6, slot: 7, isOpen: false }], holdsHand: false },
      { options: [{ string: 6, slot: 8, isOpen: false }], holdsHand: false },
    ]);
    expect(climbLine(map, aMinor, 45, 2, 1)).toEqual(line.slice(1));
  });

  test.each([
    [0, 45],
    [2, 48],
    [6, 55],
    [7, 57],
    [16, 72],
    [-1, 43],
    [-7, 33],
  ])('of A minor from A2 has, %i steps from there, note number %i', (step, midi) => {
    expect(midiOfStep(aMinor, 45, step)).toBe(midi);
  });
});
