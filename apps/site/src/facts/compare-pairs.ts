/**
 * The comparisons that have a page of their own: the church modes with one another, and every other mode
 * that has a trade name with the church mode it is read from.
 */
import { CATALOGUE, type ModeEntry, modeEntryOf } from '@stillroot/catalog';
import type { Root } from '@stillroot/core';
import { baseModeOf } from './base-mode.ts';
import { CHURCH_ENTRIES } from './church-modes.ts';
import { EXAMPLE_ROOT } from './mode-page.ts';
import { comparePairPath, comparePath } from './paths.ts';

/** Two modes compared on a page. */
export interface ComparePair {
  /** Its address within the comparisons. */
  readonly slug: string;
  readonly first: ModeEntry;
  readonly second: ModeEntry;
}

const churchPairs: readonly ComparePair[] = CHURCH_ENTRIES.flatMap((first, at) =>
  CHURCH_ENTRIES.slice(at + 1).map((second) => pairOf(first, second)),
);

/** Modes with a trade name that are not church modes, each after its base. */
export const BASE_PAIRS: readonly ComparePair[] = CATALOGUE.modes
  .filter(({ mode, isTradeNamed }) => isTradeNamed && mode.base.moved.length > 0)
  .map((entry) => pairOf(modeEntryOf(baseModeOf(entry.mode)), entry))
  .toSorted((a, b) => CHURCH_ENTRIES.indexOf(a.first) - CHURCH_ENTRIES.indexOf(b.first));

/** All of them. */
export const COMPARE_PAIRS: readonly ComparePair[] = [...churchPairs, ...BASE_PAIRS];

const pages: ReadonlyMap<string, string> = new Map(
  COMPARE_PAIRS.flatMap(({ slug, first, second }) => {
    const path = comparePairPath(slug);
    return [
      [`${first.slug} ${second.slug}`, path],
      [`${second.slug} ${first.slug}`, path],
    ];
  }),
);

/**
 * Where two modes are compared: their own page if they have one, else the page that compares any.
 * @param root the pages' own where absent
 */
export function pathToCompare(first: ModeEntry, second: ModeEntry, root?: Root): string {
  const page = pages.get(`${first.slug} ${second.slug}`);
  if (page === undefined) return comparePath([first.slug, second.slug], root);
  return root === undefined || root === EXAMPLE_ROOT ? page : `${page}?root=${root.slug}`;
}

function pairOf(first: ModeEntry, second: ModeEntry): ComparePair {
  return { slug: `${first.slug}-and-${second.slug}`, first, second };
}
