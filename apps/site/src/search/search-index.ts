/**
 * The index of the search, made ready from what is stored.
 */
import { invariant, type Mode, UNIVERSE } from '@stillroot/core';
import { withoutAccidentalWords } from '../words/note-reading.ts';
import { type Named, named } from './names.ts';
import type { SearchFile, StoredFamily, StoredInstrument, StoredTuning } from './search-file.ts';

/** The index, made ready. */
export interface SearchIndex {
  readonly file: SearchFile;
  readonly modes: readonly Named<Mode>[];
  readonly families: readonly Named<StoredFamily>[];
  readonly instruments: readonly Named<InstrumentHit>[];
}

/** An instrument, or one of its tunings. */
export interface InstrumentHit {
  readonly instrument: StoredInstrument;
  readonly tuning: StoredTuning | undefined;
}

/** Makes a stored index ready. */
export function readyIndex(file: SearchFile): SearchIndex {
  return {
    file,
    modes: file.modes.map(([preference, slug, ...names], at) => {
      const mode = UNIVERSE.modes[at];
      invariant(mode !== undefined, `mode ${slug} is in the universe`);
      return named(mode, names, preference);
    }),
    families: file.families.map((family) => named(family, family.slice(2).map(String))),
    instruments: file.instruments.flatMap((instrument) => {
      const [, names, tunings, ownNames = []] = instrument;
      return [
        named<InstrumentHit>({ instrument, tuning: undefined }, [...names, ...ownNames], 1),
        ...tunings.map((tuning) =>
          named<InstrumentHit>({ instrument, tuning }, tuningNames(tuning, instrument)),
        ),
      ];
    }),
  };
}

/** A tuning's name with that of its instrument, in every language, and its open strings. */
function tuningNames(
  [, name, openStrings, ...others]: StoredTuning,
  [, [instrument = ''], , ownNames]: StoredInstrument,
): readonly string[] {
  const own = ownNames?.[0];
  const known = [`${name} ${instrument}`, openStrings, ...others];
  return own === undefined ? known : [...known, `${withoutAccidentalWords(name)} ${own}`];
}

/** How well known a mode is: 2 for the everyday families, 1 for others with a trade name, 0 for the rest. */
export function preferenceOf({ file }: SearchIndex, mode: Mode): number {
  return file.modes[mode.index]?.[0] ?? 0;
}
