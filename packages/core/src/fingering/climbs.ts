/**
 * Climbs: the areas of a neck in which scales can be played upwards from one root over whole octaves, before
 * any hand is laid on them, in the order in which they are worth trying.
 */
import type { FretSlot, Neck } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import {
  type Area,
  areasOfWidth,
  climbLength,
  fretsBeyondTwelfth,
  markArea,
  newMarks,
  type OpenStrings,
} from './area.ts';
import { widestHand } from './hand.ts';

/** A place where every scale can be climbed from one note, before any hand is laid on it. */
export interface Climb {
  readonly area: Area;
  readonly rootMidi: number;
  readonly octaves: number;
}

/** Where to look for climbs. */
export interface ClimbSearch {
  /** The slot at which the area must begin; anywhere where absent. */
  readonly fromSlot?: number;
  /** What counts more: to stay within the fewest frets, or to play the most whole octaves. */
  readonly prefer: 'fewest-frets' | 'most-octaves';
  readonly openStrings: OpenStrings;
}

/** Beyond this many frets it is no longer one area. */
const WIDEST_AREA = 12;

/** More octaves than any neck has. */
const MOST_OCTAVES = 12;

/** Climbs that are alike in frets and octaves, and lie all in easy reach or none. */
export type Group = readonly Climb[];

/** Groups of climbs, the best first, worked out as far as they are read. */
export function climbGroups(neck: Neck, scales: readonly Scale[], search: ClimbSearch): Generator<Group> {
  return search.prefer === 'fewest-frets'
    ? fewestFretsFirst(neck, scales, search)
    : mostOctavesFirst(neck, scales, search);
}

/** Climbs area width by area width; within one width by rank. */
function* fewestFretsFirst(neck: Neck, scales: readonly Scale[], search: ClimbSearch): Generator<Group> {
  for (const climbs of climbsByWidth(neck, scales, search)) {
    yield* groupBy(climbs, (climb) => rankOf(neck, climb));
  }
}

/** All climbs by rank; among equals the narrowest areas first. */
function* mostOctavesFirst(neck: Neck, scales: readonly Scale[], search: ClimbSearch): Generator<Group> {
  const climbs = [...climbsByWidth(neck, scales, search)].flat();
  yield* groupBy(climbs, (climb) => 100 * rankOf(neck, climb) + climb.area.toSlot - climb.area.fromSlot);
}

/**
 * The more octaves the better; but areas that reach far beyond the twelfth fret come after the others: one
 * octave in easy reach is more use than two where the neck meets the body (common practice, no source).
 */
function rankOf(neck: Neck, { area, octaves }: Climb): number {
  const isFarUp = fretsBeyondTwelfth((neck.slots[area.toSlot] as FretSlot).fret) > 4;
  return (isFarUp ? MOST_OCTAVES : 0) - octaves;
}

/**
 * Climbs in areas as wide as a hand, and one more: an area that begins at the nut has its open strings for
 * nothing. Where there are none, those in the narrowest areas that have some.
 */
function* climbsByWidth(
  neck: Neck,
  scales: readonly Scale[],
  { fromSlot, openStrings }: ClimbSearch,
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
  const { pitchClass } = (scales[0] as Scale).root;
  for (let rootMidi: number = pitchClass; rootMidi < marks.length; rootMidi += 12) {
    if (!marks[rootMidi]) continue;
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
