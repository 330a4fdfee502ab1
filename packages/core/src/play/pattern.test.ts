import { describe, expect, test } from 'vitest';
import { PATTERNS, type Pattern, patternLine } from './pattern.ts';

/** Degrees of so many notes upwards from one degree. */
const degreesFrom = (degree: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, at) => ((degree - 1 + at) % 7) + 1);

const octave = degreesFrom(1, 8);
const onceThrough = (pattern: Pattern, degrees: readonly number[]): string =>
  patternLine(pattern, degrees)
    .once.map((at) => at + 1)
    .join(' ');

describe('a pattern over an octave', () => {
  // Written out by hand, 8 being the octave.
  test.each([
    ['up', '1 2 3 4 5 6 7 8'],
    ['down', '8 7 6 5 4 3 2 1'],
    ['up-and-down', '1 2 3 4 5 6 7 8 7 6 5 4 3 2 1'],
    ['thirds', '1 3 2 4 3 5 4 6 5 7 6 8'],
    ['fourths', '1 4 2 5 3 6 4 7 5 8'],
    ['groups-of-three', '1 2 3 2 3 4 3 4 5 4 5 6 5 6 7 6 7 8'],
    ['groups-of-four', '1 2 3 4 2 3 4 5 3 4 5 6 4 5 6 7 5 6 7 8'],
    ['degree-and-root', '1 1 2 1 3 1 4 1 5 1 6 1 7 1 8 8'],
  ] as const)('%s is %s', (pattern, expected) => {
    expect(onceThrough(pattern, octave)).toBe(expected);
  });
});

describe('a degree and its root', () => {
  test('over two octaves is answered by the root below it', () => {
    expect(onceThrough('degree-and-root', degreesFrom(1, 10))).toBe(
      '1 1 2 1 3 1 4 1 5 1 6 1 7 1 8 8 9 8 10 8',
    );
  });

  test('where no root lies below is answered by the one above', () => {
    expect(onceThrough('degree-and-root', degreesFrom(6, 4))).toBe('1 3 2 3 3 3 4 3');
  });
});

describe('a random walk', () => {
  const walk = (seed: number, degrees = octave) => patternLine('random-walk', degrees, seed).once;

  test('is the same for the same seed and another for another', () => {
    expect(walk(3)).toEqual(walk(3));
    expect(new Set([1, 2, 3, 4, 5, 6].map((seed) => walk(seed).join())).size).toBe(6);
  });

  test.each([1, 2, 99, 2 ** 32 - 1])('of seed %i begins on the root and goes by one or two notes', (seed) => {
    const line = walk(seed, degreesFrom(5, 14));
    expect(line).toHaveLength(27);
    expect(line[0]).toBe(3);
    for (const [at, here] of line.entries()) {
      expect(here).toBeGreaterThanOrEqual(0);
      expect(here).toBeLessThan(14);
      if (at > 0) expect([1, 2]).toContain(Math.abs(here - (line[at - 1] ?? Number.NaN)));
    }
  });
});

describe('every pattern', () => {
  test.each(PATTERNS)('%s stays within the notes that there are, however few', (pattern) => {
    for (let count = 1; count <= 30; count += 1) {
      const { once, loop } = patternLine(pattern, degreesFrom(3, count), 5);
      expect(once.length).toBeGreaterThan(0);
      expect(loop.length).toBeGreaterThan(0);
      expect([...once, ...loop].every((at) => Number.isInteger(at) && at >= 0 && at < count)).toBe(true);
    }
  });

  test.each(['thirds', 'fourths', 'groups-of-three', 'groups-of-four'] as const)(
    '%s of two notes is played upwards',
    (pattern) => {
      expect(onceThrough(pattern, [1, 2])).toBe('1 2');
    },
  );

  test('goes round as it stands, except that up and down leaves out the note it begins with again', () => {
    expect(patternLine('thirds', octave).loop).toEqual(patternLine('thirds', octave).once);
    expect(patternLine('up-and-down', [1, 2, 3])).toEqual({ once: [0, 1, 2, 1, 0], loop: [0, 1, 2, 1] });
    expect(patternLine('up-and-down', [1])).toEqual({ once: [0], loop: [0] });
  });
});
