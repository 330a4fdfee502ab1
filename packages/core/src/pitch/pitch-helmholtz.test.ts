import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { formatMidi, parsePitch } from './pitch.ts';
import { formatHelmholtz, hasStrokes, parseHelmholtz } from './pitch-helmholtz.ts';

// Helmholtz, On the Sensations of Tone (1863; English by Ellis, 1875): C,, C, C c c' c'' c''' from four octaves
// below middle C, which is c' (scientific C4, MIDI 60). Recalled, as are the rows below it.
describe('a pitch in Helmholtz notation', () => {
  test.each([
    ['C,,', 'C0'],
    ['C,', 'C1'],
    ['C', 'C2'],
    ['c', 'C3'],
    ["c'", 'C4'],
    ["c''", 'C5'],
    ["c'''", 'C6'],
    ['B,', 'B1'],
    ["b'", 'B4'],
    ['E,', 'E1'],
    ["e'", 'E4'],
  ])('%s is %s', (text, scientific) => {
    expect(valueIn(parseHelmholtz(text)).name).toBe(scientific);
  });

  // Common practice in English organ and harpsichord writing (recalled): CC is the octave below C.
  test.each([
    ['CC', 'C1'],
    ['CCC', 'C0'],
    ['EE', 'E1'],
    ['BBb', 'Bb1'],
    ['AAA', 'A0'],
    [',C', 'C1'],
    [',,C', 'C0'],
    ['C₁', 'C1'],
    ['c¹', 'C4'],
    ['c²', 'C5'],
  ])('written %s is %s too', (text, scientific) => {
    expect(valueIn(parseHelmholtz(text)).name).toBe(scientific);
  });

  test.each([
    ['Bb,', 'Bb1'],
    ['B♭͵', 'Bb1'],
    ['bb', 'Bb3'],
    ['b', 'B3'],
    ["bb'", 'Bb4'],
    ['f♯′', 'F#4'],
    ["fs'", 'F#4'],
    ['f♯″', 'F#5'],
    ["cb'", 'Cb4'],
    ['e’', 'E4'],
    ['E‚', 'E1'],
    [" g' ", 'G4'],
  ])('with signs and typeset strokes, %s, is %s', (text, scientific) => {
    expect(valueIn(parseHelmholtz(text)).name).toBe(scientific);
  });

  test('is read back as it is written, every MIDI note in flats and in sharps', () => {
    for (let midi = 0; midi <= 127; midi += 1) {
      for (const sharps of [false, true]) {
        const pitch = valueIn(parsePitch(formatMidi(midi, sharps)));
        expect(parseHelmholtz(formatHelmholtz(pitch))).toEqual({ ok: true, value: pitch });
      }
    }
  });

  test.each([
    ['E2', 'E'],
    ['E1', 'E,'],
    ['Bb0', 'Bb,,'],
    ['D3', 'd'],
    ['E4', "e'"],
    ['F#5', "f#''"],
  ])('of %s is written %s', (scientific, text) => {
    expect(formatHelmholtz(valueIn(parsePitch(scientific)))).toBe(text);
  });
});

describe('strokes', () => {
  test.each(["e'", 'e′', 'e’', 'E͵', 'c²', 'C₁', 'e″'])('are in %s', (text) => {
    expect(hasStrokes(text)).toBe(true);
  });

  test.each(['E', 'e', 'Eb', 'E,', 'F♯', 'E2', ''])('are not for certain in %s', (text) => {
    expect(hasStrokes(text)).toBe(false);
  });
});

describe('a pitch in Helmholtz notation is refused', () => {
  test.each([
    ['empty', ''],
    ['constructor', 'constructor'],
    ['__proto__', '__proto__'],
    ['a letter past G', "h'"],
    ['a scientific octave', 'E2'],
    ['primes on a capital', "E'"],
    ['commas on a small letter', 'e,'],
    ['strokes on both sides', ',E,'],
    ['a doubled capital with a stroke', 'EE,'],
    ['a doubled small letter', 'ee'],
    ['a stroke before the accidental', "b'b"],
    ['a valid pitch with a tail', "e'x"],
    ['two pitches', "e' a'"],
    ['below note number 0', 'C,,,,'],
    ['above note number 127', "a''''''"],
    ['a Cyrillic letter for E', "е'"],
  ])('where it is %s', (_what, text) => {
    expect(problemIn(parseHelmholtz(text, 'tuning[0]'))).toEqual({
      field: 'tuning[0]',
      value: text,
      expected: "a note in Helmholtz notation, such as E, (which is E1), E (E2), e (E3) or e' (E4)",
    });
  });
});
