import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, STEPS, scaleOf } from '../given.ts';
import { areasOfWidth, climbLength, climbLine, mapArea, midiOfStep, openSlot, rootsIn } from './area.ts';

const { guitar, banjo } = INSTRUMENTS;
const aMinor = scaleOf('A', STEPS.aeolian);

describe('the areas of a neck', () => {
  test('of five frets are every stretch from the nut to the last fret', () => {
    const areas = areasOfWidth(neckOf(guitar), 5);
    expect(areas).toHaveLength(19);
    expect([areas[0], areas.at(-1)]).toEqual([
      { fromSlot: 0, toSlot: 4 },
      { fromSlot: 18, toSlot: 22 },
    ]);
  });

  test('begin at the capo where there is one on every string', () => {
    expect(openSlot(neckOf(guitar, { capoFret: 3 }))).toBe(3);
    expect(areasOfWidth(neckOf(guitar, { capoFret: 3 }), 5)[0]).toEqual({ fromSlot: 3, toSlot: 7 });
    expect(openSlot(neckOf(guitar, { capoFret: 3, capoStrings: [1, 2] }))).toBe(0);
  });

  test('wider than the neck are none', () => {
    expect(areasOfWidth(neckOf(guitar, { frets: 3 }), 5)).toEqual([]);
  });
});

describe('the map of an area', () => {
  test('takes in the open strings only at the nut', () => {
    const atNut = mapArea(neckOf(guitar), { fromSlot: 0, toSlot: 4 });
    expect(atNut[40]).toEqual([{ string: 6, slot: 0, isOpen: true }]);
    expect(atNut[59]).toEqual([
      { string: 3, slot: 4, isOpen: false },
      { string: 2, slot: 0, isOpen: true },
    ]);
    expect(mapArea(neckOf(guitar), { fromSlot: 1, toSlot: 4 })[40]).toBeUndefined();
  });

  test('has every note as often as it lies there', () => {
    const map = mapArea(neckOf(guitar), { fromSlot: 5, toSlot: 9 });
    expect(map.flatMap((options) => options ?? [])).toHaveLength(6 * 5);
    expect(map[64]).toEqual([
      { string: 3, slot: 9, isOpen: false },
      { string: 2, slot: 5, isOpen: false },
    ]);
  });

  test('has no stopped note of a short string at or below its start', () => {
    const map = mapArea(neckOf(banjo), { fromSlot: 0, toSlot: 6 });
    const onFifth = map.flatMap((options) => options ?? []).filter(({ string }) => string === 5);
    expect(onFifth).toEqual([
      { string: 5, slot: 5, isOpen: true },
      { string: 5, slot: 6, isOpen: false },
    ]);
  });
});

describe('a climb', () => {
  const map = mapArea(neckOf(guitar), { fromSlot: 5, toSlot: 8 });

  test('goes on as long as the next note is in the area', () => {
    expect(rootsIn(map, aMinor)).toEqual([45, 57, 69]);
    // A2 to A3; the B above lies at fret 4 or 9.
    expect(climbLength(map, aMinor, 45)).toBe(8);
    expect(climbLength(map, aMinor, 69)).toBe(3);
    expect(climbLength(map, aMinor, 44)).toBe(0);
  });

  test('is a line of the places of its notes', () => {
    const line = climbLine(map, aMinor, 45, 3);
    expect(line).toEqual([
      { options: [{ string: 6, slot: 5, isOpen: false }], holdsHand: false },
      { options: [{ string: 6, slot: 7, isOpen: false }], holdsHand: false },
      { options: [{ string: 6, slot: 8, isOpen: false }], holdsHand: false },
    ]);
  });

  test.each([
    [0, 45],
    [2, 48],
    [6, 55],
    [7, 57],
    [16, 72],
  ])('of A minor from A2 has, %i steps up, note number %i', (step, midi) => {
    expect(midiOfStep(aMinor, 45, step)).toBe(midi);
  });
});
