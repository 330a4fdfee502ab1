/**
 * What is wrong with something that was typed or chosen. British English, as core has it.
 */
import type { Problem } from '@stillroot/core';

/** A problem in a sentence; what a browser does not hand out, such as letters in a field for a number, is not repeated. */
export function problemWords({ value, expected }: Problem): string {
  return value === '' ? `Expected ${expected}.` : `“${value}”: expected ${expected}.`;
}

/** A problem away from its field, which is named: `Capo at fret – “abc”: expected ...` */
export function problemOf(label: string | undefined, problem: Problem): string {
  return label ? `${label} – ${problemWords(problem)}` : problemWords(problem);
}
