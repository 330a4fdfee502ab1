/**
 * The map of all modes as SVG: every mark is a link, every family a group with a thread.
 */
import type { ModeEntry } from '@stillroot/catalog';
import { escapeXml, glyphShape } from '@stillroot/notation';
import { CHURCH_ENTRIES } from '../facts/church-modes.ts';
import {
  BRIGHTEST,
  DARKEST,
  leaning,
  MAP_BANDS,
  type MapBand,
  type MapColumn,
  MIDDLE_BRIGHTNESS,
} from '../facts/mode-map.ts';
import { familyPath, modePath } from '../facts/paths.ts';
import { MAP } from '../words/map.ts';
import { modeName } from '../words/names.ts';
import { capitalised, withMinus } from '../words/numbers.ts';
import { mapPlace } from '../words/sentences.ts';

const CELL = 20;
const BAND_GAP = 16;
const LEFT = 132;
const TOP = 52;
const RIGHT = 12;
const BOTTOM = 26;
/** A glyph is this much of its size elsewhere. */
const GLYPH_SCALE = 0.7;

const COLUMN_COUNT = MAP_BANDS.reduce((sum, { columns }) => sum + columns.length, 0);
const WIDTH = LEFT + COLUMN_COUNT * CELL + (MAP_BANDS.length - 1) * BAND_GAP + RIGHT;
const HEIGHT = TOP + (BRIGHTEST - DARKEST + 1) * CELL + BOTTOM;

/** The map as SVG. */
export function modeMapSvg(): string {
  const bands = MAP_BANDS.map((band, at) => bandSvg(band, LEFT + at * BAND_GAP));
  return (
    `<svg class="neck map modes" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" role="group" aria-label="${MAP.title}">` +
    `<defs>${definitions()}</defs>${rows()}<g class="joins" aria-hidden="true"></g>${bands.join('')}</svg>`
  );
}

/** One mark by itself, for the key. */
export function mapMark(degree: number, kind: string): string {
  return `<svg class="neck glyph map-mark modes" viewBox="-11 -11 22 22" aria-hidden="true"><g class="${kind}"><use href="#mode-${degree}"/></g></svg>`;
}

/** The marks of the seven degrees with their numbers and room to point at. */
function definitions(): string {
  return [1, 2, 3, 4, 5, 6, 7]
    .map(
      (degree) =>
        `<g id="mode-${degree}"><path class="hit" d="M-10-10h20v20h-20z" fill="none" stroke="none" pointer-events="all"/>` +
        `<g transform="scale(${GLYPH_SCALE})">${glyphShape(degree)}</g>` +
        `<text y="3.8" class="mode-number">${degree}</text></g>`,
    )
    .join('');
}

/** A line for every church mode across the map, and a few numbers beyond them. */
function rows(): string {
  const church = CHURCH_ENTRIES.map(({ name, mode: { brightness } }) => {
    const kind = brightness === MIDDLE_BRIGHTNESS ? 'row middle' : 'row';
    return `<path class="${kind}" d="M${LEFT - 4} ${y(brightness)}H${WIDTH - RIGHT}"/><text class="row-name" x="${LEFT - 10}" y="${y(brightness) + 5}">${modeName(name)} ${withMinus(brightness)}</text>`;
  });
  const others = [BRIGHTEST, 10, 5, -10, -15, DARKEST].map((brightness) => {
    const word =
      brightness === BRIGHTEST ? `${MAP.brighter} ` : brightness === DARKEST ? `${MAP.darker} ` : '';
    return `<text class="row-name" x="${LEFT - 10}" y="${y(brightness) + 5}">${word}${withMinus(brightness)}</text>`;
  });
  const head = `<text class="row-name" x="${LEFT - 10}" y="${TOP - 22}">${MAP.largestSteps}</text>`;
  return head + church.join('') + others.join('');
}

function bandSvg({ sizes, columns }: MapBand, shift: number): string {
  const [first] = columns;
  const x = shift + (first?.column ?? 0) * CELL;
  const width = columns.length * CELL;
  const label = `<text class="band-name" x="${x}" y="${TOP - 22}">${bandName(sizes)}</text>`;
  const line = `<path class="band" d="M${x} ${TOP - 12}h${width}"/>`;
  return (
    label +
    line +
    columns
      .map((column) => columnSvg(column, x + (column.column - (first?.column ?? 0)) * CELL + CELL / 2))
      .join('')
  );
}

function columnSvg({ family, modes }: MapColumn, x: number): string {
  const brightest = modes[0]?.mode.brightness ?? 0;
  const darkest = modes.at(-1)?.mode.brightness ?? 0;
  const marks = modes.map((entry) => markSvg(entry, family.name, x)).join('');
  const name = family.isTradeNamed
    ? `<a class="family-name" tabindex="-1" href="${familyPath(family.slug)}"><text transform="translate(${x + 5} ${y(darkest) + 16})rotate(-90)">${escapeXml(capitalised(modeName(family.name)))}</text></a>`
    : '';
  return `<g class="family"><path class="thread" d="M${x} ${y(brightest)}V${y(darkest)}"/>${marks}${name}</g>`;
}

function markSvg(
  { mode, slug, name, degree, isTradeNamed }: ModeEntry,
  familyName: string,
  x: number,
): string {
  const isChurch = mode.base.moved.length === 0;
  // One mark can be reached with the Tab key, the others from it.
  const isEntrance = isChurch && mode.brightness === MIDDLE_BRIGHTNESS;
  const kind = isChurch ? 'church' : `${isTradeNamed ? 'known ' : ''}${leaning(mode)}`;
  const title = `${modeName(name)}, ${mapPlace(degree, modeName(familyName), withMinus(mode.brightness))}`;
  return `<a id="${mode.id}" class="${kind}" tabindex="${isEntrance ? 0 : -1}" href="${modePath(slug)}"><title>${escapeXml(title)}</title><use href="#mode-${degree}" x="${x}" y="${y(mode.brightness)}"/></a>`;
}

/** What the sizes of a band's steps are, as short as its columns allow. */
function bandName(sizes: string): string {
  const large = [...sizes].filter((size) => Number(size) > 2);
  return large.length > 0 ? large.join(' + ') : '2';
}

function y(brightness: number): number {
  return TOP + (BRIGHTEST - brightness) * CELL + CELL / 2;
}
