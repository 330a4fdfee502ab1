/**
 * Catalog: the names, instruments and tunings of `data`, checked and joined to core's universe of modes.
 * Reads files, so it runs in Node; pages carry {@link plainCatalogue} to the browser.
 */
export { CATALOGUE, familyEntryOf, modeEntryOf, modePreference } from './catalogue.ts';
export type {
  Catalogue,
  Clef,
  Conflict,
  ConflictUse,
  FamilyEntry,
  InstrumentEntry,
  ModeEntry,
  Source,
  SourcedName,
  TuningEntry,
} from './entries.ts';
export { findFamily, findInstrument, findMode } from './find.ts';
export { loadCatalogue } from './load.ts';
export { plainCatalogue, plainInstrument } from './plain.ts';
export type {
  PlainCatalogue,
  PlainFamily,
  PlainInstrument,
  PlainMode,
  PlainTuning,
} from './plain-types.ts';
export { type ModeSearch, searchModes } from './search.ts';
export { slugOf } from './slug.ts';
export { suggestFamilies, suggestInstruments, suggestModes } from './suggest.ts';
