import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf } from '../given.ts';
import { unpackCost } from './cost.ts';
import { widestHands } from './hand.ts';
import { solve } from './solve.ts';
import type { LineNote, Option } from './touch.ts';

const neck = neckOf(INSTRUMENTS.guitar);
const positions = widestHands(neck, 120, 1, 22);

const at = (string: number, slot: number): Option => ({ string, slot, isOpen: slot === 0 });
const free = (...options: readonly Option[]): LineNote => ({ options, holdsHand: false });
const held = (...options: readonly Option[]): LineNote => ({ options, holdsHand: true });

/** The least cost of a line as travel, stretch and changes, and how it is played. */
function solved(...line: readonly LineNote[]) {
  const [solution] = solve(neck, line, positions);
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
      outOfReach: 0,
      travelMm: 0,
      shifts: 0,
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
    expect(solve(neck, line, positions)).toEqual(solve(neck, line, positions));
  });
});

describe('a line is not solved', () => {
  test('where a note has no place', () => {
    expect(solve(neck, [free(at(6, 5)), free()], positions)).toEqual([]);
  });

  test('where the hand must stay and cannot', () => {
    expect(solved(free(at(6, 1)), held(at(6, 12)))).toBeUndefined();
    expect(solved(free(at(6, 1)), free(at(6, 12)))).toBeDefined();
  });

  test('where no hand may lie anywhere', () => {
    expect(solve(neck, [free(at(6, 5))], [])).toEqual([]);
  });
});

describe('a hand at home on fret 5', () => {
  const atFive = (line: readonly LineNote[]) => solve(neck, line, widestHands(neck, 120, 5, 5))[0];
  // 648 · (2^(−4/12) − 2^(−5/12)), in tenths from the nut
  const fretFiveMm = 28.8;

  test('reaches frets 4 to 8 or 5 to 9, and opens no wider without moving', () => {
    expect(atFive([free(at(6, 4)), free(at(6, 8))])).toBeDefined();
    expect(atFive([free(at(6, 5)), free(at(6, 9))])).toBeDefined();
    expect(atFive([free(at(6, 4)), free(at(6, 9))])).toBeUndefined();
    expect(atFive([free(at(6, 4)), free(at(5, 5)), free(at(4, 9))])).toBeUndefined();
  });

  test('pays for a finger that slides along its string to reach beyond its own fret: the reach, and as for a shift', () => {
    const slide = atFive([free(at(6, 4)), free(at(6, 5))]);
    expect(slide && unpackCost(slide.cost)).toEqual({
      outOfReach: 0,
      travelMm: 0,
      shifts: 1,
      stretchMm: fretFiveMm,
      stringChanges: 0,
    });
  });

  test('cannot slide where each note needs a finger of its own', () => {
    expect(atFive([free(at(6, 4)), held(at(6, 5))])).toBeUndefined();
    expect(atFive([free(at(6, 4)), held(at(6, 6))])).toBeDefined();
  });
});
