/**
 * From a mode to its comparison with its base, to the route that leads to it, and to its place on the map.
 */
import { findMode, type ModeEntry, modeEntryOf } from '@stillroot/catalog';
import { invariant, type Root } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { baseModeOf } from '../facts/base-mode.ts';
import { pathToCompare } from '../facts/compare-pairs.ts';
import { mapPath, routePath } from '../facts/paths.ts';
import { modeName } from '../words/names.ts';
import { WAYS } from '../words/ways.ts';

const IONIAN: ModeEntry = ionian();

/** Links in one line. */
export function waysHtml(entry: ModeEntry, root?: Root): string {
  const base = modeEntryOf(baseModeOf(entry.mode));
  const links = [
    ...(base === entry
      ? []
      : [[pathToCompare(base, entry, root), `${WAYS.compareWith} ${modeName(base.name)}`] as const]),
    ...(IONIAN === entry
      ? []
      : [[routePath(IONIAN.slug, entry.slug, root), `${WAYS.routeFrom} ${modeName(IONIAN.name)}`] as const]),
    [mapPath(entry.mode.id), WAYS.onMap] as const,
  ];
  return `<p class="ways screen">${links.map(([path, text]) => `<a href="${escapeXml(path)}">${text}</a>`).join(' · ')}</p>`;
}

function ionian(): ModeEntry {
  const entry = findMode('Ionian');
  invariant(entry !== undefined, 'Ionian is a mode');
  return entry;
}
