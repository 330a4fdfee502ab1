/**
 * Three to a string: each string, from the lowest-sounding to string 1, takes the next three notes, and
 * the hand does not move within a string.
 */
import type { Neck, NeckString } from '../instrument/neck.ts';
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import { pitchClassOf } from '../pitch/letter.ts';
import { midiOfStep, openSlot } from './area.ts';
import { describeSolution, type Fingering } from './fingering.ts';
import { handPositions, spanMm } from './hand.ts';
import { createSolver, type LineNote, type Option } from './solve.ts';

/** A fingering of three to a string, or why the hand or the neck cannot do it from there. */
export type ThreePerString =
  | { readonly kind: 'playable'; readonly fingering: Fingering; readonly packedCost: number }
  | {
      readonly kind: 'too-wide';
      readonly string: number;
      readonly spanMm: number;
      readonly frets: readonly number[];
    }
  | { readonly kind: 'off-the-neck'; readonly string: number };

/** Why a neck's tuning does not lend itself to three to a string, or undefined where it does. */
export function threePerStringObstacle(neck: Neck): string | undefined {
  if (neck.strings.length < 2) return 'three to a string needs at least two strings';
  const climbs = neck.strings.every(
    (string, at) => at === 0 || string.openMidi < (neck.strings[at - 1] as NeckString).openMidi,
  );
  return climbs
    ? undefined
    : 'three to a string needs open strings that rise from one to the next, and these do not (the tuning is re-entrant or has two strings alike)';
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

/**
 * Three to a string from a slot of the lowest-sounding string.
 * @param reachMm the hand's reach
 */
export function threePerStringFrom(
  neck: Neck,
  scale: Scale,
  startSlot: number,
  reachMm: number,
): ThreePerString {
  const lowest = neck.strings.at(-1) as NeckString;
  const startMidi = lowest.midiBySlot[startSlot] as number;
  const firstDegree = pitchClassesOf(scale).indexOf(pitchClassOf(startMidi));
  const rootMidi = startMidi - (scale.mode.semitones[firstDegree] as number);
  const line: LineNote[] = [];
  let step = firstDegree;
  for (const string of neck.strings.toReversed()) {
    const slots = [0, 1, 2].map((at) => string.midiBySlot.indexOf(midiOfStep(scale, rootMidi, step + at)));
    if (slots.some((slot) => slot < string.startSlot)) return { kind: 'off-the-neck', string: string.number };
    const stopped = slots.filter((slot) => slot > string.startSlot);
    const span = stopped.length > 0 ? spanMm(neck, Math.min(...stopped), Math.max(...stopped)) : 0;
    const options = slots.map(
      (slot): Option => ({ string: string.number, slot, isOpen: slot === string.startSlot }),
    );
    if (!isCoverable(neck, options, reachMm)) {
      const frets = stopped.map((slot) => neck.slots[slot]?.fret as number);
      return { kind: 'too-wide', string: string.number, spanMm: Math.round(span * 10) / 10, frets };
    }
    line.push(...options.map((option, at) => ({ options: [option], holdsHand: at > 0 })));
    step += 3;
  }
  const solution = createSolver(neck, positionsFor(neck, line, reachMm)).solve(line);
  if (!solution) return { kind: 'off-the-neck', string: neck.strings.length };
  return { kind: 'playable', fingering: describeSolution(neck, scale, solution), packedCost: solution.cost };
}

function isCoverable(neck: Neck, options: readonly Option[], reachMm: number): boolean {
  const held = options.map((option, at) => ({ options: [option], holdsHand: at > 0 }));
  return createSolver(neck, positionsFor(neck, held, reachMm)).stay(held) !== undefined;
}

function positionsFor(neck: Neck, line: readonly LineNote[], reachMm: number) {
  const slots = line.flatMap(({ options }) =>
    options.filter(({ isOpen }) => !isOpen).map(({ slot }) => slot),
  );
  if (slots.length === 0) return handPositions(neck, reachMm, 1, 1);
  return handPositions(
    neck,
    reachMm,
    Math.max(openSlot(neck) + 1, Math.min(...slots) - 3),
    Math.max(...slots),
  );
}
