import { XMLParser } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { GLYPH_DEFINITIONS, GLYPH_RADIUS, glyphLabel, NECK_STYLE, toneOf } from './glyphs.ts';

interface Glyph {
  readonly id: string;
  readonly circle?: { readonly r: string };
  readonly path?: { readonly d: string };
  readonly polygon?: { readonly points: string };
}

const parser = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: '' });
const document: { readonly defs: { readonly g: readonly Glyph[] } } = parser.parse(
  `<defs>${GLYPH_DEFINITIONS}</defs>`,
);
const glyphs = document.defs.g;

function cornersOf(degree: number): readonly (readonly [number, number])[] {
  const points = glyphs[degree - 1]?.polygon?.points ?? '';
  return points.split(' ').map((point) => {
    const [x = Number.NaN, y = Number.NaN] = point.split(',').map(Number);
    return [x, y] as const;
  });
}

/** The colour of a property in the rule of a selector. */
function colourOf(selector: string, property: string): string {
  const rule = NECK_STYLE.split('\n').find((line) => line.startsWith(`${selector}{`)) ?? '';
  return new RegExp(`[{;]${property}:(#[0-9a-f]+)`).exec(rule)?.[1] ?? `no ${property} of ${selector}`;
}

/** Relative luminance (WCAG 2.2, "relative luminance"). */
function luminanceOf(colour: string): number {
  const hex = colour.length === 4 ? colour.replaceAll(/[0-9a-f]/g, '$&$&') : colour;
  const [red = Number.NaN, green = Number.NaN, blue = Number.NaN] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = Number.NaN, light = Number.NaN] = [luminanceOf(one), luminanceOf(other)].toSorted(
    (a, b) => a - b,
  );
  return (light + 0.05) / (dark + 0.05);
}

describe('the glyph of a degree', () => {
  test('is there for each of the seven, under its own id', () => {
    expect(glyphs.map(({ id }) => id)).toEqual([1, 2, 3, 4, 5, 6, 7].map((degree) => `degree-${degree}`));
  });

  test('is a disc for the root', () => {
    expect(glyphs[0]?.circle).toEqual({ r: String(GLYPH_RADIUS) });
  });

  test('is a lens with two corners for the second', () => {
    expect(glyphs[1]?.path?.d.match(/Q/g)).toHaveLength(2);
    expect(glyphs[1]?.path?.d.endsWith('Z')).toBe(true);
  });

  test.each([3, 4, 5, 6, 7])('has as many corners as its degree: %i', (degree) => {
    expect(new Set(cornersOf(degree).map(String)).size).toBe(degree);
    expect(cornersOf(degree)).toHaveLength(degree);
  });

  test.each([3, 4, 5, 6, 7])('is regular: all sides of %i corners are of one length', (degree) => {
    const corners = cornersOf(degree);
    const sides = corners.map(([x, y], at) => {
      const [nextX, nextY] = corners[(at + 1) % degree] ?? [Number.NaN, Number.NaN];
      return Math.hypot(nextX - x, nextY - y);
    });
    expect(Math.max(...sides) - Math.min(...sides)).toBeLessThan(0.2);
  });

  test.each([3, 4, 5, 6, 7])('stands in the middle of its place: %i', (degree) => {
    const corners = cornersOf(degree);
    const middleX = corners.reduce((sum, [x]) => sum + x, 0) / degree;
    const middleY = corners.reduce((sum, [, y]) => sum + y, 0) / degree;
    expect(Math.abs(middleX)).toBeLessThan(0.1);
    // The triangle is set lower, so that the figure in it stands where it is wide.
    expect(Math.abs(middleY - (degree === 3 ? 3 : 0))).toBeLessThan(0.1);
  });
});

describe('the label of a glyph', () => {
  test('stands in the middle of its glyph, as it is', () => {
    expect(glyphLabel(7, '♭7')).toBe('<text y="4">♭7</text>');
  });

  test('longer than three signs is set smaller', () => {
    for (const degree of [1, 2, 3, 4, 5, 6, 7]) {
      expect(glyphLabel(degree, '♯♯♯♯')).toContain('style="font-size:9px"');
      expect(glyphLabel(degree, '♭♭♭')).not.toContain('style');
    }
  });

  test('has its size and its place by classes on a page, whose style sheet knows them', () => {
    expect(glyphLabel(7, '♭7', true)).toBe('<text>♭7</text>');
    expect(glyphLabel(7, '♭♭♭7', true)).toBe('<text class="small">♭♭♭7</text>');
    expect(glyphLabel(3, '♭3', true)).toBe('<text class="low">♭3</text>');
    expect(glyphLabel(3, '♭♭♭3', true)).toBe('<text class="small low">♭♭♭3</text>');
  });

  // Measured in a browser: a flat or sharp and a figure in bold are 1.17 em wide, capitals 0.73 em high.
  test('of two signs fits into the triangle where its head is, and does not go below its side', () => {
    const [, y, scale] = /translate\(0 ([\d.]+)\)scale\(([\d.]+)\)/.exec(glyphLabel(3, '♭3')) ?? [];
    const corners = cornersOf(3);
    const [peak, foot] = [Math.min(...corners.map(([, at]) => at)), Math.max(...corners.map(([, at]) => at))];
    const fontSize = 12 * Number(scale);
    const head = Number(y) - 0.73 * fontSize;
    const roomAtHead = (2 * (head - peak)) / Math.sqrt(3);
    expect(roomAtHead).toBeGreaterThan(1.17 * fontSize + 1.6);
    expect(Number(y)).toBeLessThan(foot - 2);
  });
});

describe('the tone of an alteration', () => {
  test.each([
    [0, 'plain'],
    [-1, 'lowered'],
    [-3, 'lowered'],
    [1, 'raised'],
    [4, 'raised'],
  ] as const)('%i is %s', (alteration, tone) => {
    expect(toneOf(alteration)).toBe(tone);
  });
});

describe('the style of a drawing', () => {
  // Okabe and Ito, "Color Universal Design" (2002, revised 2008): blue 0/114/178, vermilion 213/94/0.
  test('tells lowered and raised degrees by blue and vermilion of the Okabe–Ito palette', () => {
    expect(colourOf('.neck .lowered', 'stroke')).toBe('#0072b2');
    expect(colourOf('.neck .raised', 'stroke')).toBe('#d55e00');
  });

  // WCAG 2.2, success criterion 1.4.3: at least 4.5 to 1 for text of this size.
  test.each([
    ['a plain mark', '.neck .mark text', '.neck .mark'],
    ['a lowered mark', '.neck .mark text', '.neck .lowered'],
    ['a raised mark', '.neck .mark text', '.neck .raised'],
    ['a root', '.neck .root text', '.neck .root'],
    ['a quiet mark', '.neck .quiet text', '.neck .quiet'],
    ['a fret number', '.neck .number', '.neck .paper'],
    ['an open string', '.neck .open', '.neck .paper'],
    ['a title', '.neck .title', '.neck .paper'],
  ])('sets the text of %s off from what is behind it', (_what, text, ground) => {
    expect(contrast(colourOf(text, 'fill'), colourOf(ground, 'fill'))).toBeGreaterThanOrEqual(4.5);
  });

  // WCAG 2.2, success criterion 1.4.11: at least 3 to 1 for the outline that carries the meaning.
  test.each([['.neck .mark'], ['.neck .lowered'], ['.neck .raised']])(
    'sets the outline of %s off from the wood',
    (mark) => {
      const wood = colourOf('.neck .wood', 'fill');
      expect(contrast(colourOf(mark, 'stroke'), wood)).toBeGreaterThanOrEqual(3);
    },
  );
});
