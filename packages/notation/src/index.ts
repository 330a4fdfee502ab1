/**
 * Notation: necks as SVG, necks, fingerings and pieces as text, pieces as MIDI and MusicXML files.
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
export { GLYPH_DEFINITIONS, glyphLabel, glyphShape, NECK_STYLE, type Tone, toneOf } from './glyphs.ts';
export { type MidiOptions, midiFile } from './midi.ts';
export { type MusicXmlOptions, musicXml, type Spelling } from './musicxml.ts';
export type { StaffClef } from './musicxml-measure.ts';
export { type Handedness, type NeckSvgOptions, neckSvg } from './neck-svg.ts';
export { escapeXml } from './neck-svg-text.ts';
export { pieceText, timingText } from './piece-text.ts';
export { type SheetOptions, sheetSvg } from './sheet-svg.ts';
export { remarkInWords, type TabRemark, tabStaff } from './tab-staff.ts';
export { type FretboardTextOptions, fingeringSummary, fingeringText, fretboardText } from './text.ts';
export { withCode, withoutCode } from './with-code.ts';
