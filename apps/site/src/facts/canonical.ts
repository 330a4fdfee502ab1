/**
 * Which page stands for a scale that can be written from two roots: the one that is kinder to read.
 */
import { findMode, modeEntryOf } from '@stillroot/catalog';
import { EVERYDAY_ROOTS, kindestRoot, type Mode, parseRoot, type Root } from '@stillroot/core';
import { isFrame } from './editions.ts';
import { scalePath } from './paths.ts';

/**
 * The root whose page is a scale's canonical one: its kindest twin where that has a page (the 17 everyday
 * roots have), else the root itself.
 */
export function canonicalRoot(mode: Mode, root: Root): Root {
  const kindest = kindestRoot(mode, root);
  return EVERYDAY_ROOTS.includes(kindest) ? kindest : root;
}

/** Whether a sitemap lists a page: not the twin of a kinder one, nor a frame for another site. */
export function isListed(path: string): boolean {
  return isItsOwnCanonical(path) && !isFrame(path);
}

/** Whether a page of the site is not the twin of a kinder one. */
export function isItsOwnCanonical(path: string): boolean {
  const [, room, modeSlug, rootSlug] = path.split('/');
  if (room !== 'modes' || !modeSlug || !rootSlug) return true;
  const entry = findMode(modeSlug);
  const root = parseRoot(rootSlug);
  return !entry || !root.ok || canonicalRoot(entry.mode, root.value) === root.value;
}

/** The address of a scale's canonical page. */
export function canonicalPath(mode: Mode, root: Root): string {
  return scalePath(modeEntryOf(mode).slug, canonicalRoot(mode, root));
}
