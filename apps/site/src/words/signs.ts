/**
 * Proper signs for ASCII accidentals. The same few thousand texts stand on thousands of pages, so each is
 * turned once.
 */
import { toSigns } from '@stillroot/core';

const known = new Map<string, string>();

/** A note, a degree or a name with proper signs; see core's `toSigns`. */
export function signs(text: string): string {
  let signed = known.get(text);
  if (signed === undefined) {
    signed = toSigns(text);
    known.set(text, signed);
  }
  return signed;
}
