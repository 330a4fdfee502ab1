/**
 * Single degree glyphs, for lists and keys. A page that shows them carries the glyph definitions once.
 */
import { GLYPH_DEFINITIONS, glyphLabel, toneOf } from '@stillroot/notation';
import { degreeSign } from '../words/degrees.ts';

/**
 * What the notation package writes, as pages have it: styles and places of labels as classes, for pages keep
 * all style in style sheets, and glyphs by a shorter name, for a page holds a hundred.
 */
export function withClasses(svg: string): string {
  return svg
    .replaceAll(' style="font-size:9px"', ' class="small"')
    .replaceAll(' style="text-anchor:start"', '')
    .replaceAll('"#degree-', '"#d')
    .replaceAll('class="mark plain', 'class="mark')
    .replaceAll('<text y="4"', '<text')
    .replaceAll('<text y="7.5" class="small"', '<text class="small low"')
    .replaceAll('<text transform="translate(0 7.5)scale(0.85)"', '<text class="low"');
}

/** The glyphs of the seven degrees, once for a page. */
export const PAGE_GLYPHS: string = GLYPH_DEFINITIONS.replaceAll('id="degree-', 'id="d');

/** A degree as its glyph; the words beside it say the same, so it is hidden from assistive technology. */
export function glyph(degree: number, alteration: number, isQuiet = false): string {
  const tone = isQuiet ? 'quiet' : degree === 1 ? 'root' : toneOf(alteration);
  return `<svg class="neck glyph" viewBox="-17 -17 34 34" aria-hidden="true">${glyphMark(degree, alteration, tone)}</svg>`;
}

/** A glyph to be set inside a larger drawing. */
export function glyphMark(degree: number, alteration: number, tone: string, at = ''): string {
  return `<g class="mark ${tone}"${at}><use href="#d${degree}"/>${withClasses(glyphLabel(degree, degreeSign(degree, alteration)))}</g>`;
}
