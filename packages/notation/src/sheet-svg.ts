/**
 * Sheets: several necks as one SVG.
 */
import { toSigns } from '@stillroot/core';
import type { NeckDrawing } from './drawing.ts';
import { layNeck, type NeckSvgOptions, STANDALONE_HEAD } from './neck-svg.ts';
import { escapeXml, forAnyFont, tidy } from './neck-svg-text.ts';

const HEADLINE = 40;
const TITLE_LINE = 24;
const SHEET_GAP = 12;
/** A headline needs room even over a narrow neck. */
const NARROWEST_SHEET = 320;
const HEADLINE_SIZE = 17;
const TITLE_SIZE = 14;
/** The width of a bold letter in ems, on the wide side for a sans-serif face. */
const LETTER_EMS = 0.6;

/** How several necks are set on one sheet. */
export interface SheetOptions extends NeckSvgOptions {
  /** How many stand beside one another; one under another where absent. */
  readonly columns?: number;
}

/**
 * Several necks, each under its title, as one SVG that carries its own style: column by column where there
 * is more than one, so that reading down goes on from neck to neck.
 */
export function sheetSvg(
  title: string,
  drawings: readonly NeckDrawing[],
  options: SheetOptions = {},
): string {
  const { columns = 1 } = options;
  const laid = drawings.map((drawing, at) => layNeck(drawing, { ...options, idPrefix: `neck-${at}` }));
  const necks = laid.map((one) => one.width);
  const titles = drawings.map((drawing) => SHEET_GAP + lineWidth(drawing.title, TITLE_SIZE));
  const columnWidth = Math.max(NARROWEST_SHEET / columns, ...necks, ...titles) + SHEET_GAP;
  const rowHeight = Math.max(0, ...laid.map((one) => one.height)) + TITLE_LINE + SHEET_GAP;
  const rows = Math.max(1, Math.ceil(laid.length / columns));
  const parts = laid.map(({ body }, at) => {
    const { title: name, description } = drawings[at] as NeckDrawing;
    const x = tidy(Math.floor(at / rows) * columnWidth);
    const y = HEADLINE + (at % rows) * rowHeight;
    return (
      `<text class="title" x="${x + SHEET_GAP}" y="${y + 16}">${escapeXml(toSigns(name))}</text>` +
      `<g transform="translate(${x} ${y + TITLE_LINE})" role="img" aria-label="${escapeXml(`${name}. ${description}`)}">${body}</g>`
    );
  });
  const headline = lineWidth(title, HEADLINE_SIZE) + 2 * SHEET_GAP;
  const width = tidy(Math.max(Math.ceil(laid.length / rows) * columnWidth, headline));
  const height = HEADLINE + rows * rowHeight;
  return forAnyFont(
    `<svg xmlns="http://www.w3.org/2000/svg" class="neck" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}">` +
      `<title>${escapeXml(title)}</title>${STANDALONE_HEAD}<rect class="paper" width="${width}" height="${height}"/>` +
      `<text class="headline" x="${SHEET_GAP}" y="24">${escapeXml(toSigns(title))}</text>${parts.join('')}</svg>`,
  );
}

/** Room for a line of text: no drawing can measure its own letters. */
function lineWidth(text: string, size: number): number {
  return Math.ceil([...forAnyFont(toSigns(text))].length * size * LETTER_EMS);
}
