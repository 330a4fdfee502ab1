import { type Fingering, fingeringsOf, type Neck, placesOn, type Scale } from '@stillroot/core';
import { XMLParser } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { drawFingering, drawFretboard, type NeckDrawing } from './drawing.ts';
import { neckOf, scaleOf } from './given.ts';
import { neckSvg } from './neck-svg.ts';

function fingeringAt(neck: Neck, scale: Scale, fret: number): Fingering {
  const [best] = fingeringsOf(neck, scale, { fret, limit: 1 }).fingerings;
  if (best === undefined) throw new Error('no fingering');
  return best;
}

/** The dulcimer's Mixolydian fret pattern with the added 6½ and 13½. */
const partialFrets = [
  ...[2, 4, 5, 7, 9, 10].map((semitones, at) => ({ fret: at + 1, semitones })),
  { fret: 6.5, semitones: 11 },
  ...[12, 14, 16, 17, 19, 21, 22].map((semitones, at) => ({ fret: at + 7, semitones })),
  { fret: 13.5, semitones: 23 },
  ...[24, 26, 28].map((semitones, at) => ({ fret: at + 14, semitones })),
];
const GUITAR = 'E2-A2-D3-G3-B3-E4';
const guitar = neckOf(GUITAR);
const capoed = neckOf(GUITAR, {}, { capoFret: 3 });
const bass = neckOf('E1-A1-D2-G2', { scaleLengthMm: 863.6, frets: 21 });
const banjo = neckOf('G4-D3-G3-B3-D4', { shortStrings: [{ string: 5, startsAtFret: 5 }] });
const dulcimer = neckOf('D3-A3-D4/D4', { scaleLengthMm: 700, frets: 16, partialFrets });
const aeolian = scaleOf('A', '2122122');
const ionian = scaleOf('D', '2212221');
const phrygian = scaleOf('A', '1222122');

/** What a reader of the picture sees, without knowing how it was drawn. */
interface Picture {
  readonly width: number;
  /** The lines across the strings: nut, capo and frets, from left to right. */
  readonly lines: readonly { readonly kind: string; readonly x: number }[];
  readonly numbers: readonly { readonly label: string; readonly x: number }[];
  readonly strings: readonly { readonly y: number; readonly startX: number; readonly thickness: number }[];
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

function pictureOf(drawing: NeckDrawing, leftHanded = false): Picture {
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: '',
    parseTagValue: false,
  });
  const [svg] = elementsIn(parser.parse(neckSvg(drawing, { leftHanded })));
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
      .map((one) => ({ kind: one.attributes['class'] ?? '', x: at(one, 'd') }))
      .toSorted((a, b) => a.x - b.x),
    numbers: ofClass('number').map((one) => ({ label: one.text, x: at(one, 'x') })),
    strings: ofClass('string').map((one) => ({
      startX: at(one, 'd'),
      y: at(one, 'd', 1),
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

/** Where something stands along the neck: in the space of a fret, on a line, or beyond the lines. */
function fretAt({ lines, numbers }: Picture, x: number): string {
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
function placesIn(picture: Picture, marks = picture.marks): readonly string[] {
  return marks.map(({ x, y }) => {
    const string = picture.strings.findIndex((one) => one.y === y) + 1;
    return `${string}:${fretAt(picture, x)}`;
  });
}

function wholeNeck(neck: Neck, scale: Scale, leftHanded = false): Picture {
  return pictureOf(drawFretboard(neck, scale, 'whole neck', 'notes'), leftHanded);
}

describe('frets stand at their true distances', () => {
  // L · (1 − 2^(−n/12)), reckoned by hand for 648 mm and for 863.6 mm (34 in).
  test.each([
    [
      'guitar',
      guitar,
      324,
      [
        [1, 36.4],
        [5, 162.5],
        [7, 215.5],
        [12, 324],
        [19, 431.8],
        [22, 466.2],
      ],
    ],
    [
      'bass',
      bass,
      431.8,
      [
        [1, 48.5],
        [5, 216.6],
        [7, 287.2],
        [12, 431.8],
        [21, 606.9],
      ],
    ],
  ] as const)('on a %s', (_name, neck, octaveMm, distances) => {
    const { lines } = wholeNeck(neck, aeolian);
    const xOf = (fret: number) => lines[fret]?.x ?? Number.NaN;
    for (const [fret, mm] of distances) {
      const expected = (mm * (xOf(12) - xOf(0))) / octaveMm;
      expect(Math.abs(xOf(fret) - xOf(0) - expected)).toBeLessThan(0.3);
    }
  });

  test('so that four frets of a bass are wider than those of a mandolin', () => {
    const mandolin = neckOf('G3/G3-D4/D4-A4/A4-E5/E5', { scaleLengthMm: 352 });
    const widthOf = (neck: Neck) => {
      const area = { from: 0, to: 4 };
      const alone = { ...fingeringAt(guitar, aeolian, 5), area };
      return pictureOf(drawFingering(neck, aeolian, alone, 'x', { area })).width;
    };
    expect(widthOf(bass)).toBeGreaterThan(widthOf(mandolin));
  });

  test('and the narrowest that is shown has room for a glyph', () => {
    const area = { from: 9, to: 15 };
    const fingering = { ...fingeringAt(dulcimer, ionian, 0), area };
    const { lines } = pictureOf(drawFingering(dulcimer, ionian, fingering, 'x'));
    const spaces = lines.slice(1).map(({ x }, at) => x - (lines[at]?.x ?? Number.NaN));
    expect(spaces).toHaveLength(8);
    expect(Math.min(...spaces)).toBeGreaterThan(33.5);
  });
});

describe('marks stand at their string and fret', () => {
  test.each([
    ['a guitar', guitar, aeolian],
    ['a bass', bass, aeolian],
    ['a dulcimer', dulcimer, ionian],
    ['a single string', neckOf('E2'), aeolian],
  ])('on the whole neck of %s, right-handed and left-handed', (_name, neck, scale) => {
    const places = placesOn(neck, scale);
    for (const leftHanded of [false, true]) {
      const picture = wholeNeck(neck, scale, leftHanded);
      expect(placesIn(picture)).toEqual(places.map(({ string, fret }) => `${string}:${fret || 'open'}`));
      expect(picture.marks.map(({ glyph }) => glyph)).toEqual(
        places.map(({ degree }) => `#degree-${degree}`),
      );
    }
  });

  test('half-way between two frets, and within the picture', () => {
    const { marks, lines, width } = wholeNeck(guitar, aeolian);
    for (const { x } of marks.filter((mark) => mark.x > (lines[0]?.x ?? 0))) {
      const right = lines.findIndex((line) => line.x > x);
      const middle = ((lines[right - 1]?.x ?? Number.NaN) + (lines[right]?.x ?? Number.NaN)) / 2;
      expect(Math.abs(x - middle)).toBeLessThanOrEqual(0.1);
      expect(x).toBeLessThan(width);
    }
  });

  test('in an area, with those that are not played drawn quietly and roots that are played as roots', () => {
    const fingering = fingeringAt(guitar, aeolian, 5);
    const picture = pictureOf(drawFingering(guitar, aeolian, fingering, 'x'));
    const played = picture.marks.filter(({ classes }) => !classes.includes('quiet'));
    const roots = picture.marks.filter(({ classes }) => classes.includes('root'));
    expect(placesIn(picture, played).toSorted()).toEqual(
      fingering.notes.map(({ string, fret }) => `${string}:${fret}`).toSorted(),
    );
    expect(picture.marks.length).toBeGreaterThan(played.length);
    expect(placesIn(picture, roots).toSorted()).toEqual(
      fingering.notes
        .flatMap(({ string, fret, degree }) => (degree === 1 ? [`${string}:${fret}`] : []))
        .toSorted(),
    );
    expect(picture.numbers.map(({ label }) => label)).toEqual(['5', '6', '7', '8']);
    expect(picture.lines.every(({ kind }) => kind === 'fret')).toBe(true);
  });

  test('open strings left of the nut', () => {
    const { marks, lines } = wholeNeck(guitar, aeolian);
    expect(lines[0]?.kind).toBe('nut');
    const beyond = marks.filter(({ x }) => x < (lines[0]?.x ?? 0));
    expect(beyond.map(({ label }) => label)).toEqual(['E', 'B', 'G', 'D', 'A', 'E']);
  });

  test('string 1 on top, each string thicker than the one above', () => {
    const { strings, names } = wholeNeck(guitar, aeolian);
    expect(names).toEqual(['E4', 'B3', 'G3', 'D3', 'A2', 'E2']);
    for (const key of ['y', 'thickness'] as const) {
      const values = strings.map((string) => string[key]);
      expect(values).toEqual(values.toSorted((a, b) => a - b));
      expect(new Set(values).size).toBe(6);
    }
  });
});

describe('a left-handed neck', () => {
  const before = scaleOf('A', '2122122');
  const drawings = [
    drawFretboard(banjo, aeolian, 'x'),
    drawFretboard(capoed, aeolian, 'x', 'notes'),
    drawFingering(guitar, phrygian, fingeringAt(guitar, phrygian, 5), 'x', { before }),
  ];

  test.each(drawings.map((drawing, at) => [at, drawing] as const))(
    'mirrors the picture and not the labels: %i',
    (_at, drawing) => {
      const [right, left] = [pictureOf(drawing), pictureOf(drawing, true)];
      const mirrored = (x: number) => Math.round((right.width - x) * 10) / 10;
      expect(left.width).toBe(right.width);
      expect(left.names).toEqual(right.names);
      expect(left.marks).toEqual(right.marks.map((mark) => ({ ...mark, x: mirrored(mark.x) })));
      expect(left.numbers).toEqual(right.numbers.map((one) => ({ ...one, x: mirrored(one.x) })));
      expect(left.lines).toEqual(right.lines.map((one) => ({ ...one, x: mirrored(one.x) })).toReversed());
      expect(left.rings).toEqual(right.rings.map((one) => ({ ...one, x: mirrored(one.x) })));
      expect(left.arrows).toEqual(
        right.arrows.map((one) => ({ ...one, fromX: mirrored(one.fromX), toX: mirrored(one.toX) })),
      );
    },
  );

  test('has its nut on the right, its open strings right of it, and fret 1 left of it', () => {
    const { lines, marks, numbers, width } = wholeNeck(guitar, aeolian, true);
    const nut = lines.at(-1);
    expect(nut?.kind).toBe('nut');
    const open = marks.filter(({ x }) => x > (nut?.x ?? 0));
    expect(open).toHaveLength(6);
    expect(Math.max(...open.map(({ x }) => x))).toBeLessThan(width);
    expect(numbers[0]?.label).toBe('1');
    expect(numbers[0]?.x).toBeGreaterThan(numbers[1]?.x ?? 0);
  });
});

describe('what is not as on other necks is drawn', () => {
  test('a short string of a banjo, which begins at its fifth fret, where its open note is marked', () => {
    const { strings, lines, marks } = wholeNeck(banjo, scaleOf('G', '2212221'));
    const fifth = lines[5]?.x;
    expect(strings.map(({ startX }) => startX)).toEqual([...new Array(4).fill(lines[0]?.x), fifth]);
    const onShort = marks.filter(({ y }) => y === strings[4]?.y);
    expect(Math.min(...onShort.map(({ x }) => x))).toBe(fifth);
    expect(onShort[0]?.label).toBe('G');
  });

  test('a capo, at its fret, with the open notes on it and the strings from it', () => {
    const { lines, strings, marks } = wholeNeck(capoed, aeolian);
    const capo = lines[3];
    expect(lines.filter(({ kind }) => kind === 'capo')).toEqual([capo]);
    expect(new Set(strings.map(({ startX }) => startX))).toEqual(new Set([capo?.x]));
    // Open strings three semitones up: G D Bb F C G, of which A Aeolian has G, D, F, C and G.
    expect(marks.filter(({ x }) => x === capo?.x).map(({ label }) => label)).toEqual([
      'G',
      'D',
      'F',
      'C',
      'G',
    ]);
    expect(marks.every(({ x }) => x >= (capo?.x ?? Number.NaN))).toBe(true);
  });

  test('a capo in place of the nut, where the area begins at it', () => {
    const picture = pictureOf(drawFingering(capoed, aeolian, fingeringAt(capoed, aeolian, 0), 'x'));
    expect(picture.lines.map(({ kind }) => kind).slice(0, 2)).toEqual(['capo', 'fret']);
    expect(picture.numbers[0]?.label).toBe('4');
    expect(placesIn(picture)).toContain('4:open');
  });

  test('the half frets of a dulcimer, with their numbers', () => {
    expect(
      wholeNeck(dulcimer, ionian)
        .numbers.map(({ label }) => label)
        .join(' '),
    ).toBe('1 2 3 4 5 6 6.5 7 8 9 10 11 12 13 13.5 14 15 16');
  });

  test('a moved note, by a ring at the old place and an arrow to the new one', () => {
    const drawing = drawFingering(guitar, phrygian, fingeringAt(guitar, phrygian, 5), 'x', {
      before: aeolian,
    });
    const picture = pictureOf(drawing);
    // From A Aeolian to A Phrygian B falls to Bb: fret 7 to fret 6 of both E strings.
    expect(picture.rings.map(({ y }) => picture.strings.findIndex((one) => one.y === y) + 1)).toEqual([1, 6]);
    expect(picture.rings.map(({ x }) => fretAt(picture, x))).toEqual(['7', '7']);
    expect(picture.arrows.map(({ fromX }) => fretAt(picture, fromX))).toEqual(['7', '7']);
    expect(picture.arrows.map(({ toX }) => fretAt(picture, toX))).toEqual(['6', '6']);
    for (const { toX, toY } of picture.arrows) {
      expect(picture.marks.some(({ x, y }) => x === toX && y > toY && y - toY < 14)).toBe(true);
    }
  });

  test('no ring and no arrow where nothing came before', () => {
    const picture = pictureOf(drawFingering(guitar, phrygian, fingeringAt(guitar, phrygian, 5), 'x'));
    expect([...picture.rings, ...picture.arrows]).toEqual([]);
  });
});
