import { describe, expect, test } from 'vitest';
import { STEPS, scaleOf } from '../given.ts';
import { UNIVERSE } from '../mode/universe.ts';
import { commonCount, setOf } from '../pitch/pitch-class-set.ts';
import { placementSets, sharedScales } from './shared.ts';

describe('a set of pitch classes', () => {
  test.each([
    [[], 0],
    [[0], 1],
    [[0, 4, 7], 0b10010001],
    [[11, 11], 2048],
  ])('%j is the number %i', (pitchClasses, set) => {
    expect(setOf(pitchClasses)).toBe(set);
  });

  test.each([
    [[0, 2, 4], [2, 4, 6], 2],
    [[], [0, 1], 0],
    [[0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], [0, 11], 2],
  ])('%j and %j have %i in common', (a, b, count) => {
    expect(commonCount(setOf(a), setOf(b))).toBe(count);
  });
});

describe('placement sets', () => {
  test('are 462 × 12, over C(12,7) = 792 sets of seven modes each', () => {
    const bySet = Map.groupBy(placementSets(), (set) => set);
    expect(placementSets()).toHaveLength(5544);
    expect(bySet.size).toBe(792);
    expect([...bySet.values()].every((sharing) => sharing.length === 7)).toBe(true);
  });

  test('hold the notes of their mode from their pitch class', () => {
    for (const [at, set] of placementSets().entries()) {
      const mode = UNIVERSE.modes[Math.floor(at / 12)];
      const wanted = new Set(mode?.semitones.map((semitone) => (semitone + at) % 12));
      const held = [...Array(12).keys()].filter((one) => set & (1 << one));
      if (held.length !== 7 || held.some((one) => !wanted.has(one))) expect.unreachable(mode?.id);
    }
  });
});

describe('shared notes', () => {
  const cMajor = scaleOf('C', STEPS.ionian);

  test('number seven for the six relatives, and they come first', () => {
    const relatives = sharedScales(cMajor, 7);
    expect(
      relatives.map(({ scale }) => `${scale.root.name} ${scale.mode.systematicName}`).toSorted(),
    ).toEqual(['A Aeolian', 'B Locrian', 'D Dorian', 'E Phrygian', 'F Lydian', 'G Mixolydian']);
    expect(sharedScales(cMajor, 6).slice(0, 6)).toEqual(relatives);
  });

  test('number six for 7 × 5 sets of seven modes: one note out, one in', () => {
    const six = sharedScales(cMajor).filter(({ count }) => count === 6);
    expect(six).toHaveLength(7 * 5 * 7);
    const names = six.map(({ scale }) => `${scale.root.name} ${scale.mode.id}`);
    expect(names).toContain(`G ${STEPS.ionian}`);
    expect(names).toContain(`F ${STEPS.ionian}`);
    expect(names).toContain(`A ${STEPS.harmonicMinor}`);
    expect(names).not.toContain(`D ${STEPS.ionian}`);
  });

  test('are counted for every other scale where none are asked for, most first', () => {
    const all = sharedScales(cMajor, 0);
    expect(all).toHaveLength(5543);
    expect(all.every(({ count }, at) => count <= (all[at - 1]?.count ?? 7))).toBe(true);
    expect(all.at(-1)?.count).toBe(2);
  });
});
