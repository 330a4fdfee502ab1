/**
 * The groups that the trade sorts fretted instruments into, for lists.
 */

/** Every kind, in the order of lists. */
export const INSTRUMENT_KINDS = [
  'guitar',
  'bass',
  'ukulele',
  'mandolin',
  'bouzouki-cittern',
  'banjo',
  'latin-american',
  'bandurria',
  'balalaika-domra',
  'lute',
  'dulcimer',
  'pipa',
] as const;

/** A group of instruments. */
export type InstrumentKind = (typeof INSTRUMENT_KINDS)[number];

/** What to call a group, in the middle of a sentence. */
export const KIND_NAMES: Readonly<Record<InstrumentKind, string>> = {
  guitar: 'guitars',
  bass: 'basses',
  ukulele: 'ukuleles',
  mandolin: 'mandolin family',
  'bouzouki-cittern': 'bouzoukis and citterns',
  banjo: 'banjos',
  'latin-american': 'Latin American instruments',
  bandurria: 'bandurria family',
  'balalaika-domra': 'balalaikas and domras',
  lute: 'lutes and vihuelas',
  dulcimer: 'dulcimers',
  pipa: 'pipas',
};
