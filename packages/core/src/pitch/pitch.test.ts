import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { formatMidi, frequencyHz, parsePitch } from './pitch.ts';

// Note numbers: MIDI 1.0 Detailed Specification, middle C = 60. Octaves: scientific pitch notation, C4.
describe('a pitch', () => {
  test.each([
    ['C-1', 0],
    ['B0', 23],
    ['Bb0', 22],
    ['E1', 28],
    ['E2', 40],
    ['C4', 60],
    ['Cb4', 59],
    ['B#3', 60],
    ['A4', 69],
    ['Fs1', 30],
    ['f♯1', 30],
    ['G9', 127],
  ])('%s is note number %i', (text, midi) => {
    expect(valueIn(parsePitch(text)).midi).toBe(midi);
  });

  test.each([
    ['fs1', 'F#1'],
    [' b♭3 ', 'Bb3'],
    ['Fx2', 'F##2'],
    ['C-1', 'C-1'],
  ])('%s is named %s', (text, name) => {
    expect(valueIn(parsePitch(text)).name).toBe(name);
  });
});

describe('a pitch is refused', () => {
  const expected = 'a note and its octave (middle C is C4), such as E2, F#1 or Bb3';

  test.each([
    ['empty', ''],
    ['spaces', '   '],
    ['constructor', 'constructor'],
    ['__proto__', '__proto__'],
    ['a note without an octave', 'E'],
    ['an octave without a note', '4'],
    ['a valid pitch with a tail', 'E2x'],
    ['a pitch with a space inside', 'E 2'],
    ['an octave of two digits', 'E10'],
    ['an octave below −1', 'C-2'],
    ['a fractional octave', 'E2.5'],
    ['below note number 0', 'Cb-1'],
    ['above note number 127', 'G#9'],
    ['a full-width sharp', 'F＃2'],
    ['a full-width digit', 'E２'],
    ['four flats', 'Ebbbb2'],
  ])('where it is %s', (_what, text) => {
    expect(problemIn(parsePitch(text, 'tuning[0]'))).toEqual({ field: 'tuning[0]', value: text, expected });
  });

  test('where it is very long', () => {
    expect(problemIn(parsePitch(`${'E'.repeat(100_000)}2`)).expected).toBe(expected);
  });
});

describe('a note number', () => {
  test.each([
    [60, 'C4', 'C4'],
    [61, 'Db4', 'C#4'],
    [22, 'Bb0', 'A#0'],
    [0, 'C-1', 'C-1'],
    [127, 'G9', 'G9'],
  ])('%i is named %s, or %s with sharps', (midi, flat, sharp) => {
    expect(formatMidi(midi)).toBe(flat);
    expect(formatMidi(midi, true)).toBe(sharp);
  });

  test('is read back from its name, all 128 of them', () => {
    for (let midi = 0; midi <= 127; midi += 1) {
      expect(valueIn(parsePitch(formatMidi(midi))).midi).toBe(midi);
      expect(valueIn(parsePitch(formatMidi(midi, true))).midi).toBe(midi);
    }
  });

  // ISO 16:1975: A4 = 440 Hz; the octave doubles, and middle C is 261.626 Hz in equal temperament.
  test.each([
    [69, 440, 440],
    [57, 440, 220],
    [60, 440, 261.626],
    [28, 440, 41.203],
    [69, 415, 415],
    [81, 442, 884],
  ])('%i sounds, with A4 at %f Hz, at %f Hz', (midi, a4Hz, hz) => {
    expect(frequencyHz(midi, a4Hz)).toBeCloseTo(hz, 3);
  });
});
