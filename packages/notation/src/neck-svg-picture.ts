/**
 * Reads a neck drawing back, for the tests of this package: what is seen, without knowing how it was drawn. No
 * part of its door.
 */
import { type Fingering, fingeringsOf, type Neck, type Scale } from '@stillroot/core';
import { XMLParser } from 'fast-xml-parser';
import { drawFretboard, type NeckDrawing } from './drawing.ts';
import { neckOf } from './given.ts';
import { type Handedness, neckSvg } from './neck-svg.ts';

/** The dulcimer's Mixolydian fret pattern with the added 6½ and 13½. */
const partialFrets = [
  ...[2, 4, 5, 7, 9, 10].map((semitones, at) => ({ fret: at + 1, semitones })),
  { fret: 6.5, semitones: 11 },
  ...[12, 14, 16, 17, 19, 21, 22].map((semitones, at) => ({ fret: at + 7, semitones })),
  { fret: 13.5, semitones: 23 },
  ...[24, 26, 28].map((semitones, at) => ({ fret: at + 14, semitones })),
];

/** The necks that are drawn. */
export const NECKS = {
  guitar: neckOf('E2-A2-D3-G3-B3-E4'),
  capoed: neckOf('E2-A2-D3-G3-B3-E4', {}, { capoFret: 3 }),
  bass: neckOf('E1-A1-D2-G2', { scaleLengthMm: 863.6, frets: 21 }),
  banjo: neckOf('G4-D3-G3-B3-D4', { shortStrings: [{ string: 5, startsAtFret: 5 }] }),
  dulcimer: neckOf('D3-A3-D4/D4', { scaleLengthMm: 700, frets: 16, partialFrets }),
  fanned: neckOf('B1-E2-A2-D3-G3-B3-E4', { frets: 24 }, { scaleLengthsMm: { bass: 711, treble: 648 } }),
} as const;

/** The best fingering of a scale in the area that begins at a fret. */
export function fingeringAt(neck: Neck, scale: Scale, fret: number): Fingering {
  const [best] = fingeringsOf(neck, scale, { fret, limit: 1 }).fingerings;
  if (best === undefined) throw new Error('no fingering');
  return best;
}

/** What a reader of the picture sees, without knowing how it was drawn. */
export interface Picture {
  readonly width: number;
  /** The lines across the strings: nut, capo and frets, from left to right on top. */
  readonly lines: readonly {
    readonly kind: string;
    readonly x: number;
    readonly y: number;
    readonly bottomX: number;
    readonly bottomY: number;
  }[];
  readonly numbers: readonly { readonly label: string; readonly x: number }[];
  readonly strings: readonly {
    readonly y: number;
    readonly startX: number;
    readonly endX: number;
    readonly thickness: number;
  }[];
  readonly names: readonly string[];
  readonly marks: readonly {
    readonly x: number;
    readonly y: number;
    readonly classes: readonly string[];
    readonly glyph: string;
    readonly label: string;
  }[];
  readonly rings: readonly { readonly x: number; readonly y: number }[];
  readonly arrows: readonly { readonly fromX: number; readonly toX: number; readonly toY: number }[];
}

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
  readonly children: readonly Element[];
}

function elementsIn(nodes: readonly Readonly<Record<string, unknown>>[]): readonly Element[] {
  return nodes.flatMap((node) => {
    const name = Object.keys(node).find((key) => key !== ':@' && key !== '#text');
    if (name === undefined) return [];
    const inner = node[name] as typeof nodes;
    const text = inner.map((one) => one['#text'] ?? '').join('');
    const attributes = (node[':@'] ?? {}) as Element['attributes'];
    return [{ name, attributes, text, children: elementsIn(inner) }];
  });
}

/** What is seen of a drawing. */
export function pictureOf(drawing: NeckDrawing, handedness: Handedness = 'right'): Picture {
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: '',
    parseTagValue: false,
  });
  const [svg] = elementsIn(parser.parse(neckSvg(drawing, { handedness })));
  const ofClass = (...kinds: readonly string[]) =>
    (svg?.children ?? []).filter(({ attributes }) =>
      kinds.includes(attributes['class']?.split(' ')[0] ?? ''),
    );
  /** The number at a place in an attribute. */
  const at = ({ attributes }: Element, name: string, index = 0): number =>
    Number(attributes[name]?.match(/-?[\d.]+/g)?.[index]);
  return {
    width: svg === undefined ? Number.NaN : at(svg, 'viewBox', 2),
    lines: ofClass('nut', 'capo', 'fret')
      .flatMap(({ attributes }) =>
        (attributes['d']?.match(/M[^M]+/g) ?? []).map((line) => {
          const [x = Number.NaN, y = Number.NaN, ...to] = (line.match(/-?[\d.]+/g) ?? []).map(Number);
          const [bottomX = x, bottomY = Number.NaN] = line.includes('V') ? [x, ...to] : to;
          return { kind: attributes['class'] ?? '', x, y, bottomX, bottomY };
        }),
      )
      .toSorted((a, b) => a.x - b.x),
    numbers: ofClass('number').flatMap(({ children }) =>
      children.map((one) => ({ label: one.text, x: at(one, 'x') })),
    ),
    strings: ofClass('string').map((one) => ({
      startX: at(one, 'd'),
      y: at(one, 'd', 1),
      endX: at(one, 'd', 2),
      thickness: at(one, 'stroke-width'),
    })),
    names: ofClass('open').map(({ text }) => text),
    marks: ofClass('mark').map((one) => ({
      x: at(one, 'transform'),
      y: at(one, 'transform', 1),
      classes: one.attributes['class']?.split(' ') ?? [],
      glyph: one.children[0]?.attributes['href'] ?? '',
      label: one.children[1]?.text ?? '',
    })),
    rings: ofClass('gone').map((one) => ({ x: at(one, 'cx'), y: at(one, 'cy') })),
    arrows: ofClass('move').map((one) => ({
      fromX: at(one, 'd'),
      toX: at(one, 'd', 4),
      toY: at(one, 'd', 5),
    })),
  };
}

/** Where something stands along a neck with parallel frets: in the space of one, on a line, or beyond. */
export function fretAt({ lines, numbers }: Picture, x: number): string {
  if (lines.some((line) => line.x === x)) return 'on a line';
  const right = lines.findIndex((line) => line.x > x);
  const [from, to] = [lines[right - 1]?.x, lines[right]?.x];
  if (from === undefined || to === undefined) return 'open';
  return numbers
    .filter((one) => one.x > from && one.x < to)
    .map(({ label }) => label)
    .join();
}

/** The string and the fret of every mark, as they are read off the picture. */
export function placesIn(picture: Picture, marks = picture.marks): readonly string[] {
  return marks.map(({ x, y }) => {
    const string = picture.strings.findIndex((one) => one.y === y) + 1;
    return `${string}:${fretAt(picture, x)}`;
  });
}

/** What is seen of a whole neck with the notes of a scale. */
export function wholeNeck(neck: Neck, scale: Scale, handedness: Handedness = 'right'): Picture {
  return pictureOf(drawFretboard(neck, scale, 'whole neck', 'notes'), handedness);
}
