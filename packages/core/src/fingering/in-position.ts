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
import { unpackCost } from './cost.ts';
import { describeSolution, type Fingering } from './fingering.ts';
import { handPositions, widestHand } from './hand.ts';
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
 * beyond the twelfth, then the least cost, then lower on the neck.
 * @param scales scales on one root
 */
export function findSharedAreas(
  neck: Neck,
  scales: readonly Scale[],
  search: AreaSearch,
): readonly SharedArea[] {
  let withTravel: readonly Candidate[] = [];
  for (let width = 2; width <= WIDEST_AREA; width += 1) {
    if (withTravel.length > 0 && width > widestHand(neck) + 1) break;
    const candidates = candidatesOfWidth(neck, scales, width, search);
    const still = candidates.filter((candidate) => !candidate.travels);
    if (still.length > 0) return rank(still, search).map(({ solve }) => ({ fingerings: solve() }));
    if (withTravel.length === 0) withTravel = candidates;
  }
  return rank(withTravel, search).map(({ solve }) => ({ fingerings: solve() }));
}

/** An area in which every scale can be climbed, and what that costs. */
interface Candidate {
  readonly octaves: number;
  /** Frets beyond the twelfth. */
  readonly beyond: number;
  readonly cost: number;
  readonly travels: boolean;
  readonly area: Area;
  readonly solve: () => readonly Fingering[];
}

/** A place where every scale can be climbed from one note, before any hand is laid on it. */
interface Climb {
  readonly area: Area;
  readonly map: AreaMap;
  readonly fromMidi: number;
  readonly octaves: number;
}

function candidatesOfWidth(
  neck: Neck,
  scales: readonly Scale[],
  width: number,
  search: AreaSearch,
): readonly Candidate[] {
  const areas = areasOfWidth(neck, width).filter(
    ({ fromSlot }) => search.fromSlot === undefined || fromSlot === search.fromSlot,
  );
  const climbs = areas.flatMap((area) => climbIn(neck, scales, area));
  const most = climbs.reduce((max, { octaves }) => Math.max(max, octaves), 0);
  return climbs
    .filter(({ octaves }) => octaves === most)
    .flatMap((climb) => finger(neck, scales, climb, search));
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

function finger(
  neck: Neck,
  scales: readonly Scale[],
  climb: Climb,
  search: AreaSearch,
): readonly Candidate[] {
  const { area, map, fromMidi, octaves } = climb;
  const positions = handPositions(
    neck,
    search.reachMm,
    Math.max(area.fromSlot, openSlot(neck) + 1),
    area.toSlot,
  );
  const solve = createSolver(neck, positions);
  const solutions: Solution[] = [];
  for (const scale of scales) {
    const solution = solve(climbLine(map, scale, fromMidi, octaves * 7 + 1));
    if (!solution) return [];
    solutions.push(solution);
  }
  return [
    {
      area,
      octaves,
      beyond: fretsBeyondTwelfth((neck.slots[area.toSlot] as FretSlot).fret),
      cost: solutions.reduce((sum, solution) => sum + solution.cost, 0),
      travels: solutions.some((solution) => unpackCost(solution.cost).travelMm > 0),
      solve: () => scales.map((scale, at) => describeSolution(neck, scale, solutions[at] as Solution)),
    },
  ];
}

/** How far a fret lies beyond the twelfth, where most necks meet the body (common practice, no source). */
export function fretsBeyondTwelfth(fret: number): number {
  return Math.max(0, fret - 12);
}

function rank(candidates: readonly Candidate[], search: AreaSearch): readonly Candidate[] {
  return candidates
    .toSorted(
      (a, b) =>
        b.octaves - a.octaves || a.beyond - b.beyond || a.cost - b.cost || a.area.fromSlot - b.area.fromSlot,
    )
    .slice(0, search.limit);
}
