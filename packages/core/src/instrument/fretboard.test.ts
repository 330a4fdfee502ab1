import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, STEPS, scaleOf } from '../given.ts';
import { placesOn } from './fretboard.ts';

describe('the places of a scale', () => {
  const aMinor = scaleOf('A', STEPS.aeolian);

  test('on the lowest string of a guitar, to the twelfth fret, are those of A minor', () => {
    const places = placesOn(neckOf(INSTRUMENTS.guitar, { frets: 12 }), aMinor);
    expect(
      places
        .filter(({ string }) => string === 6)
        .map(({ fret, note, degree }) => `${fret} ${note} ${degree}`),
    ).toEqual(['0 E 5', '1 F 6', '3 G 7', '5 A 1', '7 B 2', '8 C 3', '10 D 4', '12 E 5']);
  });

  test('are found string 1 first, each string from its open note upwards', () => {
    const places = placesOn(neckOf(INSTRUMENTS.guitar), aMinor);
    const order = places.map(({ string, slot }) => string * 100 + slot);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });

  test('are every stopped or open note that belongs, and no other', () => {
    const opens = [64, 59, 55, 50, 45, 40];
    const wanted = opens.flatMap((open, at) =>
      [...Array(23).keys()].flatMap((fret) => {
        const degree = [9, 11, 0, 2, 4, 5, 7].indexOf((open + fret) % 12) + 1;
        return degree === 0 ? [] : [{ string: at + 1, fret, slot: fret, midi: open + fret, degree }];
      }),
    );
    expect(placesOn(neckOf(INSTRUMENTS.guitar), aMinor).map(({ note: _, ...place }) => place)).toEqual(
      wanted,
    );
  });

  test('keep the strict spelling', () => {
    const scale = scaleOf('C', STEPS.seventhOfHarmonicMinor);
    expect(new Set(placesOn(neckOf(INSTRUMENTS.guitar), scale).map(({ note }) => note))).toEqual(
      new Set(scale.notes),
    );
  });

  test('on a short string are its open note, then frets above its start', () => {
    const places = placesOn(neckOf(INSTRUMENTS.banjo), scaleOf('G', STEPS.ionian));
    expect(places.filter(({ string }) => string === 5).slice(0, 4)).toEqual([
      { string: 5, fret: 0, slot: 5, midi: 67, note: 'G', degree: 1 },
      { string: 5, fret: 7, slot: 7, midi: 69, note: 'A', degree: 2 },
      { string: 5, fret: 9, slot: 9, midi: 71, note: 'B', degree: 3 },
      { string: 5, fret: 10, slot: 10, midi: 72, note: 'C', degree: 4 },
    ]);
  });

  test('behind a capo are none', () => {
    const places = placesOn(neckOf(INSTRUMENTS.guitar, { capoFret: 5 }), aMinor);
    expect(places.every(({ fret }) => fret === 0 || fret > 5)).toBe(true);
  });

  test('of a fret that a neck counts by halves carry its name', () => {
    const places = placesOn(neckOf(INSTRUMENTS.dulcimer), scaleOf('D', STEPS.ionian));
    expect(places.filter(({ string }) => string === 3).map(({ fret }) => fret)).toEqual([
      0, 1, 2, 3, 4, 5, 6.5, 7, 8, 9, 10, 11, 12, 13.5, 14, 15, 16,
    ]);
  });
});
