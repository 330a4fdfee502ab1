import { describe, expect, test } from 'vitest';
import { isTriplet, NOTE_VALUES, TICKS_PER_QUARTER, ticksOf } from './note-value.ts';

describe('a note value', () => {
  // By hand, 480 to a quarter: a dot adds half, and three of a triplet last as long as two.
  test.each([
    ['whole', 1920],
    ['half', 960],
    ['quarter', 480],
    ['eighth', 240],
    ['sixteenth', 120],
    ['thirty-second', 60],
    ['dotted-whole', 2880],
    ['dotted-quarter', 720],
    ['dotted-thirty-second', 90],
    ['whole-triplet', 1280],
    ['quarter-triplet', 320],
    ['eighth-triplet', 160],
    ['thirty-second-triplet', 40],
  ] as const)('of a %s lasts %i ticks', (value, ticks) => {
    expect(ticksOf(value)).toBe(ticks);
  });

  test('is one of eighteen, each of its own length in whole ticks', () => {
    const lengths = NOTE_VALUES.map(ticksOf);
    expect(NOTE_VALUES).toHaveLength(18);
    expect(new Set(lengths).size).toBe(18);
    expect(lengths.every(Number.isInteger)).toBe(true);
  });

  test('is a triplet where three go in the time of two', () => {
    expect(NOTE_VALUES.filter(isTriplet)).toHaveLength(6);
    expect(3 * ticksOf('eighth-triplet')).toBe(TICKS_PER_QUARTER);
  });
});
