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
  NotServedEntry,
  Source,
  SourcedName,
  TuningEntry,
} from './entries.ts';
export { findFamily, findInstrument, findMode, findNotServed } from './find.ts';
export { INSTRUMENT_KINDS, type InstrumentKind, KIND_NAMES } from './instrument-kind.ts';
export { type FoundInstrument, type InstrumentSearch, searchInstruments } from './instrument-search.ts';
export { loadCatalogue } from './load.ts';
export { plainCatalogue, plainInstrument } from './plain.ts';
export type {
  PlainCatalogue,
  PlainFamily,
  PlainInstrument,
  PlainMode,
  PlainTuning,
} from './plain-types.ts';
export { type RecognisedTuning, recogniseTuning } from './recognise-tuning.ts';
export { type ModeSearch, searchModes } from './search.ts';
export { slugOf } from './slug.ts';
export { suggestFamilies, suggestInstruments, suggestModes } from './suggest.ts';
