/**
 * Neck drawings as SVG. Frets stand at their true distances, so a bass and a ukulele look different; a
 * left-handed neck is mirrored, its numbers are not.
 */
import type { FretSlot, NeckString } from '@stillroot/core';
import type { Mark, Move, NeckDrawing } from './drawing.ts';
import { GLYPH_DEFINITIONS, NECK_STYLE, toneOf } from './glyphs.ts';

/** How a neck is drawn. */
export interface NeckSvgOptions {
  readonly leftHanded?: boolean;
  /** Whether the drawing carries its own style and glyphs, for use outside a page that has them. */
  readonly standalone?: boolean;
  /** What element ids begin with, where several drawings share a page. */
  readonly idPrefix?: string;
}

/** What a drawing that stands alone begins with. */
export const STANDALONE_HEAD = `<style>${NECK_STYLE}</style><defs>${GLYPH_DEFINITIONS}</defs>`;

const STRING_GAP = 31;
const TOP = 22;
const OPEN_COLUMN = 62;
const RIGHT = 14;
/** Room for the narrowest fret's glyph. */
const NARROWEST_FRET = 34;
const INLAY_FRETS: ReadonlySet<number> = new Set([3, 5, 7, 9, 12, 15, 17, 19, 21, 24]);

/** A neck drawing as an SVG element in text. */
export function neckSvg(drawing: NeckDrawing, options: NeckSvgOptions = {}): string {
  const { standalone = false, idPrefix = 'neck' } = options;
  const { width, height, body } = layNeck(drawing, options);
  const text =
    `<svg xmlns="http://www.w3.org/2000/svg" class="neck" role="img" viewBox="0 0 ${width} ${height}"` +
    ` aria-labelledby="${idPrefix}-t ${idPrefix}-d"${standalone ? ` width="${width}" height="${height}"` : ''}>` +
    `<title id="${idPrefix}-t">${escapeXml(drawing.title)}</title>` +
    `<desc id="${idPrefix}-d">${escapeXml(drawing.description)}</desc>${standalone ? STANDALONE_HEAD : ''}${body}</svg>`;
  return standalone ? forAnyFont(text) : text;
}

/**
 * Text in signs that any font has: few carry U+1D12A and U+1D12B, so a drawing that leaves our pages writes
 * a double flat as two flats and a double sharp as the x it looks like.
 */
export function forAnyFont(text: string): string {
  return text.replaceAll('𝄫', '♭♭').replaceAll('𝄪', '×');
}

/** Text made safe for XML content and attributes; characters that XML cannot hold are left out. */
export function escapeXml(text: string): string {
  return text
    .replaceAll(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
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
  { leftHanded = false, idPrefix = 'neck' }: NeckSvgOptions,
): LaidNeck {
  const ruler = rulerOf(drawing);
  const width = Math.round(ruler.right + RIGHT);
  const height = TOP + (drawing.neck.strings.length - 1) * STRING_GAP + 42;
  const at = (x: number): number => tidy(leftHanded ? width - x : x);
  const body = [
    board(drawing, ruler, at),
    strings(drawing, ruler, at, leftHanded),
    moves(drawing, ruler, at, idPrefix),
    drawing.marks.map((mark) => markSvg(mark, ruler, at)).join(''),
  ].join('');
  return { width, height, body };
}

/** Where slots lie in a drawing. */
interface Ruler {
  /** The line of a slot's fret. */
  readonly line: (slot: number) => number;
  /** The middle of the space in which a slot is stopped. */
  readonly middle: (slot: number) => number;
  /** Where a note of a string is marked: an open one at its nut, its capo or its own start. */
  readonly place: (string: number, slot: number) => number;
  readonly y: (string: number) => number;
  /** The slot whose open notes stand left of the nut. */
  readonly firstSlot: number;
  readonly right: number;
}

function rulerOf({ neck, fromSlot, toSlot }: NeckDrawing): Ruler {
  const firstSlot = fromSlot === 0 || fromSlot === openSlotOf(neck.strings) ? fromSlot : fromSlot - 1;
  const mm = (slot: number): number => (neck.slots[slot] as FretSlot).distanceMm;
  const spaces = Array.from(
    { length: toSlot - firstSlot },
    (_, at) => mm(firstSlot + at + 1) - mm(firstSlot + at),
  );
  const scale = Math.max(0.9, NARROWEST_FRET / Math.min(...spaces));
  const widest = Math.max(...spaces) * scale;
  const shrink = widest > 110 ? 110 / widest : 1;
  const line = (slot: number): number =>
    OPEN_COLUMN + (mm(slot) - mm(firstSlot)) * scale * Math.max(shrink, 0.6);
  const middle = (slot: number): number =>
    slot <= firstSlot ? OPEN_COLUMN - 20 : (line(slot - 1) + line(slot)) / 2;
  return {
    line,
    middle,
    place: (string, slot) => {
      const isOpen = slot === neck.strings[string - 1]?.startSlot;
      if (!isOpen) return middle(slot);
      return slot > firstSlot && slot <= toSlot ? line(slot) : OPEN_COLUMN - 20;
    },
    y: (string) => TOP + (string - 1) * STRING_GAP,
    firstSlot,
    right: line(toSlot),
  };
}

function openSlotOf(strings: readonly NeckString[]): number {
  return Math.min(...strings.map(({ startSlot }) => startSlot));
}

function board({ neck, toSlot }: NeckDrawing, ruler: Ruler, at: (x: number) => number): string {
  const bottom = ruler.y(neck.strings.length);
  const left = Math.min(at(ruler.line(ruler.firstSlot)), at(ruler.right));
  const parts = [
    `<rect class="wood" x="${left}" y="${TOP - 13}" width="${tidy(ruler.right - OPEN_COLUMN)}" height="${bottom - TOP + 26}"/>`,
  ];
  for (let slot = ruler.firstSlot; slot <= toSlot; slot += 1) {
    const { fret } = neck.slots[slot] as FretSlot;
    const x = at(ruler.line(slot));
    const kind = slot === 0 ? 'nut' : neck.capoFret > 0 && fret === neck.capoFret ? 'capo' : 'fret';
    parts.push(`<path class="${kind}" d="M${x} ${TOP - 13}V${bottom + 13}"/>`);
    if (slot === ruler.firstSlot) continue;
    const middle = at(ruler.middle(slot));
    if (INLAY_FRETS.has(fret))
      parts.push(`<circle class="inlay" cx="${middle}" cy="${(TOP + bottom) / 2}" r="5"/>`);
    parts.push(`<text class="number" x="${middle}" y="${bottom + 31}">${fret}</text>`);
  }
  return parts.join('');
}

function strings(
  { neck }: NeckDrawing,
  ruler: Ruler,
  at: (x: number) => number,
  leftHanded: boolean,
): string {
  const count = neck.strings.length;
  return neck.strings
    .map(({ number, startSlot }) => {
      const y = ruler.y(number);
      const name = neck.tuning.courses[count - number]?.[0].name ?? '';
      const from = Math.max(OPEN_COLUMN, ruler.line(Math.max(startSlot, ruler.firstSlot)));
      const width = tidy(0.8 + (1.8 * (number - 1)) / Math.max(1, count - 1));
      const label = `<text class="open" x="${at(22)}" y="${y + 4}"${leftHanded ? ' style="text-anchor:start"' : ''}>${escapeXml(name)}</text>`;
      return `${label}<path class="string" stroke-width="${width}" d="M${at(from)} ${y}H${at(ruler.right + 8)}"/>`;
    })
    .join('');
}

function markSvg(mark: Mark, ruler: Ruler, at: (x: number) => number): string {
  const classes = ['mark', toneOf(mark.alteration)];
  if (mark.isQuiet) classes.push('quiet');
  else if (mark.degree === 1) classes.push('root');
  const size = mark.label.length > 3 ? ' style="font-size:9px"' : '';
  return (
    `<g class="${classes.join(' ')}" transform="translate(${at(ruler.place(mark.string, mark.slot))} ${ruler.y(mark.string)})">` +
    `<use href="#degree-${mark.degree}"/><text y="4"${size}>${mark.label}</text></g>`
  );
}

/** A dashed ring where a note lay, and an arrow over the string to where it lies now. */
function moves(drawing: NeckDrawing, ruler: Ruler, at: (x: number) => number, idPrefix: string): string {
  if (drawing.moves.length === 0) return '';
  const tip = `<defs><marker id="${idPrefix}-tip" viewBox="0 0 8 8" refX="6" refY="4" markerWidth="7" markerHeight="7" orient="auto"><path class="tip" d="M0 0L8 4L0 8Z"/></marker></defs>`;
  const isDrawn = ({ fromSlot, toSlot }: Move): boolean =>
    [fromSlot, toSlot].every((slot) => slot >= ruler.firstSlot && slot <= drawing.toSlot);
  return (
    tip +
    drawing.moves
      .filter(isDrawn)
      .map((move) => {
        const y = ruler.y(move.string);
        const from = at(ruler.place(move.string, move.fromSlot));
        const to = at(ruler.place(move.string, move.toSlot));
        const over = tidy((from + to) / 2);
        return (
          `<circle class="gone" cx="${from}" cy="${y}" r="9"/>` +
          `<path class="move" marker-end="url(#${idPrefix}-tip)" d="M${from} ${y - 8}Q${over} ${y - 22} ${to} ${y - 13}"/>`
        );
      })
      .join('')
  );
}

function tidy(value: number): number {
  return Math.round(value * 10) / 10;
}
