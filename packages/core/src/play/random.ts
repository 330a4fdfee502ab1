/**
 * Numbers that look random and are the same for the same seed, everywhere: 32-bit xorshift with the shifts
 * 13, 17, 5 (Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8/14, 2003).
 */

/** The seeds there are: every state of the generator but zero. */
export const SEED_RANGE = { from: 1, to: 2 ** 32 - 1 } as const;

/** Seeds that lie close together give numbers that do, too, until their bits have spread. */
const WARM_UP = 16;

/**
 * The generator's next state.
 * @param state 1 to 2³² − 1
 */
export function xorshift32(state: number): number {
  let x = state;
  x ^= x << 13;
  x ^= x >>> 17;
  x ^= x << 5;
  return x >>> 0;
}

/** A source of whole numbers below a bound, of a seed's own. */
export function randomBelow(seed: number): (bound: number) => number {
  let state = seed;
  for (let at = 0; at < WARM_UP; at += 1) state = xorshift32(state);
  return (bound) => {
    state = xorshift32(state);
    return Math.floor((state / 2 ** 32) * bound);
  };
}
