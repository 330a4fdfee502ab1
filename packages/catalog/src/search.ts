/**
 * Searching modes by a part of a name and by degrees they must have.
 */
import { pitchClassOf, toAscii } from '@stillroot/core';
import { distance } from 'fastest-levenshtein';
import { CATALOGUE, modePreference } from './catalogue.ts';
import type { ModeEntry } from './entries.ts';
import { LONGEST_NAME, modeKey } from './name-key.ts';

/** What is searched for; everything given must hold. */
export interface ModeSearch {
  /** A part of a name or alias, or something near a whole one. */
  readonly name?: string;
  /**
   * What the mode must have: numbers are semitones above the root whatever their degree, strings are
   * degrees as formulas write them (`b3`, `#4`, `bb7`, `5`).
   */
  readonly contains?: readonly (number | string)[];
  /** At most so many; 20 where absent. */
  readonly limit?: number;
}

const KEYS: readonly { readonly entry: ModeEntry; readonly keys: readonly [string, ...string[]] }[] =
  CATALOGUE.modes.map((entry) => ({
    entry,
    keys: [modeKey(entry.name), ...entry.aliases.map(modeKey), entry.mode.id],
  }));

/** How a name can match, best first; a match farther off is a near one, counted by its edits. */
const NEAR = 5;

/**
 * The modes that fit, best first: by how the name matches, then by how well known the mode is, then by
 * the length of its name.
 * @example searchModes({ name: 'dominant', contains: ['b2'] })[0]?.name // 'Phrygian dominant'
 */
export function searchModes({ name, contains = [], limit = 20 }: ModeSearch): readonly ModeEntry[] {
  const key = modeKey((name ?? '').slice(0, LONGEST_NAME));
  // A name of nothing but separators is no name, yet something was asked for.
  if (name !== undefined && name.trim() !== '' && key === '') return [];
  return KEYS.map(({ entry, keys }) => ({ entry, rank: key === '' ? 0 : rankOf(key, keys) }))
    .filter(({ entry, rank }) => rank !== undefined && contains.every((wanted) => holds(entry, wanted)))
    .toSorted(
      (a, b) =>
        (a.rank ?? 0) - (b.rank ?? 0) ||
        modePreference(b.entry.mode) - modePreference(a.entry.mode) ||
        a.entry.name.length - b.entry.name.length ||
        a.entry.mode.index - b.entry.mode.index,
    )
    .slice(0, Math.max(0, limit))
    .map(({ entry }) => entry);
}

/** The displayed name comes first among the keys; equal, beginning and containing are told apart. */
function rankOf(key: string, keys: readonly [string, ...string[]]): number | undefined {
  const [displayed] = keys;
  if (keys.includes(key)) return displayed === key ? 0 : 1;
  if (displayed.startsWith(key)) return 1;
  if (keys.some((one) => one.startsWith(key))) return 2;
  if (displayed.includes(key)) return 3;
  if (keys.some((one) => one.includes(key))) return 4;
  const edits = Math.min(...keys.map((one) => distance(key, one)));
  return edits <= Math.floor(key.length / 4) ? NEAR + edits : undefined;
}

function holds({ mode }: ModeEntry, wanted: number | string): boolean {
  if (typeof wanted === 'number') return mode.semitones.includes(pitchClassOf(wanted));
  const degree = toAscii(wanted.slice(0, LONGEST_NAME).trim())
    .replace(/^nat/, '')
    .replace(/^s+/, (run) => '#'.repeat(run.length));
  return mode.formula.includes(degree);
}
