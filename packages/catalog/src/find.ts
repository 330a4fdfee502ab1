/**
 * Finding a mode, a family or an instrument by what somebody typed. Every key is in a map that is built
 * once; what is not in it is not found.
 */
import { CATALOGUE } from './catalogue.ts';
import type { FamilyEntry, InstrumentEntry, ModeEntry, NotServedEntry } from './entries.ts';
import { instrumentKey, LONGEST_NAME, modeKey } from './name-key.ts';

const MODES: ReadonlyMap<string, ModeEntry> = firstByKey(
  [
    ...CATALOGUE.modes.map((entry) => [entry.mode.id, entry] as const),
    ...CATALOGUE.modes.flatMap((entry) => [[entry.name, entry] as const, [entry.slug, entry] as const]),
    ...CATALOGUE.modes.map((entry) => [entry.mode.systematicName, entry] as const),
    ...CATALOGUE.modes.flatMap((entry) => entry.aliases.map((alias) => [alias, entry] as const)),
  ],
  modeKey,
);

const FAMILIES: ReadonlyMap<string, FamilyEntry> = firstByKey(
  [
    ...CATALOGUE.families.flatMap((entry) => entry.modes.map(({ mode }) => [mode.id, entry] as const)),
    ...CATALOGUE.families.flatMap((entry) => [[entry.name, entry] as const, [entry.slug, entry] as const]),
    ...CATALOGUE.families.flatMap((entry) => entry.aliases.map((alias) => [alias, entry] as const)),
  ],
  modeKey,
);

/** As addresses write them: most of those who ask take an address that they were given. */
const MODES_BY_SLUG: ReadonlyMap<string, ModeEntry> = new Map(CATALOGUE.modes.map((one) => [one.slug, one]));

const FAMILIES_BY_SLUG: ReadonlyMap<string, FamilyEntry> = new Map(
  CATALOGUE.families.map((one) => [one.slug, one]),
);

const INSTRUMENTS = instrumentsByKey(CATALOGUE.instruments);

const NOT_SERVED = instrumentsByKey(CATALOGUE.notServed);

/**
 * The mode of this steps id, slug, displayed name, systematic name or alias. Case, spaces, hyphens and the
 * way accidentals are written do not count. A name of several modes means the one that displays it, else
 * the first in the catalogue's order.
 * @example findMode('dorian ♯4')?.mode.id   // '2131212'
 * @example findMode('dorian-s4')?.mode.id   // '2131212'
 */
export function findMode(text: string): ModeEntry | undefined {
  const known = MODES_BY_SLUG.get(text);
  return known || text.length > LONGEST_NAME ? known : MODES.get(modeKey(text));
}

/**
 * The family of this id, of any of its modes' steps, of this slug, name or alias.
 * @example findFamily('harmonic minor')?.id // '3121221'
 */
export function findFamily(text: string): FamilyEntry | undefined {
  const known = FAMILIES_BY_SLUG.get(text);
  return known || text.length > LONGEST_NAME ? known : FAMILIES.get(modeKey(text));
}

/**
 * The instrument of this id, name or alias.
 * @example findInstrument('Bass guitar')?.id // 'bass-4'
 */
export function findInstrument(text: string): InstrumentEntry | undefined {
  return text.length > LONGEST_NAME ? undefined : INSTRUMENTS.get(instrumentKey(text));
}

/**
 * The instrument of this id, name or alias that is not served: its `reason` says why.
 * @example findNotServed('saz')?.name // 'bağlama'
 */
export function findNotServed(text: string): NotServedEntry | undefined {
  return text.length > LONGEST_NAME ? undefined : NOT_SERVED.get(instrumentKey(text));
}

function instrumentsByKey<T extends Pick<NotServedEntry, 'id' | 'name' | 'aliases'>>(
  entries: readonly T[],
): ReadonlyMap<string, T> {
  return firstByKey(
    [
      ...entries.map((entry) => [entry.id, entry] as const),
      ...entries.map((entry) => [entry.name, entry] as const),
      ...entries.flatMap((entry) => entry.aliases.map((alias) => [alias, entry] as const)),
    ],
    instrumentKey,
  );
}

/** A map in which the first entry of a key stays. */
function firstByKey<T>(
  pairs: readonly (readonly [string, T])[],
  keyOf: (text: string) => string,
): ReadonlyMap<string, T> {
  return new Map(pairs.toReversed().map(([text, entry]) => [keyOf(text), entry]));
}
