import { describe, expect, test } from 'vitest';
import { writtenPitch } from './written-pitch.ts';

describe('a written pitch', () => {
  // By hand from middle C, C4 = 60 (MIDI 1.0 Detailed Specification); octaves change at C, by letter.
  test.each([
    ['C', 60, 'C', 0, 4],
    ['B', 59, 'B', 0, 3],
    ['Cb', 59, 'C', -1, 4],
    ['B#', 60, 'B', 1, 3],
    ['Cb', 71, 'C', -1, 5],
    ['F##', 67, 'F', 2, 4],
    ['Bbb', 57, 'B', -2, 3],
    ['Cbbb', 57, 'C', -3, 4],
    ['A###', 60, 'A', 3, 3],
    ['Fbbbb', 61, 'F', -4, 4],
    ['E', 28, 'E', 0, 1],
    ['C', 0, 'C', 0, -1],
    ['G', 127, 'G', 0, 9],
  ])(
    'called %s and sounding as %i is %s altered by %i in octave %i',
    (name, midi, letter, alteration, octave) => {
      expect(writtenPitch(name, midi)).toEqual({ letter, alteration, octave });
    },
  );
});
