import { describe, expect, test } from 'vitest';
import { formatAccidental, toAscii, toSigns } from './accidental.ts';

describe('an accidental in ASCII', () => {
  test.each([
    [-3, 'bbb'],
    [-2, 'bb'],
    [-1, 'b'],
    [0, ''],
    [1, '#'],
    [2, '##'],
  ])('of %i semitones is "%s"', (alteration, ascii) => {
    expect(formatAccidental(alteration)).toBe(ascii);
  });
});

// The signs are those of the Unicode Standard: U+266D to U+266F, and U+1D12A and U+1D12B for the doubles.
describe('signs', () => {
  test.each([
    ['Bb', 'B\u266D'],
    ['C#', 'C\u266F'],
    ['Bbb', 'B\u{1D12B}'],
    ['F##', 'F\u{1D12A}'],
    ['Bbbb', 'B\u{1D12B}\u266D'],
    ['Ebbbb', 'E\u{1D12B}\u{1D12B}'],
    ['F###', 'F\u{1D12A}\u266F'],
    ['b3', '\u266D3'],
    ['bb7', '\u{1D12B}7'],
    ['##4', '\u{1D12A}4'],
    ['nat6', '\u266E6'],
    ['Locrian b4 bb7', 'Locrian \u266D4 \u{1D12B}7'],
    ['Locrian nat6', 'Locrian \u266E6'],
    ['Bb Dorian #4', 'B\u266D Dorian \u266F4'],
    ['1 b3 bb5', '1 \u266D3 \u{1D12B}5'],
    ['maj7#5', 'maj7\u266F5'],
    ['m7b5', 'm7\u266D5'],
    ['F#4', 'F\u266F4'],
    ['F##4', 'F\u{1D12A}4'],
    ['Bb0', 'B\u266D0'],
    ['Bbb4', 'B\u{1D12B}4'],
  ])('stand for the accidentals of %s', (ascii, signs) => {
    expect(toSigns(ascii)).toBe(signs);
  });

  test.each([
    '',
    'A',
    'Dorian',
    'double harmonic',
    'Bebop',
    'natural',
    'Abbey',
    'rabbit',
    'constructor',
    '7',
  ])('leave "%s" alone', (text) => {
    expect(toSigns(text)).toBe(text);
  });

  test('are found in a very long run within a moment', () => {
    expect(toSigns(`${'#'.repeat(2000)}4`)).toBe(`${'\u{1D12A}'.repeat(1000)}4`);
    expect(toSigns('#'.repeat(50_000))).toBe('#'.repeat(50_000));
  });
});

describe('ASCII', () => {
  test.each([
    ['Dorian ♯4', 'Dorian #4'],
    ['B♭', 'Bb'],
    ['B𝄫', 'Bbb'],
    ['F𝄪', 'F##'],
    ['Locrian ♮6', 'Locrian nat6'],
    ['A', 'A'],
    ['', ''],
  ])('is found for %s', (signs, ascii) => {
    expect(toAscii(signs)).toBe(ascii);
  });

  test.each(['Locrian b4 bb7', 'Bb Dorian #4', 'Locrian nat6', 'Ebbbb', 'F##4'])(
    'comes back from the signs of %s',
    (ascii) => {
      expect(toAscii(toSigns(ascii))).toBe(ascii);
    },
  );
});
