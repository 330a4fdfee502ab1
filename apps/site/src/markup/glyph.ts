/**
 * Single degree glyphs, for lists and keys. A page that shows them carries the glyph definitions once.
 */
import { glyphLabel, toneOf } from '@stillroot/notation';
import { degreeSign } from '../words/degrees.ts';

/** What the notation package writes as styles, as classes: pages keep all style in style sheets. */
export function withClasses(svg: string): string {
  return svg
    .replaceAll(' style="font-size:9px"', ' class="small"')
    .replaceAll(' style="text-anchor:start"', '');
}

/** A degree as its glyph; the words beside it say the same, so it is hidden from assistive technology. */
export function glyph(degree: number, alteration: number, isQuiet = false): string {
  const tone = isQuiet ? 'quiet' : degree === 1 ? 'root' : toneOf(alteration);
  return `<svg class="neck glyph" viewBox="-17 -17 34 34" aria-hidden="true">${glyphMark(degree, alteration, tone)}</svg>`;
}

/** A glyph to be set inside a larger drawing. */
export function glyphMark(degree: number, alteration: number, tone: string, at = ''): string {
  return `<g class="mark ${tone}"${at}><use href="#degree-${degree}"/>${withClasses(glyphLabel(degree, degreeSign(degree, alteration)))}</g>`;
}
