/**
 * Instruments and tunings as the catalogue describes them, before a neck is built.
 */
import type { Pitch } from '../pitch/pitch.ts';

/**
 * How a hand lies on the frets: one finger a fret, with a stretch; or two frets a finger, as on the
 * mandolin family.
 */
export type HandFrame = 'one-finger-per-fret' | 'two-frets-per-finger';

/** A fret of a neck that does not have all of them. */
export interface PartialFret {
  /** What players call it, a half standing for an added one (6½ is the dulcimer's 6+). */
  readonly fret: number;
  /** Semitones above the nut. */
  readonly semitones: number;
}

/** A string that begins farther up the neck than the others. */
export interface ShortString {
  /** Counted from 1 at the highest-sounding side. */
  readonly string: number;
  /** The fret at which its open note lies. */
  readonly startsAtFret: number;
}

/** A tuning: what each string or course sounds when open. */
export interface Tuning {
  readonly id: string;
  readonly name: string;
  /** From the lowest-sounding side to string 1, as the trade writes them. */
  readonly courses: readonly Course[];
}

/** One string, or several that are stopped together; the first is the one fingerings are computed from. */
export type Course = readonly [Pitch, ...Pitch[]];

/** A fretted instrument. */
export interface Instrument {
  readonly id: string;
  readonly name: string;
  readonly aliases: readonly string[];
  readonly scaleLengthMm: number;
  /** The number of the last fret. */
  readonly frets: number;
  readonly handFrame: HandFrame;
  /** The frets of a partial fretting, ascending; absent where every semitone has one. */
  readonly partialFrets?: readonly PartialFret[];
  readonly shortStrings: readonly ShortString[];
  /** Its usual tunings, the most usual first. */
  readonly tunings: readonly [Tuning, ...Tuning[]];
}
