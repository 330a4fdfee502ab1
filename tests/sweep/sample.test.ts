import { CATALOGUE } from '@stillroot/catalog';
import { buildNeck, DEFAULT_REACH_MM, HAND_SIZES, roundOf } from '@stillroot/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { faultOf } from './faults.ts';
import { TWELVE_ROOTS } from './roots.ts';

const ROUNDS = 1500;

const necks = CATALOGUE.instruments.flatMap((instrument) =>
  instrument.tunings.map((tuning) => ({ instrument, tuning })),
);

describe('a round on any tuning of the catalogue', () => {
  test('there are twelve roots, one a pitch class', () => {
    expect(new Set(TWELVE_ROOTS.map(({ pitchClass }) => pitchClass)).size).toBe(12);
    expect(TWELVE_ROOTS).toHaveLength(12);
  });

  test('answers on each of them with seven sound fingerings or a reason', () => {
    const family = CATALOGUE.families.find(({ slug }) => slug === 'harmonic-minor');
    for (const { instrument, tuning } of necks) {
      const neck = buildNeck(instrument, tuning);
      if (!neck.ok || !family) throw new Error(`${instrument.id} ${tuning.id}`);
      const round = roundOf(neck.value, family.head.mode, TWELVE_ROOTS[0] as (typeof TWELVE_ROOTS)[number]);
      expect([instrument.id, tuning.id, faultOf(neck.value, round, DEFAULT_REACH_MM)]).toEqual([
        instrument.id,
        tuning.id,
        undefined,
      ]);
    }
  });

  test(`answers so for ${ROUNDS} at random, for every size of hand`, () => {
    let whole = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...necks),
        fc.constantFrom(...CATALOGUE.modes),
        fc.constantFrom(...TWELVE_ROOTS),
        fc.constantFrom(...Object.values(HAND_SIZES)),
        ({ instrument, tuning }, { mode }, root, { reachMm }) => {
          const neck = buildNeck(instrument, tuning);
          if (!neck.ok) throw new Error(neck.problem.expected);
          const round = roundOf(neck.value, mode, root, { reachMm });
          expect(faultOf(neck.value, round, reachMm)).toBeUndefined();
          whole += Number(round.reason === undefined);
        },
      ),
      { numRuns: ROUNDS },
    );
    expect(whole).toBeGreaterThan(ROUNDS / 2);
  }, 60_000);
});
