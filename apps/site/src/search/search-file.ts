/**
 * The index of the search as it is stored: all names, nothing that core can work out.
 */

/** What `/data/search.json` holds. */
export interface SearchFile {
  /** In core's order: the index is `mode.index`. */
  readonly modes: readonly StoredMode[];
  readonly families: readonly StoredFamily[];
  readonly instruments: readonly StoredInstrument[];
}

/** A mode: how well known it is (2, 1 or 0), its slug, the name to display, then its other names. */
export type StoredMode = readonly [preference: number, slug: string, name: string, ...aliases: string[]];

/** A family: the index of its head among the modes, its slug, its name, then its other names. */
export type StoredFamily = readonly [head: number, slug: string, name: string, ...aliases: string[]];

/** An instrument: its English names, the displayed one first, its tunings, and its names in another language. */
export type StoredInstrument = readonly [
  id: string,
  names: readonly string[],
  tunings: readonly StoredTuning[],
  ownNames?: readonly string[],
];

/** A tuning: its id, its name, its open strings low to high, then what else it is called with its instrument. */
export type StoredTuning = readonly [id: string, name: string, openStrings: string, ...others: string[]];
