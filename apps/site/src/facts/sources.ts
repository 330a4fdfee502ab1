/**
 * Sources as they are cited on pages.
 */
import type { Source } from '@stillroot/catalog';
import { SOURCES, yearWords } from '../words/catalogue.ts';
import { FROM_MEMORY } from '../words/sentences.ts';

/** `Author, Title (year)`, said to be from memory where it is. */
export function citation({ id, author, title, year, isRecalled }: Source, nameIsRecalled = false): string {
  const who = author === '' || title.startsWith(author) ? '' : `${author}, `;
  const when = year === '' ? '' : ` (${yearWords(year)})`;
  return `${SOURCES.get(id) ?? who + title}${when}${isRecalled || nameIsRecalled ? FROM_MEMORY : ''}`;
}
