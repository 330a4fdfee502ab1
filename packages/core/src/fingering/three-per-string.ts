/**
 * Three to a string: each string, from the lowest-sounding to string 1, takes the next three notes, and
 * the hand does not move within a string.
 */
import { type Neck, type NeckString, openSlot } from '../instrument/neck.ts';
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import { pitchClassOf } from '../pitch/letter.ts';
import { midiOfStep } from './area.ts';
import { type HandPosition, spanMm, widestHands } from './hand.ts';
import type { Reason } from './reason.ts';
import { solve } from './solve.ts';
import { solveStaying } from './stay.ts';
import type { LineNote, Option, Solution } from './touch.ts';

/** A string on which a hand would have to open wider than it can. */
export interface BeyondReach {
  readonly string: number;
  /** The frets to be covered at once. */
  readonly frets: readonly number[];
  readonly spanMm: number;
}

/** Fingerings of three to a string, or why the hand or the neck cannot do it from there. */
export type ThreePerString =
  | { readonly kind: 'playable'; readonly solutions: readonly Solution[] }
  | { readonly kind: 'too-wide'; readonly beyondReach: readonly BeyondReach[] }
  | { readonly kind: 'off-the-neck'; readonly string: number };

/** Where and how to play three to a string. */
export interface ThreePerStringSearch {
  /** The slot of the lowest-sounding string on which to begin. */
  readonly startSlot: number;
  readonly reachMm: number;
  /** Whether open strings may be played. */
  readonly takesOpen: boolean;
  /** How many fingerings at most. */
  readonly limit: number;
}

/** Why a neck's tuning does not lend itself to three to a string, or undefined where it does. */
export function threePerStringObstacle(neck: Neck): Reason | undefined {
  if (neck.strings.length < 2) return { kind: 'one-string-only' };
  const climbs = neck.strings.every(
    (string, at) => at === 0 || string.openMidi < (neck.strings[at - 1] as NeckString).openMidi,
  );
  return climbs ? undefined : { kind: 'strings-do-not-rise' };
}

/** The slots of the lowest-sounding string that hold the scale's root; with `fromSlot`, the first scale note at or above it. */
export function startingSlots(neck: Neck, scale: Scale, fromSlot?: number): readonly number[] {
  const lowest = neck.strings.at(-1) as NeckString;
  const slots = [...lowest.midiBySlot.keys()].filter((slot) => slot >= lowest.startSlot);
  const pitchClassAt = (slot: number) => pitchClassOf(lowest.midiBySlot[slot] as number);
  if (fromSlot === undefined) return slots.filter((slot) => pitchClassAt(slot) === scale.root.pitchClass);
  const first = slots.find((slot) => slot >= fromSlot && pitchClassesOf(scale).includes(pitchClassAt(slot)));
  return first === undefined ? [] : [first];
}

/** Three to a string from a slot of the lowest-sounding string. */
export function threePerStringFrom(neck: Neck, scale: Scale, search: ThreePerStringSearch): ThreePerString {
  const { startSlot, reachMm, takesOpen, limit } = search;
  const lowest = neck.strings.at(-1) as NeckString;
  const startMidi = lowest.midiBySlot[startSlot] as number;
  const firstDegree = pitchClassesOf(scale).indexOf(pitchClassOf(startMidi));
  const rootMidi = startMidi - (scale.mode.semitones[firstDegree] as number);
  const line: LineNote[] = [];
  for (const [at, string] of neck.strings.toReversed().entries()) {
    const step = firstDegree + 3 * at;
    const slots = [0, 1, 2].map((more) =>
      string.midiBySlot.indexOf(midiOfStep(scale, rootMidi, step + more)),
    );
    if (slots.some((slot) => slot < string.startSlot || (!takesOpen && slot === string.startSlot))) {
      return { kind: 'off-the-neck', string: string.number };
    }
    for (const [more, slot] of slots.entries()) {
      const option: Option = { string: string.number, slot, isOpen: slot === string.startSlot };
      line.push({ options: [option], holdsHand: more > 0 });
    }
  }
  const positions = positionsFor(neck, line, reachMm);
  const beyondReach = neck.strings.flatMap((_, at) => {
    const notes = line.slice(3 * at, 3 * at + 3);
    return solveStaying(notes, positions, 1).length > 0 ? [] : [spanOf(neck, notes)];
  });
  if (beyondReach.length > 0) return { kind: 'too-wide', beyondReach };
  return { kind: 'playable', solutions: solve(neck, line, positions, limit) };
}

function positionsFor(neck: Neck, line: readonly LineNote[], reachMm: number): readonly HandPosition[] {
  const slots = stoppedSlots(line);
  if (slots.length === 0) return widestHands(neck, reachMm, 1, 1);
  const lowest = Math.max(openSlot(neck) + 1, Math.min(...slots) - 3);
  return widestHands(neck, reachMm, lowest, Math.max(...slots));
}

function spanOf(neck: Neck, notes: readonly LineNote[]): BeyondReach {
  const slots = stoppedSlots(notes);
  return {
    string: notes[0]?.options[0]?.string as number,
    frets: slots.map((slot) => neck.slots[slot]?.fret as number),
    spanMm: Math.round(spanMm(neck, Math.min(...slots), Math.max(...slots)) * 10) / 10,
  };
}

function stoppedSlots(line: readonly LineNote[]): readonly number[] {
  return line.flatMap(({ options }) => options.filter(({ isOpen }) => !isOpen).map(({ slot }) => slot));
}
