import { describe, expect, test } from 'vitest';
import { rootOf, STEPS, scaleOf } from '../given.ts';
import { triadsOf } from '../harmony/chords.ts';
import { spell } from '../mode/spelling.ts';
import { UNIVERSE } from '../mode/universe.ts';
import { degreesOf, vampDegrees } from './vamp.ts';

describe('the vamp of a mode', () => {
  // Two-chord vamps as they are played over the modes: common practice, no source.
  test.each([
    ['Ionian', STEPS.ionian, [1, 4]],
    ['Dorian', STEPS.dorian, [1, 4]],
    ['Phrygian', STEPS.phrygian, [1, 2]],
    ['Lydian', STEPS.lydian, [1, 2]],
    ['Mixolydian', STEPS.mixolydian, [1, 7]],
    ['Aeolian', STEPS.aeolian, [1, 6]],
    ['harmonic minor', STEPS.harmonicMinor, [1, 5]],
    ['Phrygian dominant', STEPS.phrygianDominant, [1, 2]],
  ])('%s stands on its first and another degree', (_name, steps, degrees) => {
    expect(vampDegrees(scaleOf('A', steps))).toEqual(degrees);
  });

  test('has two chords whatever the mode', () => {
    for (const mode of UNIVERSE.modes) {
      const [first, second, ...rest] = vampDegrees(spell(mode, rootOf('C')));
      expect(first).toBe(1);
      expect([2, 3, 4, 5, 6, 7]).toContain(second);
      expect(rest).toEqual([]);
    }
  });
});

describe('the degrees of a chord', () => {
  test('go up by thirds and round the octave', () => {
    const triads = triadsOf(scaleOf('C', STEPS.ionian));
    expect(triads.map((chord) => degreesOf(chord).join(''))).toEqual([
      '135',
      '246',
      '357',
      '461',
      '572',
      '613',
      '724',
    ]);
  });
});
