/**
 * Formulas: how the degrees of a mode differ from those of the major scale.
 */
import { formatAccidental } from '../pitch/accidental.ts';
import { MAJOR_SEMITONES } from '../pitch/letter.ts';

/**
 * Each degree's alteration: its semitones minus the major scale's. Degree n is the n-th note upwards, so a
 * note a minor sixth above the root is `bb7` where it is the seventh note.
 * @param semitones the seven degrees above the root
 */
export function alterationsOf(semitones: readonly number[]): readonly number[] {
  return semitones.map((semitone, at) => semitone - (MAJOR_SEMITONES[at] as number));
}

/** Formulas are written from these: each degree with every alteration of five semitones either way. */
const WIDEST = 5;
const DEGREES: readonly (readonly string[])[] = MAJOR_SEMITONES.map((_, at) =>
  Array.from({ length: 2 * WIDEST + 1 }, (_, by) => formatDegree(at + 1, by - WIDEST)),
);

/**
 * The degrees of a mode as they are written.
 * @param alterations of a mode: none is wider than five semitones
 * @example formulaOf([0, 0, -1, 1, 0, 0, -1]) // 1 2 b3 #4 5 6 b7
 */
export function formulaOf(alterations: readonly number[]): readonly string[] {
  return alterations.map((alteration, at) => DEGREES[at]?.[alteration + WIDEST] as string);
}

/**
 * A degree as it is written in a formula.
 * @param degree 1 to 7
 * @example formatDegree(7, -2) // 'bb7'
 */
export function formatDegree(degree: number, alteration: number): string {
  return formatAccidental(alteration) + degree;
}

/**
 * A degree as it is written in a name, where an unaltered degree says so.
 * @example formatNamedDegree(6, 0) // 'nat6'
 */
export function formatNamedDegree(degree: number, alteration: number): string {
  return alteration === 0 ? `nat${degree}` : formatDegree(degree, alteration);
}
