import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { checkPlayOptions, type PlayOptions } from './play-options.ts';

describe('what is taken where nothing is asked', () => {
  test('is once up in quarters at 80 in 4/4, without a count-in', () => {
    expect(valueIn(checkPlayOptions({}))).toEqual({
      pattern: 'up',
      seed: 1,
      noteValue: 'quarter',
      timing: { tempoBpm: 80, meter: { beats: 4, unit: 4 }, ticksPerBeat: 480, ticksPerBar: 1920 },
      bars: undefined,
      countInBars: 0,
      repeats: 1,
      restBeats: 0,
      vampDegrees: undefined,
    });
  });
});

describe('a piece is refused', () => {
  test.each<[PlayOptions, string, string, string]>([
    [{ tempoBpm: Number.NaN }, 'tempo', 'NaN', 'a number from 20 to 400: beats a minute'],
    [{ tempoBpm: 0 }, 'tempo', '0', 'a number from 20 to 400: beats a minute'],
    [{ tempoBpm: 10_000 }, 'tempo', '10000', 'a number from 20 to 400: beats a minute'],
    [{ meter: { beats: 1, unit: 4 } }, 'meter', '1/4', '2 to 12 beats over 2, 4, 8, 16, such as 4/4 or 7/8'],
    [{ bars: 0 }, 'bars', '0', 'a whole number from 1 to 64'],
    [{ bars: 2.5 }, 'bars', '2.5', 'a whole number from 1 to 64'],
    [{ bars: 65 }, 'bars', '65', 'a whole number from 1 to 64'],
    [{ countInBars: -1 }, 'countIn', '-1', 'a whole number from 0 to 4'],
    [{ repeats: 0 }, 'repeats', '0', 'a whole number from 1 to 16'],
    [{ repeats: Number.POSITIVE_INFINITY }, 'repeats', 'Infinity', 'a whole number from 1 to 16'],
    [{ restBeats: Number.NaN }, 'rest', 'NaN', 'a whole number from 0 to 48'],
    [{ seed: 0 }, 'seed', '0', 'a whole number from 1 to 4294967295'],
    [{ seed: 2 ** 32 }, 'seed', '4294967296', 'a whole number from 1 to 4294967295'],
    [{ vampDegrees: [] }, 'vamp', '', '1 to 16 degrees from 1 to 7, such as 1,4'],
    [{ vampDegrees: [1, 8] }, 'vamp', '1,8', '1 to 16 degrees from 1 to 7, such as 1,4'],
  ])('with %o', (options, field, value, expected) => {
    expect(problemIn(checkPlayOptions(options))).toEqual({ field, value, expected });
  });

  test.each([
    [{ pattern: 'sideways' }, 'pattern', 'sideways'],
    [{ pattern: 'constructor' }, 'pattern', 'constructor'],
    [{ noteValue: 'breve' }, 'value', 'breve'],
    [{ noteValue: '__proto__' }, 'value', '__proto__'],
  ])('with a word that is none of the choices: %o', (options, field, value) => {
    expect(problemIn(checkPlayOptions(options as unknown as PlayOptions))).toMatchObject({ field, value });
  });
});
