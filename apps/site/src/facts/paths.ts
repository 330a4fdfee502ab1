/**
 * Addresses of the site's pages and of the API's pictures.
 */
import type { Root } from '@stillroot/core';

/** The page of a mode, without a root. */
export function modePath(modeSlug: string): string {
  return `/modes/${modeSlug}/`;
}

/** The page of a mode on a root. */
export function scalePath(modeSlug: string, root: Root): string {
  return `/modes/${modeSlug}/${root.slug}/`;
}

/** The page of a family. */
export function familyPath(familySlug: string): string {
  return `/families/${familySlug}/`;
}

/** The page of a family's round on a root. */
export function roundPath(familySlug: string, root: Root): string {
  return `/rounds/${familySlug}/${root.slug}/`;
}

/** The page of an instrument. */
export function instrumentPath(instrumentId: string): string {
  return `/instruments/${instrumentId}/`;
}

/** The API's picture of a scale on the whole neck of an instrument. */
export function fretboardPicture(modeSlug: string, root: Root, instrumentId: string): string {
  return `/v1/modes/${modeSlug}/${apiRoot(root)}/fretboard.svg?instrument=${instrumentId}`;
}

/** The API's picture of a round on an instrument. */
export function roundPicture(familySlug: string, root: Root, instrumentId: string): string {
  return `/v1/rounds/${familySlug}/${apiRoot(root)}.svg?instrument=${instrumentId}`;
}

/** A root as the API's addresses write it: `Fs` for F sharp. */
function apiRoot(root: Root): string {
  return root.name.replace('#', 's');
}
