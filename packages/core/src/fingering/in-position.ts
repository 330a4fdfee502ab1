/**
 * In position: the hand stays over a few frets and crosses the strings. The search works for several
 * scales on one root at once, so that a round and a single scale are the same question.
 */
import type { FretSlot, Neck } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import {
  type Area,
  type AreaMap,
  areasOfWidth,
  climbLength,
  climbLine,
  mapArea,
  openSlot,
  rootsIn,
} from './area.ts';
import { describeSolution, type Fingering } from './fingering.ts';
import { COMFORTABLE_REACH_MM, handPositions, spanMm, widestHand } from './hand.ts';
import { createSolver, type Solution } from './solve.ts';

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
  /** What counts more: to stay within the fewest frets, or to play the most whole octaves. */
  readonly prefer: 'fewest-frets' | 'most-octaves';
}

/** Beyond this many frets it is no longer one area. */
const WIDEST_AREA = 12;

/** More octaves than any neck has. */
const MOST_OCTAVES = 11;

/**
 * The areas in which all the given scales can be played from the same root note, over the same number of
 * whole octaves, best first: those in which the hand need not move, then by frets and octaves as preferred,
 * then the fewest frets beyond the twelfth, then the least opening beyond a comfortable hand, then the
 * least cost, then the lowest on the neck. Answers are alike in frets and octaves.
 * @param scales scales on one root
 */
export function findSharedAreas(
  neck: Neck,
  scales: readonly Scale[],
  search: AreaSearch,
): readonly SharedArea[] {
  const climbs = everyClimb(neck, scales, search);
  const groups = groupBy(climbs, ({ octaves, area }) => {
    const width = area.toSlot - area.fromSlot + 1;
    const lacking = MOST_OCTAVES - octaves;
    return search.prefer === 'fewest-frets' ? width * 100 + lacking : lacking * 100 + width;
  });
  for (const how of ['stay', 'solve'] as const) {
    for (const group of groups) {
      const playable = group.flatMap((climb) => finger(neck, scales, climb, search, how));
      if (playable.length > 0) return answer(neck, scales, playable, search);
    }
  }
  return [];
}

/** A place where every scale can be climbed from one note, before any hand is laid on it. */
interface Climb {
  readonly area: Area;
  readonly map: AreaMap;
  readonly fromMidi: number;
  readonly octaves: number;
}

/** A climb with its fingerings, one a scale, and what they cost together. */
interface Fingered {
  readonly climb: Climb;
  readonly solutions: readonly Solution[];
  readonly cost: number;
}

/**
 * Climbs in areas as wide as a hand, and one more: an area that begins at the nut has its open strings for
 * nothing. Where there are none, those in the narrowest areas that have some.
 */
function everyClimb(neck: Neck, scales: readonly Scale[], { fromSlot }: AreaSearch): readonly Climb[] {
  const climbs: Climb[] = [];
  for (let width = 2; width <= WIDEST_AREA; width += 1) {
    if (climbs.length > 0 && width > widestHand(neck) + 1) break;
    for (const area of areasOfWidth(neck, width)) {
      if (fromSlot === undefined || area.fromSlot === fromSlot) climbs.push(...climbIn(neck, scales, area));
    }
  }
  return climbs;
}

/** Items that rank alike together, the lowest rank first. */
function groupBy<T>(items: readonly T[], rankOf: (item: T) => number): readonly (readonly T[])[] {
  const groups = new Map<number, T[]>();
  for (const item of items) {
    const rank = rankOf(item);
    const group = groups.get(rank);
    if (group) group.push(item);
    else groups.set(rank, [item]);
  }
  return [...groups].toSorted(([a], [b]) => a - b).map(([, group]) => group);
}

function climbIn(neck: Neck, scales: readonly Scale[], area: Area): readonly Climb[] {
  const map = mapArea(neck, area);
  for (const fromMidi of rootsIn(map, scales[0] as Scale)) {
    const lengths = scales.map((scale) => climbLength(map, scale, fromMidi));
    const octaves = Math.floor((Math.min(...lengths) - 1) / 7);
    if (octaves >= 1) return [{ area, map, fromMidi, octaves }];
  }
  return [];
}

/** The fingerings of a climb, or nothing where one of its scales has none. */
function finger(
  neck: Neck,
  scales: readonly Scale[],
  climb: Climb,
  { reachMm }: AreaSearch,
  how: 'stay' | 'solve',
): readonly Fingered[] {
  const { area, map, fromMidi, octaves } = climb;
  const lowest = Math.max(area.fromSlot, openSlot(neck) + 1);
  const solver = createSolver(neck, handPositions(neck, reachMm, lowest, area.toSlot));
  const solutions: Solution[] = [];
  for (const scale of scales) {
    const solution = solver[how](climbLine(map, scale, fromMidi, octaves * 7 + 1));
    if (!solution) return [];
    solutions.push(solution);
  }
  return [{ climb, solutions, cost: solutions.reduce((sum, solution) => sum + solution.cost, 0) }];
}

function answer(
  neck: Neck,
  scales: readonly Scale[],
  candidates: readonly Fingered[],
  { limit }: AreaSearch,
): readonly SharedArea[] {
  const beyond = ({ climb }: Fingered): number =>
    fretsBeyondTwelfth((neck.slots[climb.area.toSlot] as FretSlot).fret);
  const strainMm = ({ climb: { area } }: Fingered): number =>
    Math.max(
      0,
      spanMm(neck, Math.max(area.fromSlot, openSlot(neck) + 1), area.toSlot) - COMFORTABLE_REACH_MM,
    );
  return candidates
    .toSorted(
      (a, b) =>
        beyond(a) - beyond(b) ||
        strainMm(a) - strainMm(b) ||
        a.cost - b.cost ||
        a.climb.area.fromSlot - b.climb.area.fromSlot,
    )
    .slice(0, limit)
    .map(({ solutions }) => ({
      fingerings: scales.map((scale, at) => describeSolution(neck, scale, solutions[at] as Solution)),
    }));
}

/** How far a fret lies beyond the twelfth, where most necks meet the body (common practice, no source). */
export function fretsBeyondTwelfth(fret: number): number {
  return Math.max(0, fret - 12);
}
