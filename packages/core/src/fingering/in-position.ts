/**
 * In position: the hand stays over a few frets and crosses the strings. The search works for several
 * scales on one root at once, so that a round and a single scale are the same question.
 */
import { type FretSlot, type Neck, openSlot } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import {
  type Area,
  areasOfWidth,
  climbLength,
  climbLine,
  mapArea,
  markArea,
  newMarks,
  type OpenStrings,
  rootsIn,
} from './area.ts';
import { describeSolution, type Fingering } from './fingering.ts';
import { comfortableReachMm, handPositions, spanMm, widestHand } from './hand.ts';
import { solveMoving } from './move.ts';
import { solveStaying } from './stay.ts';
import { isAlike, type LineNote, type Solution } from './touch.ts';

/** Several scales fingered in one area, from one root. */
export interface SharedArea {
  readonly fingerings: readonly Fingering[];
}

/** What to look for. */
export interface AreaSearch {
  readonly reachMm: number;
  /** The slot at which the area must begin; anywhere where absent. */
  readonly fromSlot?: number;
  /** How many answers to give at most. */
  readonly limit: number;
  /** How many of them may lie in one area, where a single scale is asked for. */
  readonly each: number;
  /** What counts more: to stay within the fewest frets, or to play the most whole octaves. */
  readonly prefer: 'fewest-frets' | 'most-octaves';
  readonly openStrings: OpenStrings;
}

/** Beyond this many frets it is no longer one area. */
const WIDEST_AREA = 12;

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
  const groups = lazily(
    search.prefer === 'fewest-frets'
      ? fewestFretsFirst(neck, scales, search)
      : mostOctavesFirst(neck, scales, search),
  );
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

/** A place where every scale can be climbed from one note, before any hand is laid on it. */
interface Climb {
  readonly area: Area;
  readonly rootMidi: number;
  readonly octaves: number;
}

/** A climb with its fingerings, one a scale, and what they cost together. */
interface Fingered {
  readonly area: Area;
  readonly solutions: readonly Solution[];
  readonly cost: number;
}

type Group = readonly Climb[];

/** Climbs area width by area width; within one width those with the most octaves first. */
function* fewestFretsFirst(neck: Neck, scales: readonly Scale[], search: AreaSearch): Generator<Group> {
  for (const climbs of climbsByWidth(neck, scales, search)) {
    yield* groupBy(climbs, ({ octaves }) => -octaves);
  }
}

/** All climbs by octaves; among equals the narrowest areas first. */
function* mostOctavesFirst(neck: Neck, scales: readonly Scale[], search: AreaSearch): Generator<Group> {
  const climbs = [...climbsByWidth(neck, scales, search)].flat();
  yield* groupBy(climbs, ({ octaves, area }) => -100 * octaves + area.toSlot - area.fromSlot);
}

/**
 * Climbs in areas as wide as a hand, and one more: an area that begins at the nut has its open strings for
 * nothing. Where there are none, those in the narrowest areas that have some.
 */
function* climbsByWidth(
  neck: Neck,
  scales: readonly Scale[],
  { fromSlot, openStrings }: AreaSearch,
): Generator<Group> {
  const marks = newMarks();
  let isFound = false;
  for (let width = 2; width <= WIDEST_AREA; width += 1) {
    if (isFound && width > widestHand(neck) + 1) break;
    const climbs: Climb[] = [];
    for (const area of areasOfWidth(neck, width, openStrings)) {
      if (fromSlot !== undefined && area.fromSlot !== fromSlot) continue;
      markArea(neck, area, openStrings, marks);
      const climb = climbIn(area, marks, scales);
      if (climb) climbs.push(climb);
    }
    isFound ||= climbs.length > 0;
    yield climbs;
  }
}

/** The climb from the lowest root that has a whole octave of every scale above it. */
function climbIn(area: Area, marks: Uint8Array, scales: readonly Scale[]): Climb | undefined {
  for (const rootMidi of rootsIn(marks, scales[0] as Scale)) {
    let shortest = Number.POSITIVE_INFINITY;
    for (const scale of scales) {
      shortest = Math.min(shortest, climbLength(marks, scale, rootMidi));
      if (shortest <= 7) break;
    }
    if (shortest > 7) return { area, rootMidi, octaves: Math.floor((shortest - 1) / 7) };
  }
  return undefined;
}

/** Items that rank alike together, the lowest rank first. */
function groupBy<T>(items: readonly T[], rankOf: (item: T) => number): readonly (readonly T[])[] {
  const groups = Map.groupBy(items, rankOf);
  return [...groups].toSorted(([a], [b]) => a - b).map(([, group]) => group);
}

/** A sequence that is worked out as it is read and remembered for the next reading. */
function lazily<T>(source: Generator<T>): () => Generator<T> {
  const known: T[] = [];
  return function* read() {
    for (let at = 0; ; at += 1) {
      if (at === known.length) {
        const next = source.next();
        if (next.done) return;
        known.push(next.value);
      }
      yield known[at] as T;
    }
  };
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
  const lowest = Math.max(area.fromSlot, openSlot(neck) + 1);
  const positions = handPositions(neck, reachMm, lowest, area.toSlot);
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
