/**
 * Sets of pitch classes as twelve bits, C (or the root) lowest: counting what two have in common is a
 * matter of a few machine words.
 */

/** A set of pitch classes. */
export type PitchClassSet = number;

/** Pitch classes, or semitones above a root, as a set. */
export function setOf(pitchClasses: readonly number[]): PitchClassSet {
  let set = 0;
  for (let at = 0; at < pitchClasses.length; at += 1) set |= 1 << (pitchClasses[at] as number);
  return set;
}

/** How many members every set of twelve has, counted once. */
const SIZES: Uint8Array = new Uint8Array(1 << 12);
for (let set = 1; set < SIZES.length; set += 1) SIZES[set] = (SIZES[set >> 1] as number) + (set & 1);

/** How many members a set has. */
export function sizeOf(set: PitchClassSet): number {
  return SIZES[set] as number;
}

/** How many pitch classes two sets have in common. */
export function commonCount(a: PitchClassSet, b: PitchClassSet): number {
  return sizeOf(a & b);
}

/** A set moved up by semitones, round the octave. */
export function transpose(set: PitchClassSet, semitones: number): PitchClassSet {
  return ((set << semitones) | (set >> (12 - semitones))) & 0xfff;
}
