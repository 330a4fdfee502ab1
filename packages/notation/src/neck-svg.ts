/**
 * Neck drawings as SVG. Frets stand at their true distances, so a bass and a ukulele look different; a
 * left-handed neck is mirrored, nut on the right: its numbers, its labels and the order of its strings are not.
 */
import type { NeckDrawing } from './drawing.ts';
import { GLYPH_DEFINITIONS, NECK_STYLE } from './glyphs.ts';
import { boardSvg, markSvg, movesSvg, type Pen, stringsSvg } from './neck-svg-parts.ts';
import { rulerOf } from './neck-svg-ruler.ts';
import { escapeXml, forAnyFont, tidy } from './neck-svg-text.ts';

/** For a right-handed player the nut is on the left; for a left-handed one the picture is mirrored. */
export type Handedness = 'right' | 'left';

/** How a neck is drawn. */
export interface NeckSvgOptions {
  /** For whom; right-handed where absent. */
  readonly handedness?: Handedness;
  /** Whether the drawing carries its own style and glyphs, for use outside a page that has them. */
  readonly standalone?: boolean;
  /**
   * Whether it is set into a page, whose style sheet styles it at its full size: styles and places of labels
   * are classes, and glyphs have a shorter name, for a page holds a hundred.
   */
  readonly onPage?: boolean;
  /** What element ids begin with, where several drawings share a page. */
  readonly idPrefix?: string;
}

/** What a drawing that stands alone begins with. */
export const STANDALONE_HEAD = `<style>${NECK_STYLE}</style><defs>${GLYPH_DEFINITIONS}</defs>`;

/** The room right of the last fret, and that below the last string. */
const RIGHT = 14;
const BELOW = 42;

/** A neck drawing as an SVG element in text. */
export function neckSvg(drawing: NeckDrawing, options: NeckSvgOptions = {}): string {
  const { standalone = false, onPage = false, idPrefix = 'neck' } = options;
  const { width, height, body } = layNeck(drawing, options);
  const size = ` width="${width}" height="${height}"`;
  const head = onPage ? `class="neck"${size}` : 'xmlns="http://www.w3.org/2000/svg" class="neck"';
  const text =
    `<svg ${head} role="img" viewBox="0 0 ${width} ${height}"` +
    ` aria-labelledby="${idPrefix}-t ${idPrefix}-d"${standalone && !onPage ? size : ''}>` +
    `<title id="${idPrefix}-t">${escapeXml(drawing.title)}</title>` +
    `<desc id="${idPrefix}-d">${escapeXml(drawing.description)}</desc>${standalone ? STANDALONE_HEAD : ''}${body}</svg>`;
  return standalone ? forAnyFont(text) : text;
}

/** A neck laid out: what is inside its SVG element, and how large that is. */
export interface LaidNeck {
  readonly width: number;
  readonly height: number;
  readonly body: string;
}

/** Lays a neck out, without the SVG element around it. */
export function layNeck(
  drawing: NeckDrawing,
  { handedness = 'right', onPage = false, idPrefix = 'neck' }: NeckSvgOptions,
): LaidNeck {
  const ruler = rulerOf(drawing);
  const width = Math.round(ruler.right + RIGHT);
  const height = ruler.y(drawing.neck.strings.length) + BELOW;
  const leftHanded = handedness === 'left';
  const at = (x: number): number => tidy(leftHanded ? width - x : x);
  const pen: Pen = { ruler, at, leftHanded, onPage, idPrefix };
  const marks = drawing.marks.map((mark) => markSvg(mark, pen)).join('');
  const body = boardSvg(drawing, pen) + stringsSvg(drawing, pen) + movesSvg(drawing, pen) + marks;
  return { width, height, body };
}
