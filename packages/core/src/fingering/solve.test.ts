import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf } from '../given.ts';
import { unpackCost } from './cost.ts';
import { handPositions } from './hand.ts';
import { costBetween, createSolver, type LineNote, type Option, type Touch } from './solve.ts';

const neck = neckOf(INSTRUMENTS.guitar);
const positions = handPositions(neck, 120, 1, 22);
const { solve } = createSolver(neck, positions);

const at = (string: number, slot: number): Option => ({ string, slot, isOpen: slot === 0 });
const free = (...options: readonly Option[]): LineNote => ({ options, holdsHand: false });
const held = (...options: readonly Option[]): LineNote => ({ options, holdsHand: true });

/** The least cost of a line as travel, stretch and changes, and how it is played. */
function solved(...line: readonly LineNote[]) {
  const solution = solve(line);
  return (
    solution && {
      ...unpackCost(solution.cost),
      fingers: solution.touches.map(({ finger }) => finger).join(' '),
      places: solution.touches.map(({ string, slot }) => `${string}:${slot}`).join(' '),
    }
  );
}

describe('a line', () => {
  test('that one hand covers costs nothing', () => {
    expect(solved(free(at(6, 5)), free(at(6, 7)), free(at(6, 8)), free(at(5, 5)))).toEqual({
      travelMm: 0,
      stretchMm: 0,
      stringChanges: 0,
      fingers: '1 3 4 1',
      places: '6:5 6:7 6:8 5:5',
    });
  });

  test('of two whole tones on a string is taken 1-2-4, the index stretching (common practice, no source)', () => {
    expect(solved(free(at(6, 5)), held(at(6, 7)), held(at(6, 9)))).toMatchObject({
      travelMm: 0,
      fingers: '1 2 4',
    });
  });

  test('on open strings alone needs no finger', () => {
    expect(solved(free(at(6, 0)), free(at(5, 0)), free(at(4, 0)))).toMatchObject({
      travelMm: 0,
      stretchMm: 0,
      stringChanges: 0,
      fingers: '0 0 0',
    });
  });

  test('takes the place on the string where it is, where both are in the hand', () => {
    expect(solved(free(at(2, 5)), free(at(3, 9), at(2, 6)))).toMatchObject({
      places: '2:5 2:6',
      travelMm: 0,
    });
  });

  test('moves the hand no farther than it must', () => {
    const moved = solved(free(at(1, 1)), free(at(1, 12)));
    const farthestHome = 648 * (2 ** (-1 / 12) - 2 ** (-9 / 12));
    expect(moved?.travelMm).toBeLessThanOrEqual(farthestHome);
    expect(moved?.travelMm).toBeGreaterThan(0);
  });

  test('pays one for a skipped string, one for a string back, one for a rolled finger, and nothing for the next one up', () => {
    expect(solved(free(at(6, 5)), free(at(5, 7)))).toMatchObject({ stringChanges: 0 });
    expect(solved(free(at(6, 5)), free(at(4, 7)))).toMatchObject({ stringChanges: 1 });
    expect(solved(free(at(5, 7)), free(at(6, 5)))).toMatchObject({ stringChanges: 1 });
    expect(solved(free(at(6, 5)), free(at(5, 5)))).toMatchObject({ stringChanges: 1 });
    expect(solved(free(at(6, 0)), free(at(5, 0)))).toMatchObject({ stringChanges: 0 });
    expect(solved(free(at(4, 5)), free(at(6, 5)))).toMatchObject({ stringChanges: 3 });
  });

  test('is solved again to the same end', () => {
    const line = [free(at(6, 5)), free(at(5, 7))];
    expect(solve(line)).toEqual(solve(line));
  });
});

describe('a line is not solved', () => {
  test('where a note has no place', () => {
    expect(solve([free(at(6, 5)), free()])).toBeUndefined();
  });

  test('where the hand must stay and cannot', () => {
    expect(solved(free(at(6, 1)), held(at(6, 12)))).toBeUndefined();
    expect(solved(free(at(6, 1)), free(at(6, 12)))).toBeDefined();
  });

  test('where no hand may lie anywhere', () => {
    expect(createSolver(neck, []).solve([free(at(6, 5))])).toBeUndefined();
  });
});

describe('the cost between two touches', () => {
  const touch = (
    hand: number,
    string: number,
    slot: number,
    finger: number,
    stretchTenthsMm: number,
  ): Touch => ({
    ...at(string, slot),
    finger,
    stretchTenthsMm,
    position: closed[hand] as (typeof closed)[number],
  });
  const closed = handPositions(neck, 120, 5, 5);

  test('is infinite between two hands at home on one fret: a hand opens no wider without moving', () => {
    expect(costBetween(neck, touch(0, 6, 5, 1, 0), touch(2, 6, 9, 4, 344), false)).toBe(
      Number.POSITIVE_INFINITY,
    );
  });

  test('is the distance slid where one finger reaches beyond its own frets on one string', () => {
    const slide = costBetween(neck, touch(1, 6, 4, 1, 288), touch(1, 6, 5, 1, 0), false);
    expect(unpackCost(slide)).toEqual({ travelMm: 0, stretchMm: 28.8, stringChanges: 0 });
  });

  test('is infinite for that slide where each note needs a finger of its own', () => {
    expect(costBetween(neck, touch(1, 6, 4, 1, 288), touch(1, 6, 5, 1, 0), true)).toBe(
      Number.POSITIVE_INFINITY,
    );
  });
});
