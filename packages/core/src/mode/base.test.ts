import { describe, expect, test } from 'vitest';
import { modeOf, STEPS } from '../given.ts';
import { CHURCH_MODES, distanceBetween, findBase, movedDegrees, systematicNameOf } from './base.ts';
import { UNIVERSE } from './universe.ts';

describe('the church modes', () => {
  test.each([
    ['Ionian', STEPS.ionian],
    ['Dorian', STEPS.dorian],
    ['Phrygian', STEPS.phrygian],
    ['Lydian', STEPS.lydian],
    ['Mixolydian', STEPS.mixolydian],
    ['Aeolian', STEPS.aeolian],
    ['Locrian', STEPS.locrian],
  ])('%s is its own base, and its name is its systematic name', (name, steps) => {
    const mode = modeOf(steps);
    expect(mode.base).toEqual({ name, moved: [] });
    expect(mode.systematicName).toBe(name);
    expect(CHURCH_MODES.find((church) => church.name === name)?.semitones).toEqual(mode.semitones);
  });
});

describe('the systematic name', () => {
  // The harmonic minor family: the trade's own names for its modes (common practice, no source).
  test.each([
    ['2122131', 'Aeolian nat7'],
    ['1221312', 'Locrian nat6'],
    ['2213121', 'Ionian #5'],
    ['2131212', 'Dorian #4'],
    ['1312122', 'Phrygian nat3'],
    ['3121221', 'Lydian #2'],
    ['1212213', 'Locrian b4 bb7'],
  ])('of %s, of the harmonic minor family, is %s', (steps, name) => {
    expect(modeOf(steps).systematicName).toBe(name);
  });

  // The melodic minor family by the rule: between bases equally near, the first in order.
  test.each([
    ['2122221', 'Ionian b3'],
    ['1222212', 'Dorian b2'],
    ['2222121', 'Lydian #5'],
    ['2221212', 'Lydian b7'],
    ['2212122', 'Mixolydian b6'],
    ['2121222', 'Aeolian b5'],
    ['1212222', 'Locrian b4'],
  ])('of %s, of the melodic minor family, is %s', (steps, name) => {
    expect(modeOf(steps).systematicName).toBe(name);
  });

  test('is another for each of the 462 modes', () => {
    expect(new Set(UNIVERSE.modes.map((mode) => mode.systematicName)).size).toBe(462);
  });

  test('puts a moved degree as it sounds, not as it moved', () => {
    expect(
      systematicNameOf({ name: 'Locrian', moved: [{ degree: 6, by: 1 }] }, [0, -1, -1, 0, -1, 0, -1]),
    ).toBe('Locrian nat6');
  });
});

describe('the base', () => {
  test('moves the fewest degrees of all church modes, then the least, then is the first in order', () => {
    for (const mode of UNIVERSE.modes) {
      const ranked = CHURCH_MODES.map(({ name, semitones }, order) => {
        const moves = mode.semitones.map((semitone, at) => semitone - (semitones[at] ?? 0));
        const moved = moves.filter((by) => by !== 0).length;
        const total = moves.reduce((sum, by) => sum + Math.abs(by), 0);
        return { name, moved, total, order };
      }).toSorted((a, b) => a.moved - b.moved || a.total - b.total || a.order - b.order);
      expect(findBase(mode.semitones).name).toBe(ranked[0]?.name);
      expect(mode.base.moved).toHaveLength(ranked[0]?.moved ?? -1);
    }
  });
});

describe('moved degrees', () => {
  test.each([
    [STEPS.ionian, STEPS.lydian, [[4, 1]], 1],
    [STEPS.lydian, STEPS.ionian, [[4, -1]], 1],
    [
      STEPS.dorian,
      STEPS.phrygian,
      [
        [2, -1],
        [6, -1],
      ],
      2,
    ],
    [STEPS.aeolian, STEPS.harmonicMinor, [[7, 1]], 1],
    [STEPS.aeolian, STEPS.aeolian, [], 0],
    [
      STEPS.ionian,
      STEPS.seventhOfHarmonicMinor,
      [
        [2, -1],
        [3, -1],
        [4, -1],
        [5, -1],
        [6, -1],
        [7, -2],
      ],
      7,
    ],
  ])('from %s to %s carry direction and size', (from, to, moved, distance) => {
    const [a, b] = [modeOf(from).semitones, modeOf(to).semitones];
    expect(movedDegrees(a, b)).toEqual(moved.map(([degree, by]) => ({ degree, by })));
    expect(distanceBetween(a, b)).toBe(distance);
  });
});
