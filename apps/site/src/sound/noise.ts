/**
 * Noise that is the same for the same seed: a 32-bit xorshift (Marsaglia 2003).
 */

/** Gives numbers from −1 to 1, one with each call. */
export function noise(seed: number): () => number {
  let state = Math.imul(seed, 0x9e3779b1) | 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 0x7fffffff - 1;
  };
}
