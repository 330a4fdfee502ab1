import { type Neck, placesOn } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { drawFingering } from './drawing.ts';
import { neckOf, scaleOf } from './given.ts';
import { fingeringAt, NECKS, pictureOf, wholeNeck } from './neck-svg-picture.ts';

const { guitar, bass, dulcimer, fanned } = NECKS;
const aeolian = scaleOf('A', '2122122');
const ionian = scaleOf('D', '2212221');

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

  // The widest glyph is under 33 units; side by side the tips of two meet, and no more.
  test.each([
    ['a dulcimer to its last fret', dulcimer],
    ['a guitar', guitar],
    ['a neck of 36 frets', neckOf('E2', { frets: 36 })],
    ['a neck with fanned frets', fanned],
  ])('and no two marks of a string overlap on the whole neck of %s', (_name, neck) => {
    for (const scale of [ionian, scaleOf('D', '1111116')]) {
      const { marks, numbers, strings } = wholeNeck(neck, scale);
      for (const { y } of strings) {
        const xs = marks.filter((mark) => mark.y === y).map(({ x }) => x);
        for (const [at, x] of xs.slice(1).entries()) expect(x - (xs[at] ?? Number.NaN)).toBeGreaterThan(27);
      }
      // Figures of 12 units are about 7 wide.
      for (const [at, { x, label }] of numbers.slice(1).entries()) {
        const before = numbers[at];
        const apart = x - (before?.x ?? Number.NaN);
        expect(apart).toBeGreaterThan(((before?.label.length ?? 0) + label.length) * 3.5);
      }
    }
  });
});

// Each string is divided by L · (1 − 2^(−n/12)) on its own length; 711 mm and 648 mm by hand.
describe('fanned frets', () => {
  const { lines, marks, strings } = wholeNeck(fanned, aeolian);
  /** Where a line is at a height. */
  const xAt = (fret: number, y: number) => {
    const line = lines[fret];
    if (line === undefined) return Number.NaN;
    return line.x + ((line.bottomX - line.x) * (y - line.y)) / (line.bottomY - line.y);
  };
  const rows = strings.map(({ y }) => y);
  const [top = Number.NaN] = rows;
  const bottom = rows.at(-1) ?? Number.NaN;

  test('are slanted one way at the nut, the other way at the last fret, and square at the seventh', () => {
    expect(lines[0]?.x).toBeGreaterThan(lines[0]?.bottomX ?? Number.NaN);
    expect(lines[7]?.x).toBe(lines[7]?.bottomX);
    expect(lines[24]?.x).toBeLessThan(lines[24]?.bottomX ?? Number.NaN);
  });

  test.each([
    [1, 39.9, 36.4],
    [5, 178.3, 162.5],
    [12, 355.5, 324],
    [24, 533.25, 486],
  ])(
    'lie at fret %i %f mm from the nut on the lowest string and %f mm on the highest',
    (fret, bassMm, trebleMm) => {
      const unitsPerMm = (xAt(12, bottom) - xAt(0, bottom)) / 355.5;
      expect(Math.abs((xAt(fret, bottom) - xAt(0, bottom)) / unitsPerMm - bassMm)).toBeLessThan(0.2);
      expect(Math.abs((xAt(fret, top) - xAt(0, top)) / unitsPerMm - trebleMm)).toBeLessThan(0.2);
    },
  );

  test('have their marks half-way between them, string by string, and open notes left of the nut', () => {
    for (const { x, y } of marks) {
      const right = lines.findIndex((_, fret) => xAt(fret, y) > x);
      if (right === 0) expect(xAt(0, y) - x).toBeCloseTo(20, 0);
      else expect(Math.abs(x - (xAt(right - 1, y) + xAt(right, y)) / 2)).toBeLessThan(0.2);
    }
    const read = marks.map(
      ({ x, y }) => `${rows.indexOf(y) + 1}:${lines.findIndex((_, fret) => xAt(fret, y) > x)}`,
    );
    expect(read).toEqual(placesOn(fanned, aeolian).map(({ string, fret }) => `${string}:${fret}`));
  });

  test('have each string begin and end with them', () => {
    for (const { y, startX, endX } of strings) {
      expect(Math.abs(startX - xAt(0, y))).toBeLessThan(0.2);
      expect(Math.abs(endX - 8 - xAt(24, y))).toBeLessThan(0.2);
    }
  });

  test('are slanted as much in an area as on the whole neck', () => {
    const area = pictureOf(drawFingering(fanned, aeolian, fingeringAt(fanned, aeolian, 12), 'x'));
    expect(area.lines.every(({ x, bottomX }) => x < bottomX)).toBe(true);
  });

  test('of one string alone are upright', () => {
    const alone = neckOf('E2', {}, { scaleLengthsMm: { bass: 711, treble: 648 } });
    expect(wholeNeck(alone, aeolian).lines.every(({ x, bottomX }) => x === bottomX)).toBe(true);
  });
});
