/**
 * The catalogue that everybody shares, read once from the project's own data folder.
 */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { invariant, type Mode } from '@stillroot/core';
import type { Catalogue, FamilyEntry, ModeEntry } from './entries.ts';
import { loadCatalogue } from './load.ts';

/** The project's catalogue. */
export const CATALOGUE: Catalogue = loadCatalogue(findDataFolder(fileURLToPath(import.meta.url)));

const FAMILIES_BY_ID: ReadonlyMap<string, FamilyEntry> = new Map(
  CATALOGUE.families.map((entry) => [entry.id, entry]),
);

/** The entry of a mode. */
export function modeEntryOf(mode: Mode): ModeEntry {
  const entry = CATALOGUE.modes[mode.index];
  invariant(entry !== undefined, `mode ${mode.id} is in the catalogue`);
  return entry;
}

/** The entry of the family that a mode belongs to. */
export function familyEntryOf(mode: Mode): FamilyEntry {
  const entry = FAMILIES_BY_ID.get(mode.familyId);
  invariant(entry !== undefined, `family ${mode.familyId} is in the catalogue`);
  return entry;
}

/**
 * How well known a mode is: 2 for the modes of the families that every player knows (major, harmonic and
 * melodic minor), 1 for others with a trade name, 0 for the rest. Lists are ranked by it.
 */
export function modePreference(mode: Mode): number {
  if (familyEntryOf(mode).isEveryday) return 2;
  return modeEntryOf(mode).isTradeNamed ? 1 : 0;
}

/** Looked for upwards, since a bundler may have moved this code to another folder of the project. */
function findDataFolder(from: string): string {
  const folder = join(dirname(from), 'data');
  if (existsSync(join(folder, 'sources.json'))) return folder;
  invariant(dirname(from) !== from, 'a folder "data" with sources.json lies above the catalogue');
  return findDataFolder(dirname(from));
}
