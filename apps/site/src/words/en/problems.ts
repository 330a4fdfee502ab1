/**
 * What is wrong with something that was typed or chosen. British English, as core has it.
 */
import type { Problem } from '@stillroot/core';

/** A problem in a sentence. */
export function problemWords({ value, expected }: Problem): string {
  return `“${value}”: expected ${expected}.`;
}
