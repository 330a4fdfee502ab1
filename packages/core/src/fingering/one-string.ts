/**
 * Along one string: the hand travels, and hears the steps as distances.
 */
import type { Neck, NeckString } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import { pitchClassOf } from '../pitch/letter.ts';
import { midiOfStep } from './area.ts';
import { describeSolution, type Fingering } from './fingering.ts';
import { handPositions } from './hand.ts';
import { createSolver, type LineNote } from './solve.ts';

/** A scale along one string, with its cost as one number. */
export interface AlongString {
  readonly fingering: Fingering;
  readonly packedCost: number;
}

/**
 * A scale along one string, one octave from its first root at or above a slot; undefined where that
 * octave is not whole on the string.
 * @param string the string, of this neck
 */
export function alongString(
  neck: Neck,
  scale: Scale,
  string: NeckString,
  reachMm: number,
  fromSlot = 0,
): AlongString | undefined {
  const rootSlot = string.midiBySlot.findIndex(
    (midi, slot) =>
      slot >= Math.max(string.startSlot, fromSlot) && pitchClassOf(midi) === scale.root.pitchClass,
  );
  if (rootSlot < 0) return undefined;
  const rootMidi = string.midiBySlot[rootSlot] as number;
  const line: LineNote[] = [];
  for (let step = 0; step <= 7; step += 1) {
    const slot = string.midiBySlot.indexOf(midiOfStep(scale, rootMidi, step));
    if (slot < 0) return undefined;
    line.push({
      options: [{ string: string.number, slot, isOpen: slot === string.startSlot }],
      holdsHand: false,
    });
  }
  const positions = handPositions(neck, reachMm, string.startSlot + 1, neck.slots.length - 1);
  const solution = createSolver(neck, positions).solve(line);
  return solution && { fingering: describeSolution(neck, scale, solution), packedCost: solution.cost };
}
