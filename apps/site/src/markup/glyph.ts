/**
 * Single degree glyphs, for lists and keys. A page that shows them carries the glyph definitions once.
 */
import { GLYPH_DEFINITIONS, glyphLabel, toneOf } from '@stillroot/notation';
import { degreeSign } from '../words/degrees.ts';

/** The glyphs of the seven degrees, once for a page, by the shorter names that drawings on pages have for them. */
export const PAGE_GLYPHS: string = GLYPH_DEFINITIONS.replaceAll('id="degree-', 'id="d');

/** A degree as its glyph; the words beside it say the same, so it is hidden from assistive technology. */
export function glyph(degree: number, alteration: number, isQuiet = false): string {
  const tone = isQuiet ? 'quiet' : degree === 1 ? 'root' : toneOf(alteration);
  return `<svg class="neck glyph" viewBox="-17 -17 34 34" aria-hidden="true">${glyphMark(degree, alteration, tone)}</svg>`;
}

/** A glyph to be set inside a larger drawing. */
export function glyphMark(degree: number, alteration: number, tone: string, at = ''): string {
  return `<g class="mark ${tone}"${at}><use href="#d${degree}"/>${glyphLabel(degree, degreeSign(degree, alteration), true)}</g>`;
}
