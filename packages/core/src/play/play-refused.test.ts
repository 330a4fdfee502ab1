import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, modeOf, neckOf, problemIn, rootOf, STEPS } from '../given.ts';
import { roundOf } from '../round/round.ts';
import { A_AEOLIAN, HARMONIC_MINOR, octave } from './given-piece.ts';
import { MOST_BARS, MOST_NOTES, playFingering, playRound } from './play.ts';
import type { PlayOptions } from './play-options.ts';

describe('a piece is refused', () => {
  test('for its options', () => {
    const round = HARMONIC_MINOR;
    expect(problemIn(playRound(round, { tempoBpm: 0 })).field).toBe('tempo');
  });

  test('where no mode of a round can be played, with the reason', () => {
    const round = roundOf(neckOf(INSTRUMENTS.dulcimer), modeOf(STEPS.harmonicMinor), rootOf('D'));
    expect(problemIn(playRound(round))).toEqual({
      field: 'round',
      value: 'D',
      expected: 'a round that can be played: in this tuning the frets of this instrument do not have F, Bb',
    });
  });

  test('without notes', () => {
    const empty = { ...octave(), notes: [] };
    expect(problemIn(playFingering(A_AEOLIAN, empty)).field).toBe('fingering');
  });

  test.each<[string, PlayOptions, string]>([
    ['bars', { bars: 64, noteValue: 'thirty-second', repeats: 16 }, '64'],
    [
      'repeats',
      { repeats: 16, bars: 4, noteValue: 'thirty-second-triplet', meter: { beats: 12, unit: 4 } },
      '16',
    ],
    ['repeats', { repeats: 16, pattern: 'groups-of-four', noteValue: 'dotted-whole' }, '16'],
    [
      'value',
      { pattern: 'groups-of-four', noteValue: 'dotted-whole', meter: { beats: 2, unit: 16 } },
      'dotted-whole',
    ],
  ])('where it is too long, naming %s', (field, options, value) => {
    const round = HARMONIC_MINOR;
    const problem = problemIn(playRound(round, options));
    expect(problem).toMatchObject({ field, value });
    expect(problem.expected).toMatch(
      `a piece of at most ${MOST_NOTES} notes and ${MOST_BARS} bars; this has `,
    );
  });
});
