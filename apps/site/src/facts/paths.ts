/**
 * Addresses of the site's pages and of the API's pictures.
 */
import type { Root } from '@stillroot/core';
import { LANGUAGE } from '../words/language.ts';
import { LANGUAGES } from '../words/languages.ts';

/** The round of the front page, where its address names no other: a family and a root. */
export const HOME_ROUND = { family: 'harmonic-minor', root: 'a' } as const;

/** The names of compared modes in an address. */
export const COMPARE_KEYS = ['a', 'b', 'c', 'd'] as const;

const BASE = LANGUAGES.find(({ code }) => code === LANGUAGE)?.base ?? '/';

/** A page of the edition that is being built: `/modes/` is `/de/modes/` in German. */
export function pagePath(path: string): string {
  return `${BASE}${path.slice(1)}`;
}

/** Where other sites learn how to show a page in a frame (oEmbed); undefined for pages that are not made for it. */
export function oembedPath(path: string, address: string): string | undefined {
  const isFramed = /^\/(?:modes|rounds)\/[^/]+\/[^/]+\/$/.test(path);
  return isFramed ? `/oembed?url=${encodeURIComponent(address)}` : undefined;
}

/** The page of a mode, without a root. */
export function modePath(modeSlug: string): string {
  return pagePath(`/modes/${modeSlug}/`);
}

/** The page of a mode on a root, which is there in English only. */
export function scalePath(modeSlug: string, root: Root): string {
  return `/modes/${modeSlug}/${root.slug}/`;
}

/** The page of a family. */
export function familyPath(familySlug: string): string {
  return pagePath(`/families/${familySlug}/`);
}

/** The page of a family's round on a root, which is there in English only. */
export function roundPath(familySlug: string, root: Root): string {
  return `/rounds/${familySlug}/${root.slug}/`;
}

/** The page of an instrument. */
export function instrumentPath(instrumentId: string): string {
  return pagePath(`/instruments/${instrumentId}/`);
}

/** The page that compares any scales, with two to four modes and perhaps a root chosen. */
export function comparePath(modeSlugs: readonly string[] = [], root?: Root): string {
  const chosen = modeSlugs.map((slug, at) => `${COMPARE_KEYS[at] ?? ''}=${slug}`);
  return withQuery(pagePath('/compare/'), root ? [...chosen, `root=${root.slug}`] : chosen);
}

/** The page of one comparison. */
export function comparePairPath(pairSlug: string): string {
  return pagePath(`/compare/${pairSlug}/`);
}

/** The page that finds a route between any two modes, with both and perhaps a root chosen. */
export function routePath(fromSlug?: string, toSlug?: string, root?: Root): string {
  const chosen = { from: fromSlug, to: toSlug, root: root?.slug };
  return withQuery(
    pagePath('/routes/'),
    Object.entries(chosen).flatMap(([key, value]) => (value === undefined ? [] : [`${key}=${value}`])),
  );
}

/** The page of one route. */
export function routePairPath(pairSlug: string): string {
  return pagePath(`/routes/${pairSlug}/`);
}

/** The map, at a mode. */
export function mapPath(modeId?: string): string {
  return pagePath(modeId === undefined ? '/map/' : `/map/#${modeId}`);
}

/** The search, perhaps for something. */
export function searchPath(text?: string): string {
  return pagePath(text === undefined ? '/search/' : `/search/?q=${encodeURIComponent(text)}`);
}

/** The picture that stands beside links to pages of a family; the same in every language. */
export function socialPicture(familySlug: string): string {
  return `/pictures/${familySlug}.png`;
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

function withQuery(path: string, parts: readonly string[]): string {
  return parts.length > 0 ? `${path}?${parts.join('&')}` : path;
}
