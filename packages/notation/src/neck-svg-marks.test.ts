import { placesOn } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { drawFingering } from './drawing.ts';
import { neckOf, scaleOf } from './given.ts';
import { fingeringAt, NECKS, pictureOf, placesIn, wholeNeck } from './neck-svg-picture.ts';

const { guitar, bass, dulcimer } = NECKS;
const aeolian = scaleOf('A', '2122122');
const ionian = scaleOf('D', '2212221');

describe('marks stand at their string and fret', () => {
  test.each([
    ['a guitar', guitar, aeolian],
    ['a bass', bass, aeolian],
    ['a dulcimer', dulcimer, ionian],
    ['a single string', neckOf('E2'), aeolian],
  ])('on the whole neck of %s, right-handed and left-handed', (_name, neck, scale) => {
    const places = placesOn(neck, scale);
    for (const handedness of ['right', 'left'] as const) {
      const picture = wholeNeck(neck, scale, handedness);
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
