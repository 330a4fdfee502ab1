/**
 * Suggestions for a name that is not found: the nearest by edit distance.
 */
import { distance } from 'fastest-levenshtein';
import { CATALOGUE, modePreference } from './catalogue.ts';
import type { FamilyEntry, InstrumentEntry, ModeEntry } from './entries.ts';
import { instrumentKey, LONGEST_NAME, modeKey } from './name-key.ts';

/** An entry and every key it can be reached by. */
interface Candidate<T> {
  readonly entry: T;
  readonly keys: readonly string[];
  /** Among equally near ones, the higher comes first. */
  readonly preference: number;
}

/** Fewer letters begin too many names. */
const SHORTEST_BEGINNING = 3;

const MODES: readonly Candidate<ModeEntry>[] = CATALOGUE.modes.map((entry) => ({
  entry,
  keys: keysOf([entry.name, entry.slug, entry.mode.id, ...entry.aliases], modeKey),
  preference: modePreference(entry.mode),
}));

const FAMILIES: readonly Candidate<FamilyEntry>[] = CATALOGUE.families.map((entry) => ({
  entry,
  keys: keysOf([entry.name, entry.slug, entry.id, ...entry.aliases], modeKey),
  preference: entry.isTradeNamed ? 1 : 0,
}));

const INSTRUMENTS: readonly Candidate<InstrumentEntry>[] = CATALOGUE.instruments.map((entry) => ({
  entry,
  keys: keysOf([entry.id, entry.name, ...entry.aliases], instrumentKey),
  preference: 0,
}));

/**
 * The modes whose name, alias, slug or id is nearest to the text, nearest first. Text longer than a name
 * is cut first; only what is empty has no suggestions.
 * @example suggestModes('dorain')[0]?.name // 'Dorian'
 */
export function suggestModes(text: string, limit = 5): readonly ModeEntry[] {
  return nearest(modeKey(text.slice(0, LONGEST_NAME)), MODES, limit);
}

/** The families nearest to the text; see {@link suggestModes}. */
export function suggestFamilies(text: string, limit = 5): readonly FamilyEntry[] {
  return nearest(modeKey(text.slice(0, LONGEST_NAME)), FAMILIES, limit);
}

/** The instruments nearest to the text; see {@link suggestModes}. */
export function suggestInstruments(text: string, limit = 5): readonly InstrumentEntry[] {
  return nearest(instrumentKey(text.slice(0, LONGEST_NAME)), INSTRUMENTS, limit);
}

function nearest<T>(key: string, candidates: readonly Candidate<T>[], limit: number): readonly T[] {
  if (key === '') return [];
  return candidates
    .map(({ entry, keys, preference }) => {
      const edits = Math.min(...keys.map((one) => distance(key, one)));
      const isPart = keys.some((one) => isBeginning(one, key) || isBeginning(key, one));
      return { entry, preference, edits, nearness: isPart ? Math.min(edits, 1) : edits };
    })
    .toSorted((a, b) => a.nearness - b.nearness || a.edits - b.edits || b.preference - a.preference)
    .slice(0, limit)
    .map(({ entry }) => entry);
}

/** A name begun, or a name with a tail, is as near as one with a single slip. */
function isBeginning(part: string, whole: string): boolean {
  return part.length >= SHORTEST_BEGINNING && whole.startsWith(part);
}

function keysOf(names: readonly string[], keyOf: (name: string) => string): readonly string[] {
  return [...new Set(names.map(keyOf))];
}
