/**
 * How modes are named and linked wherever they are drawn, on the server and in the browser alike.
 */
import { EVERYDAY_ROOTS, type Mode, ROOTS_BY_PITCH_CLASS, type Root, type Scale } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { scalePath } from '../facts/paths.ts';
import { scaleOn } from '../words/names.ts';
import { hreflang } from './english.ts';

/** A mode's name and its slug. */
export interface ModeName {
  readonly slug: string;
  /** ASCII accidentals. */
  readonly name: string;
}

/** Where names come from: the catalogue, or its plain form in the browser. */
export type NameOf = (mode: Mode) => ModeName;

/** A scale's name with proper signs: `A Dorian ♯4`. */
export function scaleName(root: Root, name: string): string {
  return scaleOn(root.name, name);
}

/** The root among the 17 that have pages which sounds like this one. */
export function pageRoot(root: Root): Root {
  if (EVERYDAY_ROOTS.includes(root)) return root;
  return ROOTS_BY_PITCH_CLASS[root.pitchClass]?.find((twin) => EVERYDAY_ROOTS.includes(twin)) ?? root;
}

/** A link to a scale's page. */
export function scaleLink({ mode, root }: Pick<Scale, 'mode' | 'root'>, nameOf: NameOf): string {
  const { slug, name } = nameOf(mode);
  const here = pageRoot(root);
  const path = scalePath(slug, here);
  return `<a href="${path}"${hreflang(path)}>${escapeXml(scaleName(here, name))}</a>`;
}
