/**
 * Single degree glyphs, for lists and keys. A page that shows them carries the glyph definitions once.
 */
import { toneOf } from '@stillroot/notation';
import { degreeSign } from '../words/degrees.ts';

/** A degree as its glyph; the words beside it say the same, so it is hidden from assistive technology. */
export function glyph(degree: number, alteration: number, isQuiet = false): string {
  const tone = isQuiet ? 'quiet' : degree === 1 ? 'root' : toneOf(alteration);
  return `<svg class="neck glyph" viewBox="-17 -17 34 34" aria-hidden="true">${glyphMark(degree, alteration, tone)}</svg>`;
}

/** A glyph to be set inside a larger drawing. */
export function glyphMark(degree: number, alteration: number, tone: string, at = ''): string {
  return `<g class="mark ${tone}"${at}><use href="#degree-${degree}"/><text y="4">${degreeSign(degree, alteration)}</text></g>`;
}
