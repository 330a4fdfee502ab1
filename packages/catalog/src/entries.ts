/**
 * What the catalogue holds: modes, families and instruments with everything that is said of them.
 */
import type { Course, Family, Instrument, Mode, Tuning } from '@stillroot/core';
import type { InstrumentKind } from './instrument-kind.ts';

/** Where a fact comes from. */
export interface Source {
  readonly id: string;
  readonly author: string;
  readonly title: string;
  /** A year, years, a century or `undated`; empty for common practice. */
  readonly year: string;
  /** True where the text was not seen and is cited from memory. */
  readonly isRecalled: boolean;
  readonly note?: string;
}

/** A name that somebody gives to a mode. */
export interface SourcedName {
  /** ASCII accidentals: `Dorian #4`. */
  readonly name: string;
  readonly sources: readonly Source[];
  /** True where the name on this mode is from memory. */
  readonly isRecalled: boolean;
  /** The tradition it belongs to, where that is not the European trade: `Carnatic mela 14`. */
  readonly tradition?: string;
}

/** A name that sources give to more than one mode. */
export interface Conflict {
  readonly name: string;
  readonly uses: readonly ConflictUse[];
  readonly note?: string;
}

/** One of the modes that a name in conflict is given to. */
export interface ConflictUse {
  readonly mode: Mode;
  /** Who uses it so, in words. */
  readonly who: string;
  readonly sources: readonly Source[];
}

/** A mode and its names. */
export interface ModeEntry {
  readonly mode: Mode;
  /** Unique among all modes. */
  readonly slug: string;
  /** The name to display, with ASCII accidentals; unique among all modes. */
  readonly name: string;
  /** Every name the data files give, the family's own first, then those of other traditions. */
  readonly names: readonly SourcedName[];
  /** All other names, the systematic one included where it is not the one displayed. */
  readonly aliases: readonly string[];
  /** True where the displayed name comes from the trade, not from the rule. */
  readonly isTradeNamed: boolean;
  /** 1 to 7, counted from the head of its family. */
  readonly degree: number;
  /** The names that some source gives to this mode and another gives to another. */
  readonly conflicts: readonly Conflict[];
}

/** A family and its names. */
export interface FamilyEntry {
  readonly family: Family;
  /** The steps of its brightest mode. */
  readonly id: string;
  /** Unique among all families. */
  readonly slug: string;
  readonly name: string;
  readonly aliases: readonly string[];
  readonly isTradeNamed: boolean;
  /** True for the families that every player knows: major, harmonic minor, melodic minor. */
  readonly isEveryday: boolean;
  /** The mode on degree 1: the one the family is named after. */
  readonly head: ModeEntry;
  /** Seven, by degree from the head. */
  readonly modes: readonly ModeEntry[];
  readonly note?: string;
}

/** A clef as MusicXML writes it. */
export interface Clef {
  readonly sign: 'G' | 'F' | 'C';
  /** Counted from 1 at the bottom. */
  readonly line: number;
  readonly octaveChange: number;
}

/** A tuning and what is known of it. */
export interface TuningEntry extends Tuning {
  readonly courses: readonly Course[];
  /** True where a course sounds below the one before it. */
  readonly isReentrant: boolean;
  readonly isRecalled: boolean;
  /** Absent where they are those of the instrument. */
  readonly sources?: readonly Source[];
  readonly note?: string;
}

/** An instrument and everything that notation and sound need to know of it. */
export interface InstrumentEntry extends Instrument {
  readonly kind: InstrumentKind;
  /** How many strings or courses. */
  readonly strings: number;
  /** What is built, not a limit. */
  readonly scaleLengthRangeMm: { readonly from: number; readonly to: number };
  /** The fewest and the most frets that are built. */
  readonly fretsRange: { readonly from: number; readonly to: number };
  readonly handFrameSources: readonly Source[];
  readonly clef: Clef;
  /** Add this to a written pitch to get the sounding one. */
  readonly soundingMinusWrittenSemitones: number;
  /** General MIDI level 1, counted from 0. */
  readonly midiProgram: number;
  /** An id of MusicXML's list of sounds: `pluck.guitar`. */
  readonly musicXmlSound: string;
  readonly tunings: readonly [TuningEntry, ...TuningEntry[]];
  readonly sources: readonly Source[];
  /** The fields that are from memory. */
  readonly recalled: readonly string[];
  readonly note?: string;
}

/** An instrument that is asked for and not served. */
export interface NotServedEntry {
  readonly id: string;
  readonly name: string;
  readonly aliases: readonly string[];
  /** Whole sentences, in plain words. */
  readonly reason: string;
  readonly sources: readonly Source[];
  /** True where the reason is from memory. */
  readonly isRecalled: boolean;
}

/** Everything that the data files say, joined to the universe of modes. */
export interface Catalogue {
  /** In core's order: the index is `mode.index`. */
  readonly modes: readonly ModeEntry[];
  /** Those with a trade name first, in a musical order; then the rest, the simplest heads first. */
  readonly families: readonly FamilyEntry[];
  /** By kind. */
  readonly instruments: readonly InstrumentEntry[];
  readonly notServed: readonly NotServedEntry[];
  readonly sources: readonly Source[];
  readonly conflicts: readonly Conflict[];
}
