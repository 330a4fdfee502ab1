import { describe, expect, test } from 'vitest';
import { droneOf, vampOf } from './backing.ts';
import { play, playHarmonicMinor, startsOf } from './given-piece.ts';

describe('what sounds under the notes', () => {
  const piece = playHarmonicMinor({ noteValue: 'eighth', countInBars: 1 });
  const drone = droneOf(piece);
  const vamp = vampOf(piece);
  const bars = Array.from({ length: 14 }, (_, at) => 1920 + 1920 * at);

  test('is the root as a drone, struck with every bar and held, count-in excepted', () => {
    expect(startsOf(drone)).toEqual(bars);
    for (const { durationTicks, midi, note, degree } of drone) {
      // A2; the octave of the drone begins at E2.
      expect([durationTicks, midi, note, degree]).toEqual([1920, 45, 'A', 1]);
    }
  });

  test("is a vamp of each mode's own triads, in turn", () => {
    const chordAt = (bar: number) => vamp.filter(({ startTicks }) => startTicks === bars[bar]);
    // A minor and E major over A harmonic minor, C3 being 48.
    expect(chordAt(0).map(({ midi, note, degree }) => [midi, note, degree])).toEqual([
      [57, 'A', 1],
      [60, 'C', 3],
      [64, 'E', 5],
    ]);
    expect(chordAt(1).map(({ midi, note, degree }) => [midi, note, degree])).toEqual([
      [52, 'E', 5],
      [56, 'G#', 7],
      [59, 'B', 2],
    ]);
    expect(new Set(startsOf(vamp))).toEqual(new Set(bars));
    for (const { note, degree, modeIndex, midi } of vamp) {
      const scale = piece.sections[modeIndex]?.scale;
      expect(note).toBe(scale?.notes[degree - 1]);
      expect((midi - 45 + 120) % 12).toBe(scale?.mode.semitones[degree - 1]);
    }
  });

  test('stands on the degrees that are asked', () => {
    const triads = vampOf(play({ noteValue: 'half', vampDegrees: [1, 4, 5] }));
    const roots = triads.filter((_, at) => at % 3 === 0).map(({ degree }) => degree);
    expect(roots).toEqual([1, 4, 5, 1]);
  });
});
