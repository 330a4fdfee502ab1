import {
  distanceBetween,
  EVERYDAY_ROOTS,
  type Mode,
  neighboursOf,
  parseNote,
  pitchClassesOf,
  routeBetween,
  scalesHolding,
  sharedScales,
  spell,
  UNIVERSE,
} from '@stillroot/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { everySevenNotes, soundsOf } from '../reference/by-hand.ts';
import { unwrap } from '../reference/in-core.ts';

const anyMode = fc.constantFrom(...UNIVERSE.modes);
const anyRoot = fc.constantFrom(...EVERYDAY_ROOTS);

function semitonesApart(a: Mode, b: Mode): number {
  let sum = 0;
  for (let at = 0; at < 7; at += 1) {
    sum += Math.abs((a.semitones[at] ?? Number.NaN) - (b.semitones[at] ?? Number.NaN));
  }
  return sum;
}

/** The highest sum of worth over the modes after the first, among all shortest chains from one to the other. */
function bestWorth(from: Mode, to: Mode, worthOf: (mode: Mode) => number): number {
  const distance = semitonesApart(from, to);
  if (distance === 0) return 0;
  const nearer = UNIVERSE.modes.filter(
    (mode) => semitonesApart(from, mode) === 1 && semitonesApart(mode, to) === distance - 1,
  );
  return Math.max(...nearer.map((mode) => worthOf(mode) + bestWorth(mode, to, worthOf)));
}

/** The roots and sets of all 462 × 12 scales, by hand. */
const placements = everySevenNotes().flatMap((semitones) =>
  Array.from({ length: 12 }, (_, root) => semitones.map((semitone) => (root + semitone) % 12)),
);

describe('neighbours', () => {
  test('are exactly the modes one semitone away, with the degree that moves, and each is mutual', () => {
    for (const mode of UNIVERSE.modes) {
      const neighbours = neighboursOf(mode);
      const near = UNIVERSE.modes.filter((other) => semitonesApart(mode, other) === 1);
      expect(new Set(neighbours.map((one) => one.mode))).toEqual(new Set(near));
      expect(neighbours).toHaveLength(near.length);
      for (const { mode: other, moved } of neighbours) {
        const at = moved.degree - 1;
        expect(Math.abs(moved.by)).toBe(1);
        expect(other.semitones[at]).toBe((mode.semitones[at] ?? Number.NaN) + moved.by);
        const back = neighboursOf(other).find((one) => one.mode === mode);
        expect(back?.moved).toEqual({ degree: moved.degree, by: 0 - moved.by });
      }
    }
  });
});

describe('a route between any two modes', () => {
  test('has one step for each semitone of their distance, each to a neighbour', () => {
    fc.assert(
      fc.property(anyMode, anyMode, (from, to) => {
        const route = routeBetween(from, to);
        expect(distanceBetween(from.semitones, to.semitones)).toBe(semitonesApart(from, to));
        expect(route).toHaveLength(semitonesApart(from, to) + 1);
        expect(route[0]).toEqual({ mode: from, moved: undefined });
        expect(route.at(-1)?.mode).toBe(to);
        for (const [at, step] of route.entries()) {
          const before = route[at - 1];
          if (before) expect(neighboursOf(before.mode)).toContainEqual(step);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('is the most preferred of all the shortest chains', () => {
    const near = fc
      .tuple(anyMode, anyMode)
      .filter(([from, to]) => semitonesApart(from, to) >= 2 && semitonesApart(from, to) <= 4);
    fc.assert(
      fc.property(near, fc.integer({ min: 1, max: 97 }), ([from, to], seed) => {
        const worthOf = (mode: Mode): number => (mode.index * seed) % 101;
        const route = routeBetween(from, to, worthOf);
        const worth = route.slice(1).reduce((sum, { mode }) => sum + worthOf(mode), 0);
        expect(worth).toBe(bestWorth(from, to, worthOf));
      }),
      { numRuns: 60 },
    );
  });
});

describe('scales by shared notes', () => {
  test('are all the others that share at least so many, most shared first', () => {
    fc.assert(
      fc.property(anyMode, anyRoot, fc.integer({ min: 5, max: 7 }), (mode, root, atLeast) => {
        const scale = spell(mode, root);
        const counts = placements
          .map((notes) => notes.filter((note) => pitchClassesOf(scale).includes(note)).length)
          .filter((count) => count >= atLeast)
          .toSorted((a, b) => b - a);
        // The first of those that share seven is the scale itself, which core leaves out.
        const shared = sharedScales(scale, atLeast);
        expect(shared.map(({ count }) => count)).toEqual(counts.slice(1));
        for (const { scale: other, count } of shared) {
          expect(pitchClassesOf(other).filter((one) => pitchClassesOf(scale).includes(one))).toHaveLength(
            count,
          );
          expect(other.mode === mode && other.root.pitchClass === root.pitchClass).toBe(false);
        }
      }),
      { numRuns: 25 },
    );
  });
});

describe('scales that hold a handful of notes', () => {
  const anyNotes = fc.uniqueArray(
    fc.constantFrom('C', 'Db', 'D', 'D#', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B'),
    {
      minLength: 1,
      maxLength: 9,
    },
  );

  test('lack as few of them as any scale does, say which, and what they add', () => {
    fc.assert(
      fc.property(anyNotes, (notes) => {
        const asked = soundsOf(notes.join(' '));
        const lacking = placements.map((held) => asked.filter((one) => !held.includes(one)).length);
        const fewest = Math.min(...lacking);
        const holdings = scalesHolding(notes.map((note) => unwrap(parseNote(note))));
        expect(holdings).toHaveLength(lacking.filter((count) => count === fewest).length);
        for (const { scale, missing, extra } of holdings) {
          expect(missing).toEqual(asked.filter((one) => !pitchClassesOf(scale).includes(one)));
          expect(missing).toHaveLength(fewest);
          const added = soundsOf(extra.join(' ') || 'C');
          const expected = pitchClassesOf(scale).filter((one) => !asked.includes(one));
          expect(extra.length === 0 ? [] : added).toEqual(expected);
        }
      }),
      { numRuns: 25 },
    );
  });
});
