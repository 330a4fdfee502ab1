/**
 * The index of the search in the browser, fetched once and only when it is needed.
 */
import { pagePath } from '../facts/paths.ts';
import type { SearchFile } from '../search/search-file.ts';
import { readyIndex, type SearchIndex } from '../search/search-index.ts';

let index: Promise<SearchIndex> | undefined;

/** The index; rejects where it cannot be fetched, and may then be asked for again. */
export function fetchSearchIndex(): Promise<SearchIndex> {
  index ??= load().catch((error: unknown) => {
    index = undefined;
    throw error;
  });
  return index;
}

async function load(): Promise<SearchIndex> {
  const answer = await fetch(pagePath('/data/search.json'));
  if (!answer.ok) throw new Error(`the index of the search answered ${answer.status}`);
  return readyIndex((await answer.json()) as SearchFile);
}
