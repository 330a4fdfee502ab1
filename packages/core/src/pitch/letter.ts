/**
 * The seven letters and the twelve pitch classes under them.
 * A letter is kept as its index from C (0) to B (6); pitch classes count semitones from C (0) to B (11).
 */

/** The letters in order from C, where scientific octaves begin. */
export const LETTERS = ['C', 'D', 'E', 'F', 'G', 'A', 'B'] as const;

/** One of the seven letters. */
export type Letter = (typeof LETTERS)[number];

/** Semitones of each natural letter above C. */
export const NATURAL_SEMITONES: readonly number[] = [0, 2, 4, 5, 7, 9, 11];

/** Semitones of the major scale above its root: the yardstick of every degree's alteration. */
export const MAJOR_SEMITONES: readonly number[] = NATURAL_SEMITONES;

/** For each letter, how far each degree of its natural major scale is altered: F has a B flat. */
export const MAJOR_ALTERATIONS: readonly (readonly number[])[] = NATURAL_SEMITONES.map(
  (rootSemitones, letterIndex) =>
    MAJOR_SEMITONES.map((semitones, at) => {
      const natural = NATURAL_SEMITONES[(letterIndex + at) % 7] as number;
      return pitchClassOf(rootSemitones + semitones - natural + 6) - 6;
    }),
);

/** The remainder of `semitones` in one octave, 0 to 11, also for negative numbers. */
export function pitchClassOf(semitones: number): number {
  return ((semitones % 12) + 12) % 12;
}
