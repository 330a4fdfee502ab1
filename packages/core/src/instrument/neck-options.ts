/**
 * What may be set on a neck, and whether it can be had.
 */
import { fail, type Result, succeed } from '../problem.ts';

/** What may be set on a neck. */
export interface NeckOptions {
  /** The fret a capo lies on; 0 for none. */
  readonly capoFret?: number;
  /** The strings a capo covers, by number; all of them where absent. */
  readonly capoStrings?: readonly number[];
  /** The last fret, where it is not the instrument's own. */
  readonly frets?: number;
  /** The length of every open string from nut to saddle, where it is not the instrument's own. */
  readonly scaleLengthMm?: number;
  /** The lengths of the outer strings of a neck with fanned frets, in place of one length. */
  readonly scaleLengthsMm?: OuterLengthsMm;
}

/** The lengths of the outer strings, in millimetres; those between lie evenly between them. */
export interface OuterLengthsMm {
  /** Of the lowest-sounding side. */
  readonly bass: number;
  /** Of string 1. */
  readonly treble: number;
}

/** The scale lengths that a neck may have, in millimetres: from the smallest soprano sizes to long basses. */
export const SCALE_LENGTH_RANGE_MM = { from: 200, to: 1200 } as const;

/** The length of each string, string 1 first. */
export function stringLengthsMm(
  ownMm: number,
  count: number,
  { scaleLengthMm, scaleLengthsMm }: NeckOptions,
): Result<readonly number[]> {
  if (scaleLengthsMm === undefined) {
    const problem = scaleLengthMm === undefined ? undefined : checkLength('scaleLengthMm', scaleLengthMm);
    return problem ?? succeed(Array.from({ length: count }, () => scaleLengthMm ?? ownMm));
  }
  if (scaleLengthMm !== undefined) {
    return fail('scaleLengthMm', shown(scaleLengthMm), { kind: 'one-length' });
  }
  const { bass, treble } = scaleLengthsMm;
  const problem = checkLength('scaleLengthsMm.bass', bass) ?? checkLength('scaleLengthsMm.treble', treble);
  if (problem) return problem;
  return succeed(
    Array.from({ length: count }, (_, at) => {
      const towardsBass = count > 1 ? at / (count - 1) : 1;
      return treble * (1 - towardsBass) + bass * towardsBass;
    }),
  );
}

/** The strings that a capo is put over: all, or those asked for. */
export function coveredStrings(count: number, asked: NeckOptions['capoStrings']): Result<readonly number[]> {
  const all = Array.from({ length: count }, (_, at) => at + 1);
  if (asked === undefined) return succeed(all);
  const expected = { kind: 'string-numbers', count } as const;
  if (!Array.isArray(asked)) return fail('capoStrings', shown(asked), expected);
  const unknown = asked.findIndex((string) => !all.includes(string));
  if (unknown >= 0) return fail(`capoStrings[${unknown}]`, shown(asked[unknown]), expected);
  return succeed(all.filter((string) => asked.includes(string)));
}

/** A value as a problem shows it: text in quotation marks, so that `"7"` is told from 7. */
export function shown(value: unknown): string {
  if (typeof value === 'string') return JSON.stringify(value);
  return typeof value === 'object' && value !== null ? 'an object' : String(value);
}

function checkLength(field: string, lengthMm: number): Result<never> | undefined {
  const { from, to } = SCALE_LENGTH_RANGE_MM;
  if (Number.isFinite(lengthMm) && lengthMm >= from && lengthMm <= to) return undefined;
  return fail(field, shown(lengthMm), { kind: 'length-mm', from, to });
}
