/**
 * Necks: an instrument in a tuning, with its capo, ready to look notes up on. Fret 0 is the open string
 * wherever it begins; every other number is the fret as the neck's inlays count it, also above a capo and
 * on a short string.
 */
import { pitchClassOf } from '../pitch/letter.ts';
import { formatMidi } from '../pitch/pitch.ts';
import { fail, type Result, succeed } from '../problem.ts';
import { fretDistanceMm } from './fret.ts';
import type { HandFrame, Instrument, Tuning } from './instrument.ts';

/** A fret that exists on the neck. The first slot of a neck is its nut. */
export interface FretSlot {
  /** The fret's number on the neck. */
  readonly fret: number;
  /** Semitones above the nut. */
  readonly semitones: number;
  /** Millimetres from the nut. */
  readonly distanceMm: number;
}

/** A string or course of a neck. */
export interface NeckString {
  /** 1 at the highest-sounding side. */
  readonly number: number;
  /** MIDI number of the open string, with its capo or short start counted in. */
  readonly openMidi: number;
  /** The slot at which it is open: 0, or the capo's, or the fifth fret of a banjo's short string. */
  readonly startSlot: number;
  /** MIDI numbers by slot; the entry at `startSlot` is the open string, those below it are −1. */
  readonly midiBySlot: readonly number[];
}

/** An instrument in a tuning. */
export interface Neck {
  readonly instrument: Instrument;
  readonly tuning: Tuning;
  /** Index 0 is string 1. */
  readonly strings: readonly NeckString[];
  /** Index 0 is the nut; ascending. */
  readonly slots: readonly FretSlot[];
  readonly scaleLengthMm: number;
  readonly handFrame: HandFrame;
  readonly capoFret: number;
}

/** What may be set on a neck. */
export interface NeckOptions {
  /** The fret a capo lies on; 0 for none. */
  readonly capoFret?: number;
  /** The strings a capo covers; all of them where absent. */
  readonly capoStrings?: readonly number[];
  /** The last fret, where it is not the instrument's own. */
  readonly frets?: number;
}

/** The highest note that MIDI 1.0 has a number for. */
const HIGHEST_MIDI = 127;

/** The most frets a neck may have. */
export const MOST_FRETS = 36;

/**
 * Builds the neck of an instrument in a tuning. A tuning typed by hand may have another number of strings
 * than the instrument; its short strings are then not counted. A neck has at least the frets at which its
 * short strings begin.
 */
export function buildNeck(instrument: Instrument, tuning: Tuning, options: NeckOptions = {}): Result<Neck> {
  const { capoFret = 0, frets = instrument.frets } = options;
  const isOwnCount = tuning.courses.length === instrument.tunings[0].courses.length;
  const shortStrings = isOwnCount ? instrument.shortStrings : [];
  const fewest = Math.max(1, ...shortStrings.map(({ startsAtFret }) => startsAtFret));
  if (!Number.isInteger(frets) || frets < fewest || frets > MOST_FRETS) {
    return fail('frets', String(frets), `a whole number of frets from ${fewest} to ${MOST_FRETS}`);
  }
  const slots = buildSlots(instrument, frets);
  if (slots.length < 2) {
    return fail(
      'frets',
      String(frets),
      `enough for the first fret of this neck, which is number ${instrument.partialFrets?.[0]?.fret}`,
    );
  }
  const capoSlot = slots.findIndex((slot) => slot.fret === capoFret);
  if (capoSlot < 0 || capoSlot > slots.length - 2) {
    return fail(
      'capo',
      String(capoFret),
      `a fret of this neck from 0 (none) to ${(slots.at(-2) as FretSlot).fret}`,
    );
  }
  const strings = tuning.courses.toReversed().map(([principal], at): NeckString => {
    const number = at + 1;
    const short = shortStrings.find((one) => one.string === number);
    const shortSlot = short ? slots.findIndex((slot) => slot.fret === short.startsAtFret) : 0;
    const isCapoed = options.capoStrings === undefined || options.capoStrings.includes(number);
    const startSlot = Math.max(shortSlot, isCapoed ? capoSlot : 0);
    const nutMidi = principal.midi - (slots[shortSlot] as FretSlot).semitones;
    const midiBySlot = slots.map((slot, index) => (index < startSlot ? -1 : nutMidi + slot.semitones));
    return { number, startSlot, midiBySlot, openMidi: midiBySlot[startSlot] as number };
  });
  const highest = Math.max(...strings.flatMap(({ midiBySlot }) => midiBySlot));
  if (highest > HIGHEST_MIDI) {
    return fail(
      'tuning',
      tuning.name,
      `open strings whose last fret sounds no higher than ${formatMidi(HIGHEST_MIDI)}`,
    );
  }
  return succeed({
    instrument,
    tuning,
    strings,
    slots,
    capoFret,
    scaleLengthMm: instrument.scaleLengthMm,
    handFrame: instrument.handFrame,
  });
}

/** The fret as a player names it: 0 for the open string, else its number on the neck. */
export function fretNumber(neck: Neck, string: NeckString, slot: number): number {
  return slot === string.startSlot ? 0 : (neck.slots[slot] as FretSlot).fret;
}

/** The pitch classes that can be sounded anywhere on the neck. */
export function soundingPitchClasses(neck: Neck): ReadonlySet<number> {
  return new Set(
    neck.strings.flatMap(({ midiBySlot }) => midiBySlot.filter((midi) => midi >= 0).map(pitchClassOf)),
  );
}

function buildSlots(instrument: Instrument, frets: number): readonly FretSlot[] {
  const all =
    instrument.partialFrets ??
    Array.from({ length: frets }, (_, at) => ({ fret: at + 1, semitones: at + 1 }));
  return [{ fret: 0, semitones: 0 }, ...all.filter(({ fret }) => fret <= frets)].map(
    ({ fret, semitones }) => ({
      fret,
      semitones,
      distanceMm: fretDistanceMm(instrument.scaleLengthMm, semitones),
    }),
  );
}
