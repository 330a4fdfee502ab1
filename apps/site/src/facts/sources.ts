/**
 * Sources as they are cited on pages.
 */
import type { Source } from '@stillroot/catalog';
import { FROM_MEMORY } from '../words/sentences.ts';

/** `Author, Title (year)`, said to be from memory where it is. */
export function citation({ author, title, year, isRecalled }: Source, nameIsRecalled = false): string {
  const who = author === '' || title.startsWith(author) ? '' : `${author}, `;
  const when = year === '' ? '' : ` (${year})`;
  return `${who}${title}${when}${isRecalled || nameIsRecalled ? FROM_MEMORY : ''}`;
}
