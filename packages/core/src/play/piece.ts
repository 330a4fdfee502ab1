/**
 * Pieces: fingerings in time. Every moment is a whole number of ticks from the beginning, 480 to a quarter
 * note; a piece is the same whenever it is made of the same things.
 */
import type { FingeredNote } from '../fingering/fingering.ts';
import type { Scale } from '../mode/spelling.ts';
import type { NoteValue } from './note-value.ts';
import type { Pattern } from './pattern.ts';
import type { Timing } from './timing.ts';

/** A note that sounds from one tick to another. */
export interface TimedNote {
  readonly startTicks: number;
  readonly durationTicks: number;
  readonly midi: number;
  readonly note: string;
  /** Of the section's scale, 1 to 7. */
  readonly degree: number;
  /** The mode's place in the round, 0 to 6; 0 where a fingering is played alone. */
  readonly modeIndex: number;
}

/** A note that is played on the neck. */
export interface PlayedNote extends TimedNote, FingeredNote {
  /** Its place in the fingering, from 0. */
  readonly noteIndex: number;
}

/** A click of the count-in. */
export interface Click {
  readonly startTicks: number;
  readonly durationTicks: number;
  /** Whether it begins a bar. */
  readonly isAccent: boolean;
}

/** The bars of one mode, the rest after it included: where it ends the next begins, or the piece ends. */
export interface Section {
  readonly modeIndex: number;
  readonly name: string;
  readonly scale: Scale;
  readonly startTicks: number;
  readonly endTicks: number;
}

/** Something to be played, in time. */
export interface Piece {
  readonly timing: Timing;
  readonly pattern: Pattern;
  readonly noteValue: NoteValue;
  /** The clicks before the first note: none, or some bars of them. */
  readonly countIn: readonly Click[];
  /** Where the count-in ends and the first section begins. */
  readonly countInTicks: number;
  readonly sections: readonly Section[];
  /** What is played on the neck, one note after another. */
  readonly notes: readonly PlayedNote[];
  /** The degrees whose triads are the vamp, a bar each, in turn; each mode's own choice where absent. */
  readonly vampDegrees: readonly number[] | undefined;
  readonly totalTicks: number;
}
