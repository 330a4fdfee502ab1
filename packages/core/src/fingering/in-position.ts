/**
 * In position: the hand stays over a few frets and crosses the strings. The search works for several
 * scales on one root at once, so that a round and a single scale are the same question.
 */
import { type FretSlot, type Neck, openSlot } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import { type Area, climbLine, handsIn, mapArea } from './area.ts';
import { type Climb, type ClimbSearch, climbGroups } from './climbs.ts';
import { describeSolution, type Fingering } from './fingering.ts';
import { comfortableReachMm, spanMm } from './hand.ts';
import { solveMoving } from './move.ts';
import { solveStaying } from './stay.ts';
import { isAlike, type LineNote, type Solution } from './touch.ts';

/** Several scales fingered in one area, from one root. */
export interface SharedArea {
  readonly fingerings: readonly Fingering[];
}

/** What to look for. */
export interface AreaSearch extends ClimbSearch {
  readonly reachMm: number;
  /** How many answers to give at most. */
  readonly limit: number;
  /** How many of them may lie in one area, where a single scale is asked for. */
  readonly each: number;
}

/**
 * The areas in which all the given scales can be played from the same root note, over the same number of
 * whole octaves, best first: those in which the hand need not move, then by frets and octaves as preferred,
 * then the fewest frets beyond the twelfth, then the least opening beyond a comfortable hand, then the
 * least cost, then the lowest on the neck. Answers are alike in frets and octaves. A single scale is
 * answered with every distinct fingering, so that several may lie in one area; several scales with the best
 * of each area.
 * @param scales scales on one root
 */
export function findSharedAreas(
  neck: Neck,
  scales: readonly Scale[],
  search: AreaSearch,
): readonly SharedArea[] {
  const groups = climbGroups(neck, scales, search);
  for (const how of ['staying', 'moving'] as const) {
    for (const group of groups()) {
      const playable = group.flatMap((climb) => finger(neck, scales, climb, search, how));
      if (playable.length > 0) return answer(neck, scales, playable, search);
    }
  }
  return [];
}

/** How far a fret lies beyond the twelfth, where most necks meet the body (common practice, no source). */
export function fretsBeyondTwelfth(fret: number): number {
  return Math.max(0, fret - 12);
}

/** A climb with its fingerings, one a scale, and what they cost together. */
interface Fingered {
  readonly area: Area;
  readonly solutions: readonly Solution[];
  readonly cost: number;
}

/** The fingerings of a climb, or nothing where one of its scales has none. */
function finger(
  neck: Neck,
  scales: readonly Scale[],
  { area, rootMidi, octaves }: Climb,
  { reachMm, each, openStrings }: AreaSearch,
  how: 'staying' | 'moving',
): readonly Fingered[] {
  const map = mapArea(neck, area, openStrings);
  const positions = handsIn(neck, area, reachMm);
  const solve = (line: readonly LineNote[], count: number) =>
    how === 'staying' ? solveStaying(line, positions, count) : solveMoving(neck, line, positions, count);
  const solutions: Solution[] = [];
  for (const scale of scales) {
    const line = climbLine(map, scale, rootMidi, octaves * 7 + 1);
    const found = solve(line, scales.length === 1 ? each : 1);
    if (scales.length === 1) return found.map((one) => ({ area, solutions: [one], cost: one.cost }));
    if (!found[0]) return [];
    solutions.push(found[0]);
  }
  return [{ area, solutions, cost: solutions.reduce((sum, { cost }) => sum + cost, 0) }];
}

function answer(
  neck: Neck,
  scales: readonly Scale[],
  candidates: readonly Fingered[],
  { limit, reachMm, openStrings }: AreaSearch,
): readonly SharedArea[] {
  const beyond = ({ area }: Fingered): number =>
    fretsBeyondTwelfth((neck.slots[area.toSlot] as FretSlot).fret);
  const strainMm = ({ area }: Fingered): number =>
    Math.max(
      0,
      spanMm(neck, Math.max(area.fromSlot, openSlot(neck) + 1), area.toSlot) - comfortableReachMm(reachMm),
    );
  const ranked = candidates
    .map((one) => ({ ...one, beyond: beyond(one), strainMm: strainMm(one) }))
    .toSorted(
      (a, b) =>
        a.beyond - b.beyond ||
        a.strainMm - b.strainMm ||
        a.cost - b.cost ||
        a.area.fromSlot - b.area.fromSlot,
    );
  return distinct(ranked)
    .slice(0, limit)
    .map(({ solutions }) => ({
      fingerings: scales.map((scale, at) =>
        describeSolution(neck, scale, solutions[at] as Solution, openStrings),
      ),
    }));
}

/** Overlapping areas may hold the same fingering; the best placed stays. */
function distinct<T extends Fingered>(ranked: readonly T[]): readonly T[] {
  return ranked.filter(
    ({ solutions }, at) =>
      !ranked
        .slice(0, at)
        .some((before) =>
          before.solutions.every((one, scale) =>
            isAlike(one.touches, (solutions[scale] as Solution).touches),
          ),
        ),
  );
}
