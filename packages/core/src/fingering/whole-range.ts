/**
 * Up the neck: two octaves from root to root, or every note that the neck has. The hand moves where it must.
 */
import type { Neck } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import {
  type Area,
  climbLength,
  climbLine,
  handsIn,
  mapArea,
  markArea,
  newMarks,
  type OpenStrings,
  rootsIn,
} from './area.ts';
import { keepBest } from './ranking.ts';
import { solve } from './solve.ts';
import type { LineNote, Solution } from './touch.ts';

/** Where and how to go up the neck. */
export interface RangeSearch {
  readonly reachMm: number;
  /** The lowest slot that may be used. */
  readonly fromSlot: number;
  readonly openStrings: OpenStrings;
  /** How many fingerings at most. */
  readonly limit: number;
}

/** Two octaves from root to root, from whichever root costs least; none where the neck does not have them. */
export function twoOctaves(neck: Neck, scale: Scale, search: RangeSearch): readonly Solution[] {
  const best: Solution[] = [];
  for (const rootMidi of rootsOfTwoOctaves(neck, [scale], search)) {
    for (const solution of twoOctavesFrom(neck, scale, rootMidi, search)) {
      keepBest(best, solution, search.limit);
    }
  }
  return best;
}

/** The roots above which a neck has two octaves of every one of the scales, lowest first. */
export function rootsOfTwoOctaves(
  neck: Neck,
  scales: readonly Scale[],
  search: RangeSearch,
): readonly number[] {
  const marks = marksOf(neck, search);
  return rootsIn(marks, scales[0] as Scale).filter((rootMidi) =>
    scales.every((scale) => climbLength(marks, scale, rootMidi) >= TWO_OCTAVES),
  );
}

/** The cheapest ways to play two octaves from a root. */
export function twoOctavesFrom(
  neck: Neck,
  scale: Scale,
  rootMidi: number,
  search: RangeSearch,
): readonly Solution[] {
  const map = mapArea(neck, areaOf(neck, search), search.openStrings);
  return solveUp(neck, climbLine(map, scale, rootMidi, TWO_OCTAVES), search);
}

/**
 * Every note from the lowest to the highest. Where frets are missing in between, the longest run of notes
 * that follow one another; between equals the lowest.
 */
export function wholeRange(neck: Neck, scale: Scale, search: RangeSearch): readonly Solution[] {
  const marks = marksOf(neck, search);
  // Counted from the root below the lowest MIDI number, so that no step is negative.
  const rootMidi = scale.root.pitchClass - 12;
  let longest = { fromStep: 0, length: 0 };
  for (let step = 7; step < 7 * 12; step += 1) {
    const length = climbLength(marks, scale, rootMidi, step);
    if (length > longest.length) longest = { fromStep: step, length };
    step += length;
  }
  if (longest.length <= TWO_OCTAVES / 2) return [];
  const map = mapArea(neck, areaOf(neck, search), search.openStrings);
  return solveUp(neck, climbLine(map, scale, rootMidi, longest.length, longest.fromStep), search);
}

const TWO_OCTAVES = 15;

function marksOf(neck: Neck, search: RangeSearch): Uint8Array {
  const marks = newMarks();
  markArea(neck, areaOf(neck, search), search.openStrings, marks);
  return marks;
}

function areaOf(neck: Neck, { fromSlot }: RangeSearch): Area {
  return { fromSlot, toSlot: neck.slots.length - 1 };
}

function solveUp(neck: Neck, line: readonly LineNote[], search: RangeSearch): readonly Solution[] {
  return solve(neck, line, handsIn(neck, areaOf(neck, search), search.reachMm), search.limit);
}
