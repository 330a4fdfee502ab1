/**
 * Pitches as they are written: letter, alteration, octave of the letter.
 */
import { LETTERS, type Letter, NATURAL_SEMITONES } from '@stillroot/core';

/** A pitch on paper. Octaves change at C, by letter: C♭4 sounds as B3. */
export interface WrittenPitch {
  readonly letter: Letter;
  /** Semitones above (+) or below (−) the natural letter. */
  readonly alteration: number;
  readonly octave: number;
}

/**
 * How a sounding note is written under a given name.
 * @param name a letter and its accidentals in ASCII, of any number
 * @example writtenPitch('Cb', 59) // C, −1, octave 4
 */
export function writtenPitch(name: string, midi: number): WrittenPitch {
  const letter = name.charAt(0) as Letter;
  const size = name.length - 1;
  const alteration = name.endsWith('b') ? -size : size;
  const natural = midi - alteration - (NATURAL_SEMITONES[LETTERS.indexOf(letter)] as number);
  return { letter, alteration, octave: natural / 12 - 1 };
}
