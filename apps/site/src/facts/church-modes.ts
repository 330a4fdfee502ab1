/**
 * The church modes as entries of the catalogue, from bright to dark.
 */
import { type ModeEntry, modeEntryOf } from '@stillroot/catalog';
import { CHURCH_MODES, invariant, UNIVERSE } from '@stillroot/core';

/** Lydian, Ionian, Mixolydian, Dorian, Aeolian, Phrygian, Locrian: each one semitone darker than the one before. */
export const CHURCH_ENTRIES: readonly ModeEntry[] = CHURCH_MODES.map(({ name, semitones }) => {
  const mode = UNIVERSE.modes.find((one) => one.semitones.join() === semitones.join());
  invariant(mode !== undefined, `${name} is a mode`);
  return modeEntryOf(mode);
}).toSorted((a, b) => b.mode.brightness - a.mode.brightness);
