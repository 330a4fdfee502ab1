/**
 * Necks: an instrument in a tuning, with its capo, ready to look notes up on. Fret 0 is the open string
 * wherever it begins; every other number is the fret as the neck's inlays count it, also above a capo and
 * on a short string.
 */
import { pitchClassOf } from '../pitch/letter.ts';
import { formatMidi, HIGHEST_MIDI } from '../pitch/pitch.ts';
import { fail, invariant, type Result, succeed } from '../problem.ts';
import { fretDistanceMm } from './fret.ts';
import type { HandFrame, Instrument, Tuning } from './instrument.ts';
import { coveredStrings, type NeckOptions, shown, stringLengthsMm } from './neck-options.ts';
import { checkStringCount, ownTuning } from './tuning.ts';

export type { NeckOptions } from './neck-options.ts';

/** A fret that exists on the neck. The first slot of a neck is its nut. */
export interface FretSlot {
  /** The fret's number on the neck. */
  readonly fret: number;
  /** Semitones above the nut. */
  readonly semitones: number;
  /**
   * Millimetres from the nut along the longest string, whose frets are widest: what a hand can span there it
   * can span on any string.
   */
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
  /** From nut to saddle, or from where the nut would be on a string that begins farther up. */
  readonly scaleLengthMm: number;
}

/** An instrument in a tuning. */
export interface Neck {
  readonly instrument: Instrument;
  /** With the id and name of the instrument's own where it is one of those. */
  readonly tuning: Tuning;
  /** Index 0 is string 1. */
  readonly strings: readonly NeckString[];
  /** Everything that can be sounded anywhere on the neck. */
  readonly pitchClasses: ReadonlySet<number>;
  /** Index 0 is the nut; ascending. */
  readonly slots: readonly FretSlot[];
  /** Of the longest string. */
  readonly scaleLengthMm: number;
  readonly handFrame: HandFrame;
  readonly capoFret: number;
  /** The strings that the capo shortens, by number, ascending; none where there is no capo. */
  readonly capoStrings: readonly number[];
}

/** The most frets a neck may have. */
export const MOST_FRETS = 36;

/**
 * Builds the neck of an instrument in a tuning. A tuning typed by hand may have another number of strings
 * than the instrument; its short strings are then not counted. A neck has at least the frets at which its
 * short strings begin.
 */
export function buildNeck(instrument: Instrument, tuning: Tuning, options: NeckOptions = {}): Result<Neck> {
  const { capoFret = 0, frets = instrument.frets } = options;
  const count = tuning.courses.length;
  const miscounted = checkStringCount(count, tuning.name, 'tuning');
  if (miscounted) return miscounted;
  const shortStrings = count === instrument.tunings[0].courses.length ? instrument.shortStrings : [];
  const lengthsMm = stringLengthsMm(instrument.scaleLengthMm, count, options);
  if (!lengthsMm.ok) return lengthsMm;
  const scaleLengthMm = Math.max(...lengthsMm.value);
  const fewest = Math.max(1, ...shortStrings.map(({ startsAtFret }) => startsAtFret));
  const slots = buildSlots(instrument, frets, fewest, scaleLengthMm);
  if (!slots.ok) return slots;
  const capoSlot = findCapo(slots.value, capoFret);
  if (!capoSlot.ok) return capoSlot;
  const covered = coveredStrings(count, options.capoStrings);
  if (!covered.ok) return covered;

  const strings = tuning.courses.toReversed().map(([principal], at): NeckString => {
    const number = at + 1;
    const short = shortStrings.find((one) => one.string === number);
    const shortSlot = short ? slots.value.findIndex((slot) => slot.fret === short.startsAtFret) : 0;
    invariant(shortSlot >= 0, 'a short string begins at a fret of its neck');
    const startSlot = Math.max(shortSlot, covered.value.includes(number) ? capoSlot.value : 0);
    const nutMidi = principal.midi - (slots.value[shortSlot] as FretSlot).semitones;
    const midiBySlot = slots.value.map(({ semitones }, slot) =>
      slot < startSlot ? -1 : nutMidi + semitones,
    );
    const openMidi = midiBySlot[startSlot] as number;
    return { number, startSlot, midiBySlot, openMidi, scaleLengthMm: lengthsMm.value[at] as number };
  });
  const capoStrings = covered.value.filter(
    (number) => capoSlot.value > 0 && strings[number - 1]?.startSlot === capoSlot.value,
  );
  if (capoSlot.value > 0 && capoStrings.length === 0) {
    return fail('capoStrings', covered.value.join(','), { kind: 'string-below-capo', fret: capoFret });
  }
  if (Math.max(...strings.flatMap(({ midiBySlot }) => midiBySlot)) > HIGHEST_MIDI) {
    return fail('tuning', tuning.name, { kind: 'sounding-to', highest: formatMidi(HIGHEST_MIDI) });
  }
  return succeed({
    instrument,
    tuning: ownTuning(instrument, tuning) ?? tuning,
    strings,
    pitchClasses: pitchClassesOn(strings),
    slots: slots.value,
    capoFret,
    capoStrings,
    scaleLengthMm,
    handFrame: instrument.handFrame,
  });
}

/** The slot of the lowest open string: the nut, or the capo. */
export function openSlot({ strings }: Pick<Neck, 'strings'>): number {
  return Math.min(...strings.map(({ startSlot }) => startSlot));
}

/** The fret as a player names it: 0 for the open string, else its number on the neck. */
export function fretNumber(neck: Neck, string: NeckString, slot: number): number {
  return slot === string.startSlot ? 0 : (neck.slots[slot] as FretSlot).fret;
}

/** Millimetres from the nut to a fret along one string, for pictures; a hand is measured on the longest. */
export function stringFretDistanceMm(
  { scaleLengthMm }: NeckString,
  { semitones }: Pick<FretSlot, 'semitones'>,
): number {
  return fretDistanceMm(scaleLengthMm, semitones);
}

function pitchClassesOn(strings: readonly NeckString[]): ReadonlySet<number> {
  return new Set(
    strings.flatMap(({ midiBySlot }) => midiBySlot.filter((midi) => midi >= 0).map(pitchClassOf)),
  );
}

function buildSlots(
  { partialFrets }: Instrument,
  frets: number,
  fewest: number,
  scaleLengthMm: number,
): Result<readonly FretSlot[]> {
  if (!Number.isInteger(frets) || frets < fewest || frets > MOST_FRETS) {
    return fail('frets', shown(frets), { kind: 'fret-count', from: fewest, to: MOST_FRETS });
  }
  const all = partialFrets ?? Array.from({ length: frets }, (_, at) => ({ fret: at + 1, semitones: at + 1 }));
  const there = all.filter(({ fret }) => fret <= frets);
  if (there.length === 0) {
    return fail('frets', shown(frets), { kind: 'first-fret', fret: all[0]?.fret ?? 1 });
  }
  return succeed(
    [{ fret: 0, semitones: 0 }, ...there].map(({ fret, semitones }) => {
      return { fret, semitones, distanceMm: fretDistanceMm(scaleLengthMm, semitones) };
    }),
  );
}

function findCapo(slots: readonly FretSlot[], capoFret: number): Result<number> {
  const slot = slots.findIndex(({ fret }) => fret === capoFret);
  if (slot >= 0 && slot < slots.length - 1) return succeed(slot);
  const highest = (slots.at(-2) as FretSlot).fret;
  return fail('capo', shown(capoFret), { kind: 'capo-fret', highest });
}
