/**
 * Along one string: the hand travels, and hears the steps as distances.
 */
import type { Neck, NeckString } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import { pitchClassOf } from '../pitch/letter.ts';
import { midiOfStep } from './area.ts';
import { widestHands } from './hand.ts';
import { solve } from './solve.ts';
import type { LineNote, Solution } from './touch.ts';

/** Where and how to play along a string. */
export interface OneStringSearch {
  readonly reachMm: number;
  /** The slot at or above which to begin. */
  readonly fromSlot: number;
  /** Whether the open string may be played. */
  readonly takesOpen: boolean;
  /** How many fingerings at most. */
  readonly limit: number;
}

/**
 * A scale along one string, one octave from its first root at or above a slot; none where that octave is
 * not whole on the string.
 * @param string the string, of this neck
 */
export function alongString(
  neck: Neck,
  scale: Scale,
  string: NeckString,
  { reachMm, fromSlot, takesOpen, limit }: OneStringSearch,
): readonly Solution[] {
  const lowest = Math.max(string.startSlot + (takesOpen ? 0 : 1), fromSlot);
  const rootSlot = string.midiBySlot.findIndex(
    (midi, slot) => slot >= lowest && pitchClassOf(midi) === scale.root.pitchClass,
  );
  if (rootSlot < 0) return [];
  const rootMidi = string.midiBySlot[rootSlot] as number;
  const line: LineNote[] = [];
  for (let step = 0; step <= 7; step += 1) {
    const slot = string.midiBySlot.indexOf(midiOfStep(scale, rootMidi, step));
    if (slot < 0) return [];
    line.push({
      options: [{ string: string.number, slot, isOpen: slot === string.startSlot }],
      holdsHand: false,
    });
  }
  const positions = widestHands(neck, reachMm, string.startSlot + 1, neck.slots.length - 1);
  return solve(neck, line, positions, limit);
}
