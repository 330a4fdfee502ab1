import { describe, expect, test } from 'vitest';
import { fretDistanceMm } from './fret.ts';

// Equal temperament: each fret divides what remains of the string by the twelfth root of two.
describe('a fret', () => {
  test.each([
    [648, 0, 0],
    [648, 12, 324],
    [648, 24, 486],
    [863.6, 12, 431.8],
    [648, 1, 36.37],
    [648, 7, 215.511],
    [352, 5, 88.295],
  ])('of a %f mm string, %i semitones up, lies %f mm from the nut', (scaleLengthMm, semitones, atMm) => {
    expect(fretDistanceMm(scaleLengthMm, semitones)).toBeCloseTo(atMm, 2);
  });

  test('leaves the same share of the string as every fret before it', () => {
    let remainsMm = 648;
    for (let fret = 1; fret <= 36; fret += 1) {
      remainsMm /= 2 ** (1 / 12);
      expect(648 - fretDistanceMm(648, fret)).toBeCloseTo(remainsMm, 9);
    }
  });
});
