import { type Expectation, expectationInWords } from './expectation.ts';

/**
 * What went wrong with something a person typed, as data: which field, what it held, what would be right.
 * Core never throws for bad input; it returns a {@link Result}.
 */
export interface Problem {
  /** The name of the input, as the caller knows it: `root`, `tuning[3]`, `reach`. */
  readonly field: string;
  /** What was given, shortened to something that can be shown. */
  readonly value: string;
  /** What would have been right, in words; in English where they are core's own. */
  readonly expected: string;
  /** The same as data, where it is core's own. */
  readonly expectation?: Expectation;
}

/** Either a value or the reason why there is none. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

/** A result that holds `value`. */
export function succeed<T>(value: T): Result<T> {
  return { ok: true, value };
}

/** The first half of a sign beyond U+FFFF (such as 𝄫) at the place of a cut. */
const HALF_A_SIGN = /[\uD800-\uDBFF]$/;

/** A result that holds a problem; long values are cut at 60 characters. */
export function fail(field: string, value: string, expected: string | Expectation): Result<never> {
  const shown = value.length > 60 ? `${value.slice(0, 57).replace(HALF_A_SIGN, '')}...` : value;
  const right =
    typeof expected === 'string'
      ? { expected }
      : { expected: expectationInWords(expected), expectation: expected };
  return { ok: false, problem: { field, value: shown, ...right } };
}

/** Stops the program with a message: only for mistakes of our own, never for something a person typed. */
export function invariant(condition: boolean, message: string): asserts condition {
  if (!condition) throw new Error(`invariant: ${message}`);
}
