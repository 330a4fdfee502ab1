/**
 * Titles that the server and the browser both write.
 */
import type { Root } from '@stillroot/core';
import { signs } from './signs.ts';

/** `The round of harmonic minor from A` */
export function roundTitle(familyName: string, root: Root): string {
  return `The round of ${signs(familyName)} from ${signs(root.name)}`;
}
