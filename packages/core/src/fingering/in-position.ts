/**
 * In position: the hand stays over a few frets and crosses the strings. The search works for several
 * scales on one root at once, so that a round and a single scale are the same question.
 */
import { type FretSlot, type Neck, openSlot } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import { climbLine, fretsBeyondTwelfth, handsIn, mapArea } from './area.ts';
import { type Climb, type ClimbSearch, climbGroups, type Group, REGIONS } from './climbs.ts';
import type { PackedCost } from './cost.ts';
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
 * whole octaves, best first: those in easy reach, then those in which the hand need not move, then by frets
 * and octaves as preferred, then the fewest frets beyond the twelfth, then the least opening beyond a
 * comfortable hand, then the least cost, then the lowest on the neck. Answers are alike in frets and
 * octaves. A single scale is answered with every distinct fingering, so that several may lie in one area;
 * several scales with the best of each area.
 * @param scales scales on one root
 */
export function findSharedAreas(
  neck: Neck,
  scales: readonly Scale[],
  search: AreaSearch,
): readonly SharedArea[] {
  const best: Fingered[] = [];
  let ways: readonly Way[] = WAYS;
  for (const region of REGIONS) {
    if (best.length === search.limit) break;
    const seen: Group[] = [];
    let groups: Iterable<Group> = noted(climbGroups(neck, scales, search, region), seen);
    for (const way of ways) {
      addFirst(best, neck, scales, groups, search, way);
      if (best.length > 0) {
        ways = [way];
        break;
      }
      groups = seen;
    }
  }
  return best.map(({ solutions }) => describe(neck, scales, solutions, search));
}

/** How the hand plays, the better first: it stays where it is, or moves. */
const WAYS = ['staying', 'moving'] as const;

type Way = (typeof WAYS)[number];

/** What is read, written down as well. */
function* noted<T>(items: Iterable<T>, list: T[]): Generator<T> {
  for (const item of items) {
    list.push(item);
    yield item;
  }
}

/** A climb, and what speaks against its area before a hand is laid on it. */
interface Placed extends Climb {
  readonly beyondTwelfth: number;
  readonly strainMm: number;
}

/** A climb with its fingerings, one a scale, and what they cost together. */
interface Fingered extends Placed {
  readonly solutions: readonly Solution[];
  readonly cost: PackedCost;
}

/** Adds to the best few, all of one size, those of the first groups that have any. */
function addFirst(
  best: Fingered[],
  neck: Neck,
  scales: readonly Scale[],
  groups: Iterable<Group>,
  search: AreaSearch,
  way: Way,
): void {
  for (const group of groups) {
    const [first] = best;
    if (first && !isOfOneSize(first, group[0] as Climb)) continue;
    addBest(best, neck, scales, group, search, way);
    if (best.length === search.limit) break;
  }
}

function isOfOneSize(a: Climb, b: Climb): boolean {
  return a.octaves === b.octaves && a.area.toSlot - a.area.fromSlot === b.area.toSlot - b.area.fromSlot;
}

/**
 * Adds to the best few those of a group of climbs. They are tried in the order of what is known without a
 * hand, so that those which could only come after the best few are never fingered.
 */
function addBest(
  best: Fingered[],
  neck: Neck,
  scales: readonly Scale[],
  group: Group,
  search: AreaSearch,
  way: Way,
): void {
  for (const climb of group.map((one) => place(neck, one, search.reachMm)).toSorted(comparePlaces)) {
    const last = best[search.limit - 1];
    const order = last ? comparePlaces(climb, last) : -1;
    if (order > 0) break;
    const bar = last && order === 0 ? last.cost : Number.POSITIVE_INFINITY;
    for (const one of finger(neck, scales, climb, search, way, bar)) keep(best, one, search.limit);
  }
}

function place(neck: Neck, climb: Climb, reachMm: number): Placed {
  const { fromSlot, toSlot } = climb.area;
  const spannedMm = spanMm(neck, Math.max(fromSlot, openSlot(neck) + 1), toSlot);
  return {
    ...climb,
    beyondTwelfth: fretsBeyondTwelfth((neck.slots[toSlot] as FretSlot).fret),
    strainMm: Math.max(0, spannedMm - comfortableReachMm(reachMm)),
  };
}

function comparePlaces(a: Placed, b: Placed): number {
  return a.beyondTwelfth - b.beyondTwelfth || a.strainMm - b.strainMm;
}

/** Overlapping areas may hold the same fingering: the best placed stays. Between equals the first found stands. */
function keep(best: Fingered[], one: Fingered, limit: number): void {
  const comesAfter = (other: Fingered): boolean => (comparePlaces(other, one) || other.cost - one.cost) <= 0;
  const alike = best.findIndex((other) => isSame(other, one));
  if (alike >= 0) {
    if (comesAfter(best[alike] as Fingered)) return;
    best.splice(alike, 1);
  }
  const at = best.findIndex((other) => !comesAfter(other));
  best.splice(at < 0 ? best.length : at, 0, one);
  best.splice(limit);
}

function isSame(a: Fingered, b: Fingered): boolean {
  return a.solutions.every(({ touches }, scale) =>
    isAlike(touches, (b.solutions[scale] as Solution).touches),
  );
}

/** The fingerings of a climb; nothing where one of its scales has none, or where they cost `bar` or more together. */
function finger(
  neck: Neck,
  scales: readonly Scale[],
  climb: Placed,
  { reachMm, each, openStrings }: AreaSearch,
  way: Way,
  bar: PackedCost,
): readonly Fingered[] {
  const { area, rootMidi, octaves } = climb;
  const map = mapArea(neck, area, openStrings);
  const positions = handsIn(neck, area, reachMm);
  const solve = (line: readonly LineNote[], count: number) =>
    way === 'staying' ? solveStaying(line, positions, count) : solveMoving(neck, line, positions, count);
  const solutions: Solution[] = [];
  let cost = 0;
  for (const scale of scales) {
    const line = climbLine(map, scale, rootMidi, octaves * 7 + 1);
    const found = solve(line, scales.length === 1 ? each : 1);
    if (scales.length === 1) return found.map((one) => ({ ...climb, solutions: [one], cost: one.cost }));
    const [solution] = found;
    cost += solution?.cost ?? Number.POSITIVE_INFINITY;
    if (!solution || cost >= bar) return [];
    solutions.push(solution);
  }
  return [{ ...climb, solutions, cost }];
}

function describe(
  neck: Neck,
  scales: readonly Scale[],
  solutions: readonly Solution[],
  { openStrings }: AreaSearch,
): SharedArea {
  return {
    fingerings: scales.map((scale, at) =>
      describeSolution(neck, scale, solutions[at] as Solution, openStrings),
    ),
  };
}
