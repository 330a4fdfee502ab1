import { describe, expect, test } from 'vitest';
import { randomBelow, SEED_RANGE, xorshift32 } from './random.ts';

/** The same generator in whole numbers without bounds, cut to 32 bits after every shift. */
function byHand(state: bigint): bigint {
  const cut = (value: bigint): bigint => value & 0xffff_ffffn;
  let x = state;
  x = cut(x ^ (x << 13n));
  x = cut(x ^ (x >> 17n));
  return cut(x ^ (x << 5n));
}

describe('the generator', () => {
  // Marsaglia's own first state, 2463534242; the number that follows it is recalled.
  test('goes on from the published first state', () => {
    expect(xorshift32(2_463_534_242)).toBe(723_471_715);
  });

  test.each([1, 2, 12_345, 0x8000_0000, SEED_RANGE.to])(
    'from %i is the one in whole numbers without bounds',
    (seed) => {
      let state = seed;
      let reckoned = BigInt(seed);
      for (let step = 0; step < 1000; step += 1) {
        state = xorshift32(state);
        reckoned = byHand(reckoned);
        expect(BigInt(state)).toBe(reckoned);
        expect(state).toBeGreaterThan(0);
      }
    },
  );
});

describe('numbers below a bound', () => {
  const draw = (seed: number, count: number, bound: number): readonly number[] => {
    const below = randomBelow(seed);
    return Array.from({ length: count }, () => below(bound));
  };

  test('are the same for the same seed and others for another', () => {
    expect(draw(7, 100, 1000)).toEqual(draw(7, 100, 1000));
    expect(draw(7, 100, 1000)).not.toEqual(draw(8, 100, 1000));
  });

  test.each([1, 2, 3, SEED_RANGE.to])('of seed %i fall on each of four about as often', (seed) => {
    const drawn = draw(seed, 4000, 4);
    for (const number of [0, 1, 2, 3]) {
      const share = drawn.filter((one) => one === number).length / 4000;
      expect(share).toBeGreaterThan(0.22);
      expect(share).toBeLessThan(0.28);
    }
  });
});
