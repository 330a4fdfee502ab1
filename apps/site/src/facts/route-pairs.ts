/**
 * The routes that have a page of their own.
 */
import { findMode, type ModeEntry } from '@stillroot/catalog';
import { invariant } from '@stillroot/core';

/** Two modes and the route between them. */
export interface RoutePair {
  /** Its address within the routes. */
  readonly slug: string;
  readonly from: ModeEntry;
  readonly to: ModeEntry;
}

/** Through the church modes, from the best known scales to one another, and to far ones. */
const NAMES: readonly (readonly [from: string, to: string])[] = [
  ['Lydian', 'Locrian'],
  ['Ionian', 'Aeolian'],
  ['Aeolian', 'harmonic minor'],
  ['Ionian', 'harmonic major'],
  ['Ionian', 'melodic minor'],
  ['Dorian', 'Phrygian dominant'],
  ['Mixolydian', 'altered'],
  ['harmonic minor', 'double harmonic major'],
  ['Aeolian', 'Hungarian minor'],
  ['Lydian dominant', 'Locrian nat2'],
  ['Phrygian', 'Neapolitan major'],
  ['Ionian', 'Enigmatic'],
];

/** All of them. */
export const ROUTE_PAIRS: readonly RoutePair[] = NAMES.map(([fromName, toName]) => {
  const from = entryOf(fromName);
  const to = entryOf(toName);
  return { slug: `${from.slug}-to-${to.slug}`, from, to };
});

function entryOf(name: string): ModeEntry {
  const entry = findMode(name);
  invariant(entry !== undefined, `${name} is a mode`);
  return entry;
}
