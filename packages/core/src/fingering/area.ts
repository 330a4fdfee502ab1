/**
 * Areas: stretches of a neck, and the notes that lie in them.
 */
import { type Neck, type NeckString, openSlot } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import { pitchClassOf } from '../pitch/letter.ts';
import { type HandPosition, widestHands } from './hand.ts';
import type { LineNote, Option } from './touch.ts';

/** A stretch of a neck by slots, both ends included. */
export interface Area {
  readonly fromSlot: number;
  readonly toSlot: number;
}

/**
 * Whether open strings may be played: in an area that begins at the nut (or capo), which is how positions
 * are commonly taught; in any area; or not at all.
 */
export const OPEN_STRING_USES = ['near-the-nut', 'anywhere', 'never'] as const;

export type OpenStrings = (typeof OPEN_STRING_USES)[number];

/** The places of an area by MIDI number. */
export type AreaMap = readonly (readonly Option[] | undefined)[];

/** Every stretch of `width` slots, from the nut or capo upwards; from the fret above it where no string may be open. */
export function areasOfWidth(neck: Neck, width: number, openStrings: OpenStrings): readonly Area[] {
  const first = openSlot(neck) + (openStrings === 'never' ? 1 : 0);
  const count = Math.max(0, neck.slots.length - width - first + 1);
  return Array.from({ length: count }, (_, at) => ({ fromSlot: first + at, toSlot: first + at + width - 1 }));
}

/** How far a fret lies beyond the twelfth, where most necks meet the body (common practice, no source). */
export function fretsBeyondTwelfth(fret: number): number {
  return Math.max(0, fret - 12);
}

/** The lowest and the highest stopped slot of a string in an area. */
function stoppedSlots(string: NeckString, { fromSlot, toSlot }: Area): readonly [low: number, high: number] {
  return [Math.max(fromSlot, string.startSlot + 1), toSlot];
}

function takesOpen(neck: Neck, area: Area, openStrings: OpenStrings): boolean {
  if (openStrings === 'never') return false;
  return openStrings === 'anywhere' || area.fromSlot === openSlot(neck);
}

/** The widest ways to lay a hand within an area; the nut, or the capo, is nobody's fret. */
export function handsIn(neck: Neck, { fromSlot, toSlot }: Area, reachMm: number): readonly HandPosition[] {
  return widestHands(neck, reachMm, Math.max(fromSlot, openSlot(neck) + 1), toSlot);
}

/** Marks by MIDI number what sounds in an area. Quick: every area of a neck is looked at before one is mapped. */
export function markArea(neck: Neck, area: Area, openStrings: OpenStrings, marks: Uint8Array): void {
  marks.fill(0);
  const isOpenTaken = takesOpen(neck, area, openStrings);
  for (const string of neck.strings) {
    if (isOpenTaken) marks[string.openMidi] = 1;
    const [low, high] = stoppedSlots(string, area);
    for (let slot = low; slot <= high; slot += 1) marks[string.midiBySlot[slot] as number] = 1;
  }
}

/** What can be played in an area, string by string from the lowest-sounding side. */
export function mapArea(neck: Neck, area: Area, openStrings: OpenStrings): AreaMap {
  const map: Option[][] = [];
  const isOpenTaken = takesOpen(neck, area, openStrings);
  const add = (midi: number, option: Option): void => {
    const known = map[midi];
    if (known) known.push(option);
    else map[midi] = [option];
  };
  for (const string of neck.strings.toReversed()) {
    const { number } = string;
    if (isOpenTaken) add(string.openMidi, { string: number, slot: string.startSlot, isOpen: true });
    const [low, high] = stoppedSlots(string, area);
    for (let slot = low; slot <= high; slot += 1) {
      add(string.midiBySlot[slot] as number, { string: number, slot, isOpen: false });
    }
  }
  return map;
}

/** How many notes of a scale follow one another upwards from a step before one is not marked. */
export function climbLength(marks: Uint8Array, scale: Scale, rootMidi: number, fromStep = 0): number {
  let count = 0;
  while (marks[midiOfStep(scale, rootMidi, fromStep + count)]) count += 1;
  return count;
}

/** The notes of a climb as a line to be solved. */
export function climbLine(
  map: AreaMap,
  scale: Scale,
  rootMidi: number,
  length: number,
  fromStep = 0,
): readonly LineNote[] {
  return Array.from({ length }, (_, at) => ({
    options: map[midiOfStep(scale, rootMidi, fromStep + at)] ?? [],
    holdsHand: false,
  }));
}

/** The MIDI number of the n-th scale note above a root at `rootMidi`; the root itself is step 0, below it steps are negative. */
export function midiOfStep(scale: Scale, rootMidi: number, step: number): number {
  const octave = Math.floor(step / 7);
  return rootMidi + 12 * octave + (scale.mode.semitones[step - 7 * octave] as number);
}

/** Where a scale's root is marked, lowest first. */
export function rootsIn(marks: Uint8Array, scale: Scale): readonly number[] {
  const roots: number[] = [];
  for (let midi = scale.root.pitchClass; midi < marks.length; midi += 12) if (marks[midi]) roots.push(midi);
  return roots;
}

/** Marks for every MIDI number. */
export function newMarks(): Uint8Array {
  return new Uint8Array(128);
}

/** The step of a scale that a MIDI number is, counted from a root at `rootMidi`; undefined where it is none. */
export function stepOf(scale: Scale, rootMidi: number, midi: number): number | undefined {
  const degree = scale.mode.semitones.indexOf(pitchClassOf(midi - rootMidi));
  return degree < 0 ? undefined : 7 * Math.floor((midi - rootMidi) / 12) + degree;
}

/** The slot of a fret, or of the next one that exists. Fret 0 is the open position, which begins at the capo where there is one. */
export function slotAtOrAbove(neck: Neck, fret: number): number {
  if (fret === 0) return openSlot(neck);
  const slot = neck.slots.findIndex((one) => one.fret >= fret);
  return slot < 0 ? neck.slots.length : slot;
}
