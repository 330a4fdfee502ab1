/**
 * The catalogue as plain values that a page can carry to the browser: no classes, no sources, pitches as
 * text.
 */
import type { HandFrame, PartialFret, ShortString } from '@stillroot/core';
import type { InstrumentKind } from './instrument-kind.ts';

/** A family: its modes' step ids by degree from the head. */
export interface PlainFamily {
  readonly slug: string;
  readonly name: string;
  readonly modes: readonly string[];
}

/** A mode: its steps id, its slug and the name to display. */
export interface PlainMode {
  readonly id: string;
  readonly slug: string;
  readonly name: string;
}

/** A tuning: its courses low to high, each with its strings joined by slashes. */
export interface PlainTuning {
  readonly id: string;
  readonly name: string;
  readonly courses: readonly string[];
}

/** An instrument: enough to build core's, and to sound and write it. */
export interface PlainInstrument {
  readonly id: string;
  readonly name: string;
  readonly kind: InstrumentKind;
  readonly aliases: readonly string[];
  readonly scaleLengthMm: number;
  readonly frets: number;
  readonly handFrame: HandFrame;
  readonly partialFrets?: readonly PartialFret[];
  readonly shortStrings: readonly ShortString[];
  readonly soundingMinusWrittenSemitones: number;
  readonly midiProgram: number;
  readonly tunings: readonly PlainTuning[];
}

/** Everything that an island needs to know of the catalogue. */
export interface PlainCatalogue {
  readonly families: readonly PlainFamily[];
  /** In core's order: the index is `mode.index`. */
  readonly modes: readonly PlainMode[];
  readonly instruments: readonly PlainInstrument[];
}
