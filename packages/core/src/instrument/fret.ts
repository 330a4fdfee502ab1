/**
 * Fret geometry: where frets lie along a string in equal temperament.
 */

/**
 * Distance from the nut to a fret, `L · (1 − 2^(−n/12))`.
 * @param scaleLengthMm length of the open string from nut to saddle, in millimetres
 * @param semitones frets above the nut in twelve-tone equal temperament; a partial fretting skips some
 * @example fretDistanceMm(648, 12) // 324
 */
export function fretDistanceMm(scaleLengthMm: number, semitones: number): number {
  return scaleLengthMm * (1 - 2 ** (-semitones / 12));
}
