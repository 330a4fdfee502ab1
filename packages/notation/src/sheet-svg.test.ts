import { fingeringsOf } from '@stillroot/core';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { drawFingering, drawFretboard, type NeckDrawing } from './drawing.ts';
import { neckOf, scaleOf } from './given.ts';
import { neckSvg } from './neck-svg.ts';
import { escapeXml } from './neck-svg-text.ts';
import { sheetSvg } from './sheet-svg.ts';

const guitar = neckOf('E2-A2-D3-G3-B3-E4');
const banjo = neckOf('G4-D3-G3-B3-D4', { shortStrings: [{ string: 5, startsAtFret: 5 }] });
const aeolian = scaleOf('A', '2122122');
const phrygian = scaleOf('A', '1222122');

function inArea(title: string): NeckDrawing {
  const [best] = fingeringsOf(guitar, phrygian, { fret: 5, limit: 1 }).fingerings;
  if (best === undefined) throw new Error('no fingering');
  return drawFingering(guitar, phrygian, best, title, { before: aeolian });
}

/** What the values of an attribute are, everywhere in a document. */
function valuesOf(svg: string, attribute: string): readonly string[] {
  return [...svg.matchAll(new RegExp(` ${attribute}="([^"]*)"`, 'g'))].map(([, value = '']) => value);
}

const HOSTILE = `<script>alert("1")</script> & 'two' ]]> &amp; \u0000\u0007\u001b\u{FFFE}\uD800 三 𝄫`;
const CLEAN = `<script>alert("1")</script> & 'two' ]]> &amp;  三 𝄫`;

const seven = Array.from({ length: 7 }, (_, at) => inArea(`A Phrygian ${at + 1}`));
/** A mode of which a note is four semitones away from the major scale's. */
const far = drawFretboard(guitar, scaleOf('B#', '1111116'), 'far');
const documents: readonly (readonly [string, string, boolean])[] = [
  ['a neck for a page', neckSvg(inArea('x')), false],
  ['a neck that stands alone', neckSvg(inArea('x'), { standalone: true }), true],
  [
    'a left-handed neck',
    neckSvg(drawFretboard(banjo, aeolian, 'x'), { standalone: true, handedness: 'left' }),
    true,
  ],
  ['a neck with long labels', neckSvg(far, { standalone: true }), true],
  ['a neck with a hostile title', neckSvg(inArea(HOSTILE), { standalone: true }), true],
  ['a sheet of seven necks', sheetSvg('A sheet', seven), true],
  ['a sheet in four columns', sheetSvg('A sheet', seven, { columns: 4, handedness: 'left' }), true],
  ['a sheet with hostile titles', sheetSvg(HOSTILE, [inArea(HOSTILE), far]), true],
  ['a sheet of nothing', sheetSvg('Nothing', []), true],
];

describe('a drawing is a document that any reader of XML takes', () => {
  test.each(documents)('%s is well-formed', (_name, svg) => {
    expect(XMLValidator.validate(svg)).toBe(true);
    // XML 1.0 (fifth edition), production 2, Char.
    expect(svg).toMatch(/^[\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]*$/u);
    expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg"')).toBe(true);
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });

  test.each([['<svg><g></svg>'], ['<svg><title>a & b</title></svg>'], ['<svg class="a" class="b"/>']])(
    'and one that is not well-formed is told: %s',
    (broken) => {
      expect(XMLValidator.validate(broken)).not.toBe(true);
    },
  );

  test.each(documents)('%s gives each id once, and defines what it points at', (_name, svg, standsAlone) => {
    const ids = valuesOf(svg, 'id');
    expect(new Set(ids).size).toBe(ids.length);
    const pointed = [
      ...valuesOf(svg, 'marker-end').map((value) => value.slice('url(#'.length, -1)),
      ...valuesOf(svg, 'aria-labelledby').flatMap((value) => value.split(' ')),
      ...(standsAlone ? valuesOf(svg, 'href').map((value) => value.slice(1)) : []),
    ];
    expect(pointed.filter((id) => !ids.includes(id))).toEqual([]);
    expect(svg.includes('<style>')).toBe(standsAlone);
    expect(ids.includes('degree-1')).toBe(standsAlone);
  });

  test('two necks on one page have ids of their own', () => {
    const both = ['one', 'two'].flatMap((idPrefix) => valuesOf(neckSvg(inArea('x'), { idPrefix }), 'id'));
    expect(both).toHaveLength(6);
    expect(new Set(both).size).toBe(6);
  });
});

describe('text comes out as it went in', () => {
  const parser = new XMLParser({
    htmlEntities: true,
    trimValues: false,
    ignoreAttributes: false,
    attributeNamePrefix: '',
  });
  const read = (svg: string): Record<string, Record<string, unknown>> => parser.parse(svg);

  test('as the title of a neck, but for what XML cannot hold', () => {
    const title = read(neckSvg(inArea(HOSTILE)))['svg']?.['title'];
    expect(title).toEqual({ '#text': CLEAN, id: 'neck-t' });
  });

  test('as the title of a sheet', () => {
    const title = read(sheetSvg(HOSTILE, []))['svg']?.['title'];
    expect(title).toBe(CLEAN.replace('𝄫', '♭♭'));
  });

  test('as the name of an open string, an attribute, or nothing at all', () => {
    const attribute = parser.parse(`<a b="${escapeXml(HOSTILE)}"/>`)['a']['b'];
    expect(attribute).toBe(CLEAN);
    expect(escapeXml('')).toBe('');
    expect(escapeXml('A Aeolian, F♯')).toBe('A Aeolian, F♯');
  });
});

describe('double accidentals', () => {
  // Gb Locrian by hand: Gb Abb Bbb Cb Dbb Ebb Fb. C# Lydian has B#, and F## as its fourth.
  test.each([
    ['Gb', '1221222', 'A𝄫', 'A♭♭'],
    ['C#', '2221221', 'F𝄪', 'F×'],
  ])(
    'of %s %s are one sign on a page, and signs of any font in what leaves it',
    (root, steps, sign, plain) => {
      const drawing = drawFretboard(guitar, scaleOf(root, steps), 'x', 'notes');
      expect(neckSvg(drawing)).toContain(`>${sign}<`);
      for (const svg of [neckSvg(drawing, { standalone: true }), sheetSvg('x', [drawing])]) {
        expect(svg).toContain(`>${plain}<`);
        expect(svg).not.toMatch(/[𝄫𝄪]/u);
      }
    },
  );

  test('longer than three signs are set smaller, by a style that no rule of the page overrides', () => {
    const sized = [
      ...neckSvg(far, { standalone: true }).matchAll(
        /<use[^>]*><text(?: y="[\d.]+"| transform="[^"]*")([^>]*)>([^<]*)</g,
      ),
    ];
    expect(sized.some(([, style]) => style !== '')).toBe(true);
    for (const [, style, label = ''] of sized) {
      expect(style).toBe([...label].length > 3 ? ' style="font-size:9px"' : '');
    }
  });
});

describe('a sheet', () => {
  const cornersIn = (svg: string) =>
    [...svg.matchAll(/<g transform="translate\(([\d.]+) ([\d.]+)\)" role="img"/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);

  test('sets necks one under another, each with its title and its words', () => {
    const svg = sheetSvg('A sheet', seven);
    expect(new Set(cornersIn(svg).map(([x]) => x))).toEqual(new Set([0]));
    expect(new Set(cornersIn(svg).map(([, y]) => y)).size).toBe(7);
    expect([...svg.matchAll(/<text class="title"[^>]*>([^<]*)</g)].map(([, name]) => name)).toEqual(
      seven.map(({ title }) => title),
    );
    expect(valuesOf(svg, 'aria-label')).toEqual(seven.map((one) => `${one.title}. ${one.description}`));
  });

  test.each([
    [2, 4, 2],
    [4, 2, 4],
    [7, 1, 7],
    [9, 1, 7],
  ])('in %i columns sets them column by column, so that reading down goes on', (columns, rows, used) => {
    const corners = cornersIn(sheetSvg('A sheet', seven, { columns }));
    expect(new Set(corners.map(([x]) => x)).size).toBe(used);
    expect(new Set(corners.map(([, y]) => y)).size).toBe(rows);
    expect(corners).toEqual(corners.toSorted(([x1 = 0, y1 = 0], [x2 = 0, y2 = 0]) => x1 - x2 || y1 - y2));
  });

  test('is wide enough for its necks', () => {
    const [neckWidth = Number.NaN] = valuesOf(neckSvg(far, { standalone: true }), 'width').map(Number);
    for (const columns of [1, 2, 3]) {
      const [width = 0] = valuesOf(sheetSvg('A sheet', [far, far, far], { columns }), 'width').map(Number);
      expect(width).toBeGreaterThanOrEqual(neckWidth * columns);
    }
  });

  // A bold sans-serif letter is a little over half its size wide (measured in a browser: 0.58).
  test.each([1, 2, 7])('in %i columns is wide enough for its headline and its titles', (columns) => {
    const headline = 'Round of harmonic minor from A, six-string guitar, E2 A2 D3 G3 B3 E4';
    const name = 'A Superlocrian 𝄫7, the seventh mode of harmonic minor';
    const svg = sheetSvg(headline, [inArea(name), inArea(name)], { columns });
    const [width = 0] = valuesOf(svg, 'width').map(Number);
    expect(width).toBeGreaterThan(headline.length * 17 * 0.58);
    const [[firstX = 0] = [], [nextX = width] = []] = cornersIn(svg);
    expect((nextX > firstX ? nextX : width) - firstX).toBeGreaterThan(name.length * 14 * 0.58);
  });
});
