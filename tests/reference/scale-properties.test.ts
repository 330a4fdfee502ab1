import { familyOf, type Mode, UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { intervalVectorOf } from './by-hand.ts';
import { modeBySteps, modeOf } from './in-core.ts';
import { ancohemitonicScales, cluster, properScales } from './tables/scale-properties.ts';

const DIATONIC = modeOf('1 2 3 4 5 6 7').familyId;
const CLUSTER = modeBySteps(cluster).familyId;

/** The sizes of the intervals of so many steps that occur in a family, ascending. */
function sizesOf(head: Mode, steps: number): readonly number[] {
  const sizes = familyOf(head).modes.map(({ semitones }) => semitones[steps] ?? Number.NaN);
  return [...new Set(sizes)].toSorted((a, b) => a - b);
}

/** The families of which a statement about their head is true. */
function familiesWhere(isTrue: (head: Mode) => boolean): readonly string[] {
  return UNIVERSE.families
    .filter(({ modes: [head] }) => head !== undefined && isTrue(head))
    .map((family) => family.id)
    .toSorted();
}

const familiesNamed = (scales: readonly (readonly [string, string])[]): readonly string[] =>
  scales.map(([, formula]) => modeOf(formula).familyId).toSorted();

const EVERY_INTERVAL = [1, 2, 3, 4, 5, 6];

describe('among the 66 families', () => {
  test('five are proper: diatonic, melodic minor, harmonic minor and major, major Locrian (Rothenberg)', () => {
    const proper = familiesWhere((head) =>
      [1, 2, 3, 4, 5].every((k) => (sizesOf(head, k).at(-1) ?? 0) <= (sizesOf(head, k + 1)[0] ?? 0)),
    );
    expect(proper).toHaveLength(5);
    expect(proper).toEqual(familiesNamed(properScales));
  });

  test('none is strictly proper', () => {
    const strictly = familiesWhere((head) =>
      [1, 2, 3, 4, 5].every((k) => (sizesOf(head, k).at(-1) ?? 0) < (sizesOf(head, k + 1)[0] ?? 0)),
    );
    expect(strictly).toEqual([]);
  });

  test('six have no two semitone steps in a row', () => {
    const open = familiesWhere(({ id }) => !(id + id).includes('11'));
    expect(open).toHaveLength(6);
    expect(open).toEqual(familiesNamed(ancohemitonicScales));
  });

  test('Hungarian minor, also the double harmonic, alone is perfectly balanced', () => {
    const balanced = familiesWhere(({ semitones }) => {
      const turns = semitones.map((semitone) => (semitone * Math.PI) / 6);
      const across = turns.reduce((sum, turn) => sum + Math.cos(turn), 0);
      const along = turns.reduce((sum, turn) => sum + Math.sin(turn), 0);
      return Math.hypot(across, along) < 1e-9;
    });
    expect(balanced).toEqual([modeOf('1 2 b3 #4 5 b6 7').familyId]);
    expect(balanced).toEqual([modeOf('1 b2 3 4 5 b6 7').familyId]);
  });

  test('the diatonic alone is maximally even (Clough and Douthett)', () => {
    const even = familiesWhere((head) =>
      EVERY_INTERVAL.every((k) => {
        const sizes = sizesOf(head, k);
        return (sizes.at(-1) ?? 0) - (sizes[0] ?? 0) <= 1;
      }),
    );
    expect(even).toEqual([DIATONIC]);
  });

  test('the diatonic has Myhill’s property (Clough and Myerson); so has the chromatic cluster', () => {
    const myhill = familiesWhere((head) => EVERY_INTERVAL.every((k) => sizesOf(head, k).length === 2));
    expect(myhill).toEqual([CLUSTER, DIATONIC].toSorted());
  });

  test('the diatonic is deep (Gamer), with the vector 254361; so is the chromatic cluster', () => {
    const deep = familiesWhere(({ semitones }) => new Set(intervalVectorOf(semitones)).size === 6);
    expect(deep).toEqual([CLUSTER, DIATONIC].toSorted());
    expect(intervalVectorOf(modeOf('1 2 3 4 5 6 7').semitones).join('')).toBe('254361');
  });
});
