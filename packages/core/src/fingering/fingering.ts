/**
 * A fingering as it is handed out: notes with string, fret and finger, the frets it stays within, how far
 * the hand opens, and what it costs.
 */
import { type FretSlot, fretNumber, type Neck, type NeckString } from '../instrument/neck.ts';
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import { pitchClassOf } from '../pitch/letter.ts';
import type { OpenStrings } from './area.ts';
import { type Cost, unpackCost } from './cost.ts';
import { spanMm } from './hand.ts';
import type { Solution, Touch } from './touch.ts';

/** The ways in which a scale is laid out. */
export const STYLES = [
  'position',
  'three-per-string',
  'one-string',
  'two-octaves',
  'whole-range',
  'across-the-neck',
] as const;

export type Style = (typeof STYLES)[number];

/** A note with the finger that plays it. */
export interface FingeredNote {
  /** 1 at the highest-sounding side. */
  readonly string: number;
  /** 0 for an open string, else the fret's number on the neck. */
  readonly fret: number;
  /** 0 for an open string, else 1 (index) to 4 (little finger). */
  readonly finger: number;
  readonly note: string;
  /** 1 to 7. */
  readonly degree: number;
  readonly midi: number;
}

/** Frets from the lowest to the highest, 0 for open strings. */
export interface FretRange {
  readonly from: number;
  readonly to: number;
}

/** A scale on a neck, note by note upwards. */
export interface Fingering {
  readonly area: FretRange;
  /** The frets at which finger 1 is at home, one after the other: the names of the positions. */
  readonly positions: readonly number[];
  /** The widest span the hand covers without moving, in millimetres. */
  readonly reachMm: number;
  readonly cost: Cost;
  readonly notes: readonly FingeredNote[];
}

/** Turns what the solver found into what is handed out. */
export function describeSolution(
  neck: Neck,
  scale: Scale,
  solution: Solution,
  openStrings: OpenStrings = 'near-the-nut',
): Fingering {
  const notes = solution.touches.map((touch) => describeTouch(neck, scale, touch));
  return {
    area: frets(openStrings === 'anywhere' ? awayFromOpenStrings(notes) : notes),
    positions: positionsOf(neck, solution.touches),
    reachMm: Math.round(widestStayMm(neck, solution.touches) * 10) / 10,
    cost: unpackCost(solution.cost),
    notes,
  };
}

/** The frets that hold all of the given notes. */
export function frets(notes: readonly FingeredNote[]): FretRange {
  const numbers = notes.map(({ fret }) => fret);
  return { from: Math.min(...numbers), to: Math.max(...numbers) };
}

/** Open strings that may be played anywhere do not draw an area to the nut. */
function awayFromOpenStrings(notes: readonly FingeredNote[]): readonly FingeredNote[] {
  const stopped = notes.filter(({ finger }) => finger > 0);
  return stopped.length > 0 ? stopped : notes;
}

function positionsOf(neck: Neck, touches: readonly Touch[]): readonly number[] {
  return touches.flatMap(({ position }, at) =>
    position === touches[at - 1]?.position ? [] : [(neck.slots[position.indexSlot] as FretSlot).fret],
  );
}

function describeTouch(neck: Neck, scale: Scale, touch: Touch): FingeredNote {
  const string = neck.strings[touch.string - 1] as NeckString;
  const midi = string.midiBySlot[touch.slot] as number;
  const at = pitchClassesOf(scale).indexOf(pitchClassOf(midi));
  return {
    string: touch.string,
    fret: fretNumber(neck, string, touch.slot),
    finger: touch.finger,
    note: scale.notes[at] as string,
    degree: at + 1,
    midi,
  };
}

function widestStayMm(neck: Neck, touches: readonly Touch[]): number {
  let widest = 0;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const [at, touch] of touches.entries()) {
    if (touch.position !== touches[at - 1]?.position) {
      low = Number.POSITIVE_INFINITY;
      high = Number.NEGATIVE_INFINITY;
    }
    if (touch.isOpen) continue;
    low = Math.min(low, touch.slot);
    high = Math.max(high, touch.slot);
    widest = Math.max(widest, spanMm(neck, low, high));
  }
  return widest;
}
