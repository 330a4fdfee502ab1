import { describe, expect, test } from 'vitest';
import { withoutFret } from './with-fret.ts';

describe('a fret in a text', () => {
  test.each([
    ['A Dorian from fret 5', 'A Dorian', 5],
    ['fret 12 E Phrygian', 'E Phrygian', 12],
    ['E Phrygian, 7th fret', 'E Phrygian', 7],
    ['a dorian at the 3rd fret on bass', 'a dorian on bass', 3],
    ['D Dorisch ab Bund 5', 'D Dorisch', 5],
    ['D Dorisch am 5. Bund', 'D Dorisch', 5],
    ['re dórico desde el traste 10', 're dórico', 10],
    ['re dórico 10.º traste', 're dórico', 10],
    ['A Dorian fret 0', 'A Dorian', 0],
    ['A Dorian fret 5 bass fret 5', 'A Dorian bass fret 5', 5],
  ])('%s', (text, rest, fret) => {
    expect(withoutFret(text)).toEqual({ text: rest, fret });
  });

  test.each([
    ['1 2 b3 4 5 6 b7'],
    ['2122212'],
    ['fretless bass'],
    ['24 frets'],
    ['fret'],
    ['fret 123'],
    ['Dorian #4'],
    ['harmonic minor 4th mode'],
    ['Bund'],
  ])('%s names none', (text) => {
    expect(withoutFret(text)).toEqual({ text, fret: undefined });
  });
});
