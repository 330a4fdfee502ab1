/**
 * Sources as they are cited on pages.
 */
import type { Source } from '@stillroot/catalog';

/** `Author, Title (year)`, said to be from memory where it is. */
export function citation({ author, title, year, isRecalled }: Source, nameIsRecalled = false): string {
  const who = author === '' || title.startsWith(author) ? '' : `${author}, `;
  const when = year === '' ? '' : ` (${year})`;
  return `${who}${title}${when}${isRecalled || nameIsRecalled ? ', from memory' : ''}`;
}
