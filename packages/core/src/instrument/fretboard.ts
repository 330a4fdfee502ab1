/**
 * The fretboard: every place at which a note of a scale lies.
 */
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import { pitchClassOf } from '../pitch/letter.ts';
import { fretNumber, type Neck } from './neck.ts';

/** A place on a neck where a note of a scale lies. */
export interface Place {
  /** 1 at the highest-sounding side. */
  readonly string: number;
  /** 0 for the open string, else the fret's number on the neck. */
  readonly fret: number;
  /** The index of the fret on the neck, counting only those that exist; the nut is 0. */
  readonly slot: number;
  readonly note: string;
  /** 1 to 7. */
  readonly degree: number;
  readonly midi: number;
}

/** Every place of every note of a scale, string 1 first, each string from its open note upwards. */
export function placesOn(neck: Neck, scale: Scale): readonly Place[] {
  return neck.strings.flatMap((string) =>
    string.midiBySlot.flatMap((midi, slot): Place[] => {
      if (midi < 0) return [];
      const at = pitchClassesOf(scale).indexOf(pitchClassOf(midi));
      if (at < 0) return [];
      const fret = fretNumber(neck, string, slot);
      return [{ string: string.number, fret, slot, midi, note: scale.notes[at] as string, degree: at + 1 }];
    }),
  );
}
