/**
 * What can be said of an instrument and of each of its tunings, gathered once to be searched.
 */
import { formatMidi, type Pitch } from '@stillroot/core';
import type { InstrumentEntry, TuningEntry } from './entries.ts';
import { KIND_NAMES } from './instrument-kind.ts';
import { termsOf } from './instrument-terms.ts';
import { instrumentKey, plainLetters } from './name-key.ts';

/** What a thing is called. */
export interface Sayings {
  /** The keys of its whole names. */
  readonly keys: ReadonlySet<string>;
  readonly words: readonly string[];
}

/** What is said of a tuning. */
export interface TuningSayings extends Sayings {
  readonly tuning: TuningEntry;
  /** Its open strings as they are written, with sharps alone, and with flats alone: `ebabdbgbbbeb`. */
  readonly letters: readonly string[];
}

/** What is said of an instrument. */
export interface InstrumentSayings extends Sayings {
  readonly instrument: InstrumentEntry;
  readonly courses: number;
  /** All strings of all courses. */
  readonly strings: number;
  /** Words for its kind, which it shares with others. */
  readonly kindWords: readonly string[];
  readonly tunings: readonly TuningSayings[];
}

/** Everything that is said of an instrument. */
export function sayingsOf(instrument: InstrumentEntry): InstrumentSayings {
  const { id, name, aliases, kind, tunings } = instrument;
  const [standard] = tunings;
  return {
    instrument,
    courses: standard.courses.length,
    strings: standard.courses.flat().length,
    keys: keysOf([id, name, ...aliases]),
    words: wordsOf([id, name, ...aliases]),
    kindWords: wordsOf([kind, KIND_NAMES[kind]]),
    tunings: tunings.map((tuning) => sayingsOfTuning(tuning, wordsOf([name]))),
  };
}

/** A tuning whose name repeats that of its instrument (`lute tuning on guitar`) says nothing by it. */
function sayingsOfTuning(tuning: TuningEntry, nameOfInstrument: readonly string[]): TuningSayings {
  const open = tuning.courses.map(([principal]) => principal);
  const byPitch = open.toSorted((a, b) => a.midi - b.midi);
  const ofName = wordsOf([tuning.name]).filter((word) => !nameOfInstrument.includes(word));
  const lowest = spellings(byPitch.slice(0, 1)).map((note) => `low-${note}`);
  const highest = spellings(byPitch.slice(-1)).map((note) => `high-${note}`);
  return {
    tuning,
    letters: spellings(open),
    keys: keysOf([tuning.id, tuning.name]),
    words: [...new Set([...wordsOf([tuning.id]), ...ofName, ...lowest, ...highest])],
  };
}

function keysOf(names: readonly string[]): ReadonlySet<string> {
  return new Set(names.map(instrumentKey));
}

function wordsOf(names: readonly string[]): readonly string[] {
  const words = names.flatMap(termsOf).flatMap((term) => {
    if (term.says === 'count') return [];
    return [term.says === 'notes' ? term.letters : term.word];
  });
  return [...new Set(words)];
}

/** Notes without octaves, joined: as written, with sharps alone, with flats alone. */
function spellings(pitches: readonly Pitch[]): readonly string[] {
  const ways = [
    pitches.map(({ name }) => name),
    pitches.map(({ midi }) => formatMidi(midi, true)),
    pitches.map(({ midi }) => formatMidi(midi)),
  ];
  return [...new Set(ways.map((names) => plainLetters(names.join('')).replace(/-?\d/g, '')))];
}
