/**
 * Areas: stretches of a neck, and the notes that lie in them.
 */

import type { Neck } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import { pitchClassOf } from '../pitch/letter.ts';
import type { LineNote, Option } from './solve.ts';

/** A stretch of a neck by slots, both ends included. One that starts at the nut (or capo) takes in the open strings. */
export interface Area {
  readonly fromSlot: number;
  readonly toSlot: number;
}

/** The places of an area by MIDI number. */
export type AreaMap = readonly (readonly Option[] | undefined)[];

/** The slot of the lowest open string: the nut, or the capo. */
export function openSlot(neck: Neck): number {
  return Math.min(...neck.strings.map((string) => string.startSlot));
}

/** Every stretch of `width` slots, from the nut or capo upwards. */
export function areasOfWidth(neck: Neck, width: number): readonly Area[] {
  const first = openSlot(neck);
  const count = Math.max(0, neck.slots.length - width - first + 1);
  return Array.from({ length: count }, (_, at) => ({ fromSlot: first + at, toSlot: first + at + width - 1 }));
}

/** What can be played in an area, string by string from the lowest-sounding side. */
export function mapArea(neck: Neck, area: Area): AreaMap {
  const map: Option[][] = [];
  const takesOpen = area.fromSlot === openSlot(neck);
  const add = (midi: number, option: Option): void => {
    const known = map[midi];
    if (known) known.push(option);
    else map[midi] = [option];
  };
  for (let at = neck.strings.length - 1; at >= 0; at -= 1) {
    const string = neck.strings[at];
    if (!string) continue;
    if (takesOpen) add(string.openMidi, { string: string.number, slot: string.startSlot, isOpen: true });
    for (let slot = Math.max(area.fromSlot, string.startSlot + 1); slot <= area.toSlot; slot += 1) {
      add(string.midiBySlot[slot] as number, { string: string.number, slot, isOpen: false });
    }
  }
  return map;
}

/** How many notes of a scale follow one another upwards from `fromMidi` before one is not in the area. */
export function climbLength(map: AreaMap, scale: Scale, fromMidi: number): number {
  let count = 0;
  while (map[midiOfStep(scale, fromMidi, count)]) count += 1;
  return count;
}

/** The notes of a climb as a line to be solved. */
export function climbLine(map: AreaMap, scale: Scale, fromMidi: number, length: number): readonly LineNote[] {
  return Array.from({ length }, (_, step) => ({
    options: map[midiOfStep(scale, fromMidi, step)] as readonly Option[],
    holdsHand: false,
  }));
}

/** The MIDI number of the n-th scale note above a root at `rootMidi`; the root itself is step 0. */
export function midiOfStep(scale: Scale, rootMidi: number, step: number): number {
  return rootMidi + 12 * Math.floor(step / 7) + (scale.mode.semitones[step % 7] as number);
}

/** Where a scale's root can be played in an area, lowest first. */
export function rootsIn(map: AreaMap, scale: Scale): readonly number[] {
  const roots: number[] = [];
  for (const midi of map.keys())
    if (map[midi] && pitchClassOf(midi) === scale.root.pitchClass) roots.push(midi);
  return roots;
}
