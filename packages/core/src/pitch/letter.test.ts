import { describe, expect, test } from 'vitest';
import { LETTERS, NATURAL_SEMITONES, pitchClassOf } from './letter.ts';

describe('the letters', () => {
  test('run from C to B, with semitones between E and F and between B and C', () => {
    expect(LETTERS.join('')).toBe('CDEFGAB');
    expect(NATURAL_SEMITONES).toEqual([0, 2, 4, 5, 7, 9, 11]);
  });

  test.each([
    [0, 0],
    [12, 0],
    [61, 1],
    [-1, 11],
    [-12, 0],
    [-13, 11],
  ])('%i semitones above C is pitch class %i', (semitones, pitchClass) => {
    expect(pitchClassOf(semitones)).toBe(pitchClass);
  });
});
