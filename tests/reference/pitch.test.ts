import { formatMidi, frequencyHz, parsePitch } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { pitchOf } from './in-core.ts';
import { frequencies } from './tables/frequencies.ts';

describe('MIDI note numbers (MIDI 1.0 Detailed Specification)', () => {
  test('middle C, C4, is 60', () => {
    expect(pitchOf('C4').midi).toBe(60);
  });

  test.each([
    ['C-1', 0],
    ['B#-1', 12],
    ['Abb9', 127],
    ['G9', 127],
  ])('%s, at an end of the range, is %i', (name, midi) => {
    expect(pitchOf(name).midi).toBe(midi);
  });

  test.each(['Cb-1', 'G#9', 'B9'])('%s lies outside the range and is refused', (name) => {
    expect(parsePitch(name).ok).toBe(false);
  });
});

describe('octave numbers change at C, by letter, whatever the accidental', () => {
  // Common practice in scientific pitch notation; the library tonal agrees, see theory-library.test.ts.
  test.each([
    ['Cb4', 59],
    ['B3', 59],
    ['B#3', 60],
    ['Cb5', 71],
    ['B#4', 72],
    ['Cbb4', 58],
    ['B##3', 61],
    ['E#4', 65],
    ['Fb4', 64],
    ['Bbb3', 57],
    ['Dbb4', 60],
    ['A##4', 71],
  ])('%s is %i', (name, midi) => {
    expect(pitchOf(name).midi).toBe(midi);
    expect(pitchOf(name).name).toBe(name);
  });
});

describe('frequencies', () => {
  test('A4 is 440 Hz (ISO 16:1975)', () => {
    expect(pitchOf('A4').midi).toBe(69);
    expect(frequencyHz(69)).toBe(440);
  });

  test('the table runs through all 76 semitones from A0 to C7', () => {
    expect(frequencies.map(([midi]) => midi)).toEqual(Array.from({ length: 76 }, (_, at) => 21 + at));
  });

  test.each(frequencies)('MIDI %i is %s, %f Hz', (midi, name, hertz) => {
    expect(pitchOf(name).midi).toBe(midi);
    expect(formatMidi(midi, true)).toBe(name);
    expect(Math.abs(frequencyHz(midi) - hertz)).toBeLessThan(0.000051);
  });

  // Other references: recalled.
  test.each([415, 430, 442, 466])(
    'with A4 at %i Hz an octave doubles and a semitone is 100 cents',
    (a4Hz) => {
      expect(frequencyHz(69, a4Hz)).toBe(a4Hz);
      expect(frequencyHz(81, a4Hz)).toBe(2 * a4Hz);
      expect(frequencyHz(57, a4Hz)).toBe(a4Hz / 2);
      expect(1200 * Math.log2(frequencyHz(70, a4Hz) / a4Hz)).toBeCloseTo(100, 9);
    },
  );
});
