/**
 * Notation: necks as SVG, necks and fingerings as text.
 */
export {
  drawFingering,
  drawFretboard,
  type FingeringDrawingOptions,
  type Labels,
  type Mark,
  type Move,
  type NeckDrawing,
} from './drawing.ts';
export { GLYPH_DEFINITIONS, glyphLabel, NECK_STYLE, type Tone, toneOf } from './glyphs.ts';
export { type Handedness, type NeckSvgOptions, neckSvg } from './neck-svg.ts';
export { escapeXml } from './neck-svg-text.ts';
export { type SheetOptions, sheetSvg } from './sheet-svg.ts';
export { type FretboardTextOptions, fingeringSummary, fingeringText, fretboardText } from './text.ts';
