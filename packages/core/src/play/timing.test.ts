import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { type Meter, parseMeter, quartersPerMinute, secondsAt, ticksAt, timingOf } from './timing.ts';

const FOUR_FOUR: Meter = { beats: 4, unit: 4 };

describe('timing', () => {
  // By hand: a beat lasts 60 s / tempo, and a quarter is 480 ticks.
  test.each([
    [60, '4/4', 480, 1920, 4],
    [120, '4/4', 480, 1920, 2],
    [80, '3/4', 480, 1440, 2.25],
    [140, '7/8', 240, 1680, 3],
    [20, '2/2', 960, 1920, 6],
    [400, '12/16', 120, 1440, 1.8],
  ])(
    'at %d beats a minute in %s has %i ticks a beat, %i a bar, and bars of %d s',
    (tempo, text, ticksPerBeat, ticksPerBar, seconds) => {
      const timing = valueIn(timingOf(tempo, valueIn(parseMeter(text))));
      expect(timing).toMatchObject({ tempoBpm: tempo, ticksPerBeat, ticksPerBar });
      expect(secondsAt(timing, ticksPerBar)).toBeCloseTo(seconds, 12);
      expect(ticksAt(timing, seconds)).toBeCloseTo(ticksPerBar, 9);
    },
  );

  test('goes from ticks to seconds and back', () => {
    const timing = valueIn(timingOf(97.3, { beats: 5, unit: 8 }));
    for (const ticks of [0, 1, 40, 479, 1_000_000]) {
      expect(ticksAt(timing, secondsAt(timing, ticks))).toBeCloseTo(ticks, 6);
    }
  });

  test.each([
    [120, '4/4', 120],
    [120, '7/8', 60],
    [120, '2/2', 240],
    [120, '6/16', 30],
  ])('at %d beats a minute in %s has %d quarters a minute', (tempo, text, quarters) => {
    expect(quartersPerMinute(valueIn(timingOf(tempo, valueIn(parseMeter(text)))))).toBe(quarters);
  });

  test.each([20, 400, 33.333])('may be %d beats a minute', (tempo) => {
    expect(timingOf(tempo, FOUR_FOUR).ok).toBe(true);
  });

  test.each([Number.NaN, 0, -80, 19.999, 400.001, 10_000, Number.POSITIVE_INFINITY])(
    'is refused at %d beats a minute',
    (tempo) => {
      expect(problemIn(timingOf(tempo, FOUR_FOUR))).toEqual({
        field: 'tempo',
        value: String(tempo),
        expected: 'a number from 20 to 400: beats a minute',
      });
    },
  );

  test.each([
    [{ beats: 1, unit: 4 }, '1/4'],
    [{ beats: 13, unit: 8 }, '13/8'],
    [{ beats: 3.5, unit: 4 }, '3.5/4'],
    [{ beats: Number.NaN, unit: 4 }, 'NaN/4'],
    [{ beats: 4, unit: 3 } as unknown as Meter, '4/3'],
  ] as const)('is refused in %o', (meter, value) => {
    expect(problemIn(timingOf(80, meter))).toEqual({
      field: 'meter',
      value,
      expected: '2 to 12 beats over 2, 4, 8, 16, such as 4/4 or 7/8',
    });
  });
});

describe('a time signature', () => {
  test.each([
    ['4/4', { beats: 4, unit: 4 }],
    ['7/8', { beats: 7, unit: 8 }],
    [' 12/16 ', { beats: 12, unit: 16 }],
    ['2/2', { beats: 2, unit: 2 }],
  ])('is read from %j', (text, meter) => {
    expect(parseMeter(text)).toEqual({ ok: true, value: meter });
  });

  test.each([
    '',
    ' ',
    '4',
    '4/',
    '/4',
    '4/4/4',
    '4/5',
    '1/4',
    '13/4',
    '4/32',
    '-4/4',
    '4.5/4',
    'C',
    '４/4',
    '4/4x',
    '0x4/4',
  ])('is not read from %j', (text) => {
    expect(problemIn(parseMeter(text, 'time'))).toMatchObject({ field: 'time', value: text });
  });
});
