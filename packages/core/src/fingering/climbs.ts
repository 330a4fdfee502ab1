/**
 * Climbs: the areas of a neck in which scales can be played upwards from one root over whole octaves, before
 * any hand is laid on them, in the order in which they are worth trying.
 */
import type { FretSlot, Neck } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import { HIGHEST_MIDI } from '../pitch/pitch.ts';
import { type Area, fretsBeyondTwelfth, type OpenStrings } from './area.ts';
import { widestHand } from './hand.ts';
import { octaveBits, octavesFrom, type Soundings, soundings } from './sounding.ts';

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

/**
 * The parts of a neck, as a hand prefers them: one octave in easy reach is more use than two where the neck
 * meets the body, and so is a hand that moves (common practice, no source).
 */
export const REGIONS = ['in-easy-reach', 'far-up'] as const;

export type Region = (typeof REGIONS)[number];

/** Beyond this many frets it is no longer one area. */
const WIDEST_AREA = 12;

/** Areas that end further beyond the twelfth fret are far up. */
const FRETS_IN_EASY_REACH_BEYOND_TWELFTH = 4;

/** Climbs that are alike in frets and octaves. */
export type Group = readonly Climb[];

/** Groups of the climbs in one region of a neck, the best first, worked out as far as they are read. */
export function climbGroups(
  neck: Neck,
  scales: readonly Scale[],
  search: ClimbSearch,
  region: Region,
): Generator<Group> {
  const widths = climbsByWidth(neck, scales, search, region);
  return search.prefer === 'fewest-frets' ? fewestFretsFirst(widths) : mostOctavesFirst(widths);
}

/** Climbs area width by area width; within one width those with the most octaves first. */
function* fewestFretsFirst(widths: Iterable<Group>): Generator<Group> {
  for (const climbs of widths) yield* groupBy(climbs, ({ octaves }) => -octaves);
}

/** Those with the most octaves first; among equals the narrowest areas. */
function* mostOctavesFirst(widths: Iterable<Group>): Generator<Group> {
  const climbs = [...widths].flat();
  yield* groupBy(climbs, ({ area, octaves }) => area.toSlot - area.fromSlot - 100 * octaves);
}

/**
 * Climbs in areas as wide as a hand, and one more: an area that begins at the nut has its open strings for
 * nothing. Where there are none, those in the narrowest areas that have some.
 */
function* climbsByWidth(
  neck: Neck,
  scales: readonly Scale[],
  { fromSlot, openStrings }: ClimbSearch,
  region: Region,
): Generator<Group> {
  const octave = octaveBits(scales);
  const { pitchClass } = (scales[0] as Scale).root;
  let isFound = false;
  for (let width = 2; width <= WIDEST_AREA; width += 1) {
    if (isFound && width > widestHand(neck) + 1) break;
    const climbs: Climb[] = [];
    const sounding = soundings(neck, width, openStrings);
    for (const [at, area] of sounding.areas.entries()) {
      if (fromSlot !== undefined && area.fromSlot !== fromSlot) continue;
      if (regionOf(neck, area) !== region) continue;
      const climb = climbIn(area, sounding, at, octave, pitchClass);
      if (climb) climbs.push(climb);
    }
    isFound ||= climbs.length > 0;
    yield climbs;
  }
}

/** The climb from the lowest root that has a whole octave of every scale above it. */
function climbIn(
  area: Area,
  sounding: Soundings,
  at: number,
  octave: number,
  pitchClass: number,
): Climb | undefined {
  for (let rootMidi = pitchClass; rootMidi <= HIGHEST_MIDI; rootMidi += 12) {
    const octaves = octavesFrom(sounding, at, octave, rootMidi);
    if (octaves > 0) return { area, rootMidi, octaves };
  }
  return undefined;
}

function regionOf(neck: Neck, { toSlot }: Area): Region {
  const beyond = fretsBeyondTwelfth((neck.slots[toSlot] as FretSlot).fret);
  return beyond > FRETS_IN_EASY_REACH_BEYOND_TWELFTH ? 'far-up' : 'in-easy-reach';
}

/** Items that rank alike together, the lowest rank first. */
function groupBy<T>(items: readonly T[], rankOf: (item: T) => number): readonly (readonly T[])[] {
  const groups = Map.groupBy(items, rankOf);
  return [...groups].toSorted(([a], [b]) => a - b).map(([, group]) => group);
}
