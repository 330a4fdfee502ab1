/**
 * The string is heard by the zero crossings of its fundamental alone, which is found by another way than the
 * loop's own arithmetic: the phase of the fundamental, followed over half a second.
 */
import { frequencyHz } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { pluck } from './pluck.ts';

const RATE = 44_100;

/** The frequency of the partial nearest to a guess, from how its phase turns between two windows. */
function heardHz(samples: Float32Array, guessHz: number): number {
  const length = 8192;
  const hop = Math.round(0.1 * RATE);
  const [first, second] = [
    phaseAt(samples, 2000, length, guessHz),
    phaseAt(samples, 2000 + hop, length, guessHz),
  ];
  const expected = (2 * Math.PI * guessHz * hop) / RATE;
  const turned = second - first - expected;
  const wrapped = turned - 2 * Math.PI * Math.round(turned / (2 * Math.PI));
  return guessHz * (1 + wrapped / expected);
}

function phaseAt(samples: Float32Array, from: number, length: number, hz: number): number {
  let [real, imaginary] = [0, 0];
  for (let at = 0; at < length; at += 1) {
    const hann = 0.5 - 0.5 * Math.cos((2 * Math.PI * at) / length);
    const angle = (2 * Math.PI * hz * at) / RATE;
    real += (samples[from + at] as number) * hann * Math.cos(angle);
    imaginary -= (samples[from + at] as number) * hann * Math.sin(angle);
  }
  return Math.atan2(imaginary, real);
}

const string = (midi: number, seconds = 1): Float32Array =>
  pluck({ frequencyHz: frequencyHz(midi), sampleRateHz: RATE, seconds, seed: midi });

describe('pluck', () => {
  test('every semitone from B0, a bass’s low B, to E6 is in tune to a tenth of a cent', () => {
    const cents = Array.from({ length: 88 - 23 + 1 }, (_, at) => {
      const hz = frequencyHz(23 + at);
      return 1200 * Math.log2(heardHz(string(23 + at), hz) / hz);
    });
    expect(Math.max(...cents.map(Math.abs))).toBeLessThan(0.1);
  });

  test('the same string always sounds the same, and another seed otherwise', () => {
    expect(string(45)).toEqual(string(45));
    const other = pluck({ frequencyHz: 110, sampleRateHz: RATE, seconds: 1, seed: 46 });
    expect(other).not.toEqual(string(45));
  });

  test('its loudest sample is just below 1 and it leaves no offset', () => {
    for (const midi of [28, 40, 64, 88]) {
      const samples = string(midi);
      expect(Math.max(...samples.map(Math.abs))).toBeLessThanOrEqual(1);
      expect(Math.max(...samples.map(Math.abs))).toBeGreaterThan(0.7);
      const mean = samples.reduce((sum, one) => sum + one, 0) / samples.length;
      expect(Math.abs(mean)).toBeLessThan(0.002);
    }
  });

  test('it dies away, the high ones sooner', () => {
    const fall = (midi: number): number => {
      const samples = string(midi, 1);
      const loudness = (from: number): number =>
        Math.hypot(...samples.slice(from * RATE, (from + 0.1) * RATE)) + Number.EPSILON;
      return loudness(0.8) / loudness(0.05);
    };
    expect(fall(40)).toBeLessThan(0.7);
    expect(fall(76)).toBeLessThan(fall(40));
  });
});
