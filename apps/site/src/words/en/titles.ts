/**
 * Titles that the server and the browser both write. British English.
 */
import type { Root } from '@stillroot/core';
import { signs } from '../signs.ts';
import { modeName } from './names.ts';
import { joined } from './numbers.ts';

/** `The round of harmonic minor from A` */
export function roundTitle(familyName: string, root: Root): string {
  return `The round of ${modeName(familyName)} from ${signs(root.name)}`;
}

/** `Dorian, Phrygian and Locrian on A, compared` */
export function comparisonTitle(modeNames: readonly string[], root: Root): string {
  return `${joined(modeNames.map(modeName))} on ${signs(root.name)}, compared`;
}

/** `From Lydian to Locrian, one note at a time` */
export function routeTitle(fromName: string, toName: string): string {
  return `From ${modeName(fromName)} to ${modeName(toName)}, one note at a time`;
}
