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
}

/** Beyond this many frets it is no longer one area. */
const WIDEST_AREA = 12;

/**
 * The areas in which all the given scales can be played from the same root note, over the same number of
 * whole octaves, best first: the fewest frets in which the hand need not move; where there is no such
 * area, the fewest frets of all. Among areas of that width, more whole octaves, then the fewest frets
 * beyond the twelfth, then the least opening beyond a comfortable hand, then the least cost, then lower on
 * the neck.
 * @param scales scales on one root
 */
export function findSharedAreas(
  neck: Neck,
  scales: readonly Scale[],
  search: AreaSearch,
): readonly SharedArea[] {
  let narrowest: readonly Climb[] = [];
  for (let width = 2; width <= WIDEST_AREA; width += 1) {
    // One more than a hand covers: an area that begins at the nut has its open strings for nothing.
    if (narrowest.length > 0 && width > widestHand(neck) + 1) break;
    const climbs = climbsOfWidth(neck, scales, width, search);
    if (climbs.length > 0 && narrowest.length === 0) narrowest = climbs;
    const still = climbs.flatMap((climb) => finger(neck, scales, climb, search, 'stay'));
    if (still.length > 0) return answer(neck, scales, still, search);
  }
  const moving = narrowest.flatMap((climb) => finger(neck, scales, climb, search, 'solve'));
  return answer(neck, scales, moving, search);
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

/** The climbs of the most whole octaves in areas of a width. */
function climbsOfWidth(
  neck: Neck,
  scales: readonly Scale[],
  width: number,
  { fromSlot }: AreaSearch,
): readonly Climb[] {
  const climbs = areasOfWidth(neck, width)
    .filter((area) => fromSlot === undefined || area.fromSlot === fromSlot)
    .flatMap((area) => climbIn(neck, scales, area));
  const most = Math.max(...climbs.map(({ octaves }) => octaves));
  return climbs.filter(({ octaves }) => octaves === most);
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
