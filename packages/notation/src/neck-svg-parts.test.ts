import { describe, expect, test } from 'vitest';
import { drawFingering } from './drawing.ts';
import { neckOf, scaleOf } from './given.ts';
import {
  fingeringAt,
  fretAt,
  NECKS,
  type Picture,
  pictureOf,
  placesIn,
  wholeNeck,
} from './neck-svg-picture.ts';

const { guitar, capoed, banjo, dulcimer } = NECKS;
const aeolian = scaleOf('A', '2122122');
const ionian = scaleOf('D', '2212221');
const phrygian = scaleOf('A', '1222122');

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

  test('a capo over some strings, in as many pieces as it takes, with the fret under it', () => {
    const partial = neckOf('E2-A2-D3-G3-B3-E4', {}, { capoFret: 2, capoStrings: [2, 4, 5] });
    const { lines, strings } = wholeNeck(partial, aeolian);
    const capos = lines.filter(({ kind }) => kind === 'capo');
    const under = capos.map(({ y, bottomY }) =>
      strings.flatMap((string, at) => (string.y > y && string.y < bottomY ? [at + 1] : [])),
    );
    expect(under).toEqual([[2], [4, 5]]);
    const fret = lines.filter(({ kind }) => kind !== 'capo')[2];
    expect(capos.map(({ x }) => x)).toEqual([fret?.x, fret?.x]);
    expect(strings.map(({ startX }) => startX === fret?.x)).toEqual([false, true, false, true, true, false]);
  });

  test('a capo on a half fret of a dulcimer', () => {
    const [first, ...rest] = dulcimer.instrument.tunings[0].courses.map(([{ name }]) => name);
    const halved = neckOf([first, ...rest].join('-'), dulcimer.instrument, { capoFret: 6.5 });
    const { lines, strings } = wholeNeck(halved, ionian);
    const capo = lines.find(({ kind }) => kind === 'capo');
    expect(lines.findIndex(({ kind }) => kind === 'capo')).toBe(7);
    expect(new Set(strings.map(({ startX }) => startX))).toEqual(new Set([capo?.x]));
  });

  test('a short string that begins beyond what is shown, by its name alone', () => {
    const fingering = { ...fingeringAt(banjo, ionian, 0), area: { from: 0, to: 3 } };
    const { names, strings } = pictureOf(drawFingering(banjo, ionian, fingering, 'x'));
    expect([names.length, strings.length]).toEqual([5, 4]);
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
});

// By hand: from A Aeolian to A Phrygian B falls to Bb; on the D string that is fret 9 to 8.
describe('a moved note', () => {
  const from5 = (area: { readonly from: number; readonly to: number }) =>
    pictureOf(
      drawFingering(guitar, phrygian, fingeringAt(guitar, phrygian, 5), 'x', { area, before: aeolian }),
    );
  const stringAt = ({ strings }: Picture, y: number) => strings.findIndex((one) => one.y === y) + 1;

  test('is drawn as a ring at the old place and an arrow to the new one', () => {
    const picture = from5({ from: 5, to: 9 });
    expect(picture.rings.map(({ y }) => stringAt(picture, y))).toEqual([1, 4, 6]);
    expect(picture.rings.map(({ x }) => fretAt(picture, x))).toEqual(['7', '9', '7']);
    expect(picture.arrows.map(({ fromX }) => fretAt(picture, fromX))).toEqual(['7', '9', '7']);
    expect(picture.arrows.map(({ toX }) => fretAt(picture, toX))).toEqual(['6', '8', '6']);
    for (const { toX, toY } of picture.arrows) {
      expect(picture.marks.some(({ x, y }) => x === toX && y > toY && y - toY < 16)).toBe(true);
    }
  });

  test('that lay above what is shown comes in from the right edge, without a ring', () => {
    const picture = from5({ from: 5, to: 8 });
    expect(picture.rings.map(({ y }) => stringAt(picture, y))).toEqual([1, 6]);
    const [, beyond] = picture.arrows;
    const lastLine = picture.lines.at(-1)?.x ?? Number.NaN;
    expect(beyond?.fromX).toBeGreaterThan(lastLine);
    expect(beyond?.fromX).toBeLessThan(picture.width);
    expect(fretAt(picture, beyond?.toX ?? Number.NaN)).toBe('8');
  });

  test('that lay below what is shown comes in from the left edge, without a ring', () => {
    // Back from Phrygian to Aeolian: Bb rises to B, on the E strings from fret 6 to 7.
    const fingering = { ...fingeringAt(guitar, aeolian, 5), area: { from: 7, to: 10 } };
    const picture = pictureOf(drawFingering(guitar, aeolian, fingering, 'x', { before: phrygian }));
    const onLowest = picture.arrows.filter(({ toX }) => fretAt(picture, toX) === '7');
    expect(onLowest).toHaveLength(2);
    const firstLine = picture.lines[0]?.x ?? Number.NaN;
    for (const { fromX } of onLowest) expect(firstLine - fromX).toBeCloseTo(8, 1);
    expect(picture.rings.every(({ x }) => x > firstLine)).toBe(true);
  });

  test('from an open string begins at the nut', () => {
    // From A Aeolian to A harmonic minor G rises to G sharp: the open third string to fret 1.
    const rising = scaleOf('A', '2122131');
    const area = { from: 0, to: 4 };
    const picture = pictureOf(
      drawFingering(guitar, rising, fingeringAt(guitar, rising, 0), 'x', { area, before: aeolian }),
    );
    const third = picture.rings.find(({ y }) => stringAt(picture, y) === 3);
    expect(fretAt(picture, third?.x ?? Number.NaN)).toBe('open');
  });

  test('is none where nothing came before', () => {
    const picture = pictureOf(drawFingering(guitar, phrygian, fingeringAt(guitar, phrygian, 5), 'x'));
    expect([...picture.rings, ...picture.arrows]).toEqual([]);
  });
});
