import { describe, expect, test } from 'vitest';
import { modeOf, STEPS } from '../given.ts';
import { buildUniverse, rotate, semitonesOf, UNIVERSE } from './universe.ts';

describe('the universe', () => {
  test('holds C(11,6) = 462 modes in 66 families of seven', () => {
    expect(UNIVERSE.modes).toHaveLength(462);
    expect(UNIVERSE.families).toHaveLength(66);
    expect(UNIVERSE.families.every(({ modes }) => modes.length === 7)).toBe(true);
    expect(UNIVERSE.modesById.size).toBe(462);
    expect(UNIVERSE.familiesById.size).toBe(66);
  });

  test('holds every choice of six of the eleven semitones above the root, found by counting bits', () => {
    const chosen: string[] = [];
    for (let bits = 0; bits < 2 ** 11; bits += 1) {
      const semitones = [0, ...[...Array(11).keys()].filter((at) => bits & (1 << at)).map((at) => at + 1)];
      if (semitones.length === 7) chosen.push(semitones.join());
    }
    expect(UNIVERSE.modes.map((mode) => mode.semitones.join()).toSorted()).toEqual(chosen.toSorted());
  });

  test('is the same when built again', () => {
    expect(buildUniverse()).toEqual(UNIVERSE);
  });

  test('numbers modes and families as they stand', () => {
    expect(UNIVERSE.modes.every(({ index }, at) => index === at)).toBe(true);
    expect(UNIVERSE.families.every(({ index }, at) => index === at)).toBe(true);
  });
});

describe('a family', () => {
  test('is named after its brightest mode, which no other rotation equals', () => {
    for (const { id, modes } of UNIVERSE.families) {
      const [head, ...others] = modes;
      expect(head?.id).toBe(id);
      expect(others.every(({ brightness }) => brightness < (head?.brightness ?? 0))).toBe(true);
    }
  });

  test('holds the rotations of its head, each under its number', () => {
    for (const { id, modes } of UNIVERSE.families) {
      expect(modes.map((mode) => mode.id)).toEqual(
        modes.map((_, by) => rotate([...id].map(Number), by).join('')),
      );
      expect(modes.map(({ rotation }) => rotation)).toEqual([0, 1, 2, 3, 4, 5, 6]);
      expect(modes.every(({ familyId }) => familyId === id)).toBe(true);
    }
  });

  test.each([
    ['the major scale', STEPS.ionian, STEPS.lydian],
    ['harmonic minor', STEPS.harmonicMinor, '3121221'],
    ['melodic minor', STEPS.melodicMinor, '2222121'],
  ])('of %s is headed by its brightest rotation', (_name, steps, head) => {
    expect(modeOf(steps).familyId).toBe(head);
  });
});

describe('a mode', () => {
  test.each([
    ['Lydian', STEPS.lydian, 1],
    ['Ionian', STEPS.ionian, 0],
    ['Mixolydian', STEPS.mixolydian, -1],
    ['Dorian', STEPS.dorian, -2],
    ['Aeolian', STEPS.aeolian, -3],
    ['Phrygian', STEPS.phrygian, -4],
    ['Locrian', STEPS.locrian, -5],
  ])('%s has the brightness of its sharps less its flats', (_name, steps, brightness) => {
    expect(modeOf(steps).brightness).toBe(brightness);
  });

  test('climbs by its steps, which sum to an octave', () => {
    for (const { id, steps, semitones } of UNIVERSE.modes) {
      expect(steps.reduce((sum, step) => sum + step, 0)).toBe(12);
      expect(semitones[0]).toBe(0);
      expect(semitones.map((semitone, at) => (semitones[at + 1] ?? 12) - semitone).join('')).toBe(id);
    }
  });

  test.each([
    [
      [2, 1, 2, 2, 1, 3, 1],
      [0, 2, 3, 5, 7, 8, 11],
    ],
    [
      [6, 1, 1, 1, 1, 1, 1],
      [0, 6, 7, 8, 9, 10, 11],
    ],
  ])('of steps %j lies at %j', (steps, semitones) => {
    expect(semitonesOf(steps)).toEqual(semitones);
  });

  test.each([
    [0, [2, 2, 1, 2, 2, 2, 1]],
    [1, [2, 1, 2, 2, 2, 1, 2]],
    [6, [1, 2, 2, 1, 2, 2, 2]],
  ])('turned by %i begins that many degrees later', (by, steps) => {
    expect(rotate([2, 2, 1, 2, 2, 2, 1], by)).toEqual(steps);
  });
});

describe('what is not a mode is not found', () => {
  test.each(['', ' ', 'constructor', '__proto__', '2212221 ', '22122210', '2212220', '1111111', '２212221'])(
    '"%s"',
    (id) => {
      expect(UNIVERSE.modesById.get(id)).toBeUndefined();
      expect(UNIVERSE.familiesById.get(id)).toBeUndefined();
    },
  );
});
