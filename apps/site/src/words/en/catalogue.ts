/**
 * What the catalogue says in sentences. English is as it stands there, so that only other languages have more;
 * each by its id.
 */

/** Notes about instruments. */
export const INSTRUMENT_NOTES: ReadonlyMap<string, string> = new Map();

/** Notes about tunings: `guitar-6/all-fifths`. */
export const TUNING_NOTES: ReadonlyMap<string, string> = new Map();

/** Who gives a name to a mode that another has as well: `Todi/1231131`. */
export const CONFLICT_USES: ReadonlyMap<string, string> = new Map();

/** What is to be said about a name that is given twice. */
export const CONFLICT_NOTES: ReadonlyMap<string, string> = new Map();

/** Notes about families, by their slugs. */
export const FAMILY_NOTES: ReadonlyMap<string, string> = new Map();

/** Sources without a published title; those that have one keep it. */
export const SOURCES: ReadonlyMap<string, string> = new Map();

/** Instruments that are not served, and why. */
export const NOT_SERVED: ReadonlyMap<string, { readonly name: string; readonly reason: string }> = new Map();

/** When a source appeared, where that is no number. */
export function yearWords(year: string): string {
  return year;
}

/** The tradition of a name: `Carnatic mela 14`. */
export function traditionWords(tradition: string): string {
  return tradition;
}
