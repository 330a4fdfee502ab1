/**
 * The parts of a neck drawing as SVG: board, strings, marks and moves.
 */
import type { FretSlot, Neck } from '@stillroot/core';
import type { Mark, Move, NeckDrawing } from './drawing.ts';
import { glyphLabel, toneOf } from './glyphs.ts';
import { FRET_OVERHANG, type Ruler, TOP } from './neck-svg-ruler.ts';
import { escapeXml, tidy } from './neck-svg-text.ts';

/** What a part is drawn with. */
export interface Pen {
  readonly ruler: Ruler;
  /** Where a place is drawn, mirrored on a left-handed neck, to a tenth. */
  readonly at: (x: number) => number;
  readonly leftHanded: boolean;
  /** Whether styles are classes; see `NeckSvgOptions`. */
  readonly onPage: boolean;
  readonly idPrefix: string;
}

/** How far strings go on beyond the last fret that is shown. */
const STRING_END = 8;
const OPEN_NAME_X = 22;
const INLAY_FRETS: ReadonlySet<number> = new Set([3, 5, 7, 9, 12, 15, 17, 19, 21, 24]);
/** The wood with its frets, nut and capo, inlays and fret numbers. */
export function boardSvg({ neck }: NeckDrawing, { ruler, at }: Pen): string {
  const { firstSlot, lastSlot } = ruler;
  const bottom = ruler.y(neck.strings.length);
  const ends = { from: TOP - FRET_OVERHANG, to: bottom + FRET_OVERHANG };
  const corners = [
    [firstSlot, ends.from],
    [lastSlot, ends.from],
    [lastSlot, ends.to],
    [firstSlot, ends.to],
  ] as const;
  const outline = corners.map(([slot, y]) => `${at(ruler.lineX(slot, y))},${y}`).join(' ');
  // Of each kind of line there are many on a neck, and many necks on a site: one element holds them all.
  const lines: Record<'nut' | 'fret' | 'capo', string> = { fret: '', nut: '', capo: '' };
  let inlays = '';
  let numbers = '';
  const [middle, under] = [(TOP + bottom) / 2, bottom + 31];
  for (let slot = firstSlot; slot <= lastSlot; slot += 1) {
    const { fret } = neck.slots[slot] as FretSlot;
    const capos = neck.capoFret > 0 && fret === neck.capoFret ? capoRuns(neck) : [];
    const isCovered = capos.some((run) => run.length === neck.strings.length);
    const line = (from: number, to: number): string => {
      const [x, toX] = [at(ruler.lineX(slot, from)), at(ruler.lineX(slot, to))];
      return `M${x} ${from}${x === toX ? `V${to}` : `L${toX} ${to}`}`;
    };
    if (!isCovered) lines[slot === 0 ? 'nut' : 'fret'] += line(ends.from, ends.to);
    for (const run of capos) {
      const [first, last] = [ruler.y(Math.min(...run)), ruler.y(Math.max(...run))];
      lines.capo += line(first - FRET_OVERHANG, last + FRET_OVERHANG);
    }
    if (slot === firstSlot) continue;
    if (INLAY_FRETS.has(fret)) {
      inlays += `<circle class="inlay" cx="${at(ruler.middleX(slot, middle))}" cy="${middle}" r="5"/>`;
    }
    numbers += `<tspan x="${at(ruler.middleX(slot, under))}">${fret}</tspan>`;
  }
  const drawn = Object.entries(lines).map(([kind, d]) => (d ? `<path class="${kind}" d="${d}"/>` : ''));
  const numbered = numbers ? `<text class="number" y="${under}">${numbers}</text>` : '';
  return `<polygon class="wood" points="${outline}"/>${drawn.join('')}${inlays}${numbered}`;
}

/** The strings from where they begin, each with the name of its open note. */
export function stringsSvg({ neck }: NeckDrawing, { ruler, at, leftHanded, onPage }: Pen): string {
  const count = neck.strings.length;
  const anchor = leftHanded && !onPage ? ' style="text-anchor:start"' : '';
  return neck.strings
    .map(({ number, startSlot }) => {
      const y = ruler.y(number);
      const name = neck.tuning.courses[count - number]?.[0].name ?? '';
      const width = tidy(0.8 + (1.8 * (number - 1)) / Math.max(1, count - 1));
      const label = `<text class="open" x="${at(OPEN_NAME_X)}" y="${y + 4}"${anchor}>${escapeXml(name)}</text>`;
      if (startSlot > ruler.lastSlot) return label;
      const from = at(ruler.lineX(Math.max(startSlot, ruler.firstSlot), y));
      const to = at(ruler.lineX(ruler.lastSlot, y) + STRING_END);
      return `${label}<path class="string" stroke-width="${width}" d="M${from} ${y}H${to}"/>`;
    })
    .join('');
}

/** A degree's glyph with its label. */
export function markSvg(
  { string, slot, degree, alteration, label, isQuiet }: Mark,
  { ruler, at, onPage }: Pen,
): string {
  const tone = toneOf(alteration);
  const toned = onPage && tone === 'plain' ? '' : ` ${tone}`;
  const kind = isQuiet ? ' quiet' : degree === 1 ? ' root' : '';
  return (
    `<g class="mark${toned}${kind}" transform="translate(${at(ruler.placeX(string, slot))} ${ruler.y(string)})">` +
    `<use href="#${onPage ? 'd' : 'degree-'}${degree}"/>${glyphLabel(degree, label, onPage)}</g>`
  );
}

/**
 * A dashed ring where a note lay, and an arrow over the string to where it lies now. Where it lay beyond what is
 * shown, the arrow comes in from that edge, without a ring.
 */
export function movesSvg({ neck, moves }: NeckDrawing, { ruler, at, idPrefix }: Pen): string {
  const isArriving = ({ toSlot }: Move): boolean => toSlot >= ruler.firstSlot && toSlot <= ruler.lastSlot;
  const shown = moves.filter(isArriving);
  if (shown.length === 0) return '';
  const tip = `<defs><marker id="${idPrefix}-tip" viewBox="0 0 8 8" refX="6" refY="4" markerWidth="7" markerHeight="7" orient="auto"><path class="tip" d="M0 0L8 4L0 8Z"/></marker></defs>`;
  const arrows = shown.map(({ string, fromSlot, toSlot }) => {
    const y = ruler.y(string);
    const isOpen = fromSlot === neck.strings[string - 1]?.startSlot;
    const isLeft = fromSlot < ruler.firstSlot || (fromSlot === ruler.firstSlot && !isOpen);
    const isRight = fromSlot > ruler.lastSlot;
    const edge = isLeft
      ? ruler.lineX(ruler.firstSlot, y) - STRING_END
      : ruler.lineX(ruler.lastSlot, y) + STRING_END;
    const from = at(isLeft || isRight ? edge : ruler.placeX(string, fromSlot));
    const to = at(ruler.placeX(string, toSlot));
    const ring = isLeft || isRight ? '' : `<circle class="gone" cx="${from}" cy="${y}" r="9"/>`;
    return `${ring}<path class="move" marker-end="url(#${idPrefix}-tip)" d="M${from} ${y - 8}Q${tidy((from + to) / 2)} ${y - 22} ${to} ${y - 14}"/>`;
  });
  return tip + arrows.join('');
}

/** The strings under a capo, those side by side together: a capo over some strings only may be in pieces. */
function capoRuns({ capoStrings }: Neck): readonly (readonly number[])[] {
  const runs: number[][] = [];
  for (const string of capoStrings) {
    const last = runs.at(-1);
    if (last?.includes(string - 1)) last.push(string);
    else runs.push([string]);
  }
  return runs;
}
