import { describe, expect, test } from 'vitest';
import { type Course, type Stretch, secondsOf, stretchesFrom, tempoOfRound } from './stretches.ts';

const COURSE: Course = { fromTicks: 1920, toTicks: 9600, countInTicks: 1920, tempoBpm: 60, goesRound: true };

function take(count: number, ...args: Parameters<typeof stretchesFrom>): readonly Stretch[] {
  const stretches = stretchesFrom(...args);
  return Array.from({ length: count }, () => stretches.next().value).filter((one) => one !== undefined);
}

const runs = (stretches: readonly Stretch[]): readonly (readonly number[])[] =>
  stretches.map(({ fromTicks, toTicks }) => [fromTicks, toTicks]);

describe('stretchesFrom', () => {
  test('after the count-in it begins where it was begun, and then goes round', () => {
    expect(runs(take(4, COURSE, 4800, { withCountIn: true }))).toEqual([
      [0, 1920],
      [4800, 9600],
      [1920, 9600],
      [1920, 9600],
    ]);
  });

  test('without a count-in there is none, and a start elsewhere is a start at the beginning', () => {
    expect(runs(take(2, COURSE, 0, { withCountIn: false }))).toEqual([
      [1920, 9600],
      [1920, 9600],
    ]);
  });

  test('played once it ends', () => {
    expect(runs(take(5, { ...COURSE, goesRound: false }, 1920, { withCountIn: true }))).toEqual([
      [0, 1920],
      [1920, 9600],
    ]);
  });

  test('the count-in of a round is at its tempo, and rounds are counted on', () => {
    const ladder = { stepBpm: 10, topBpm: 95, everyRounds: 2 };
    const stretches = take(4, { ...COURSE, ladder }, 1920, { withCountIn: true, firstRound: 3 });
    expect(stretches.map(({ tempoBpm }) => tempoBpm)).toEqual([70, 70, 80, 80]);
    expect(stretches.map(({ round }) => round)).toEqual([3, 3, 4, 5]);
  });
});

test('a ladder climbs by its step after every so many rounds, up to its top', () => {
  const ladder = { stepBpm: 10, topBpm: 95, everyRounds: 2 };
  const tempi = Array.from({ length: 10 }, (_, round) => tempoOfRound({ ...COURSE, ladder }, round));
  expect(tempi).toEqual([60, 60, 70, 70, 80, 80, 90, 90, 95, 95]);
});

test('a ladder whose top lies below its foot stays at the foot', () => {
  const ladder = { stepBpm: 10, topBpm: 40, everyRounds: 1 };
  expect(tempoOfRound({ ...COURSE, ladder }, 5)).toBe(60);
});

test('16 beats at 60 a minute last 16 seconds', () => {
  expect(secondsOf({ fromTicks: 1920, toTicks: 9600, tempoBpm: 60, round: 0 }, 480)).toBe(16);
});
