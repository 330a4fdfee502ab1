/**
 * Pages: parts of long lists, and the addresses of the parts around them.
 */
import type { Address } from './address.ts';

/** Which part of a list is asked for. */
export interface Span {
  readonly limit: number;
  readonly offset: number;
}

/** Where a part lies in its list. */
export interface Page {
  readonly offset: number;
  readonly next: string | null;
  readonly previous: string | null;
}

/** The part of a list that is asked for. */
export function partOf<T>(items: readonly T[], { limit, offset }: Span): readonly T[] {
  return items.slice(offset, offset + limit);
}

/** Where a part of a list of so many lies in it. */
export function pageOf(address: Address, total: number, { limit, offset }: Span): Page {
  return {
    offset,
    next: offset + limit < total ? addressAt(address, offset + limit) : null,
    previous: offset > 0 ? addressAt(address, Math.max(0, offset - limit)) : null,
  };
}

/** The header `Link` (RFC 8288) of an answer that is a page; undefined where it is none. */
export function linkHeader(answer: unknown): string | undefined {
  const { next, previous } = answer as Partial<Page>;
  const links = [
    ...(typeof next === 'string' ? [`<${next}>; rel="next"`] : []),
    ...(typeof previous === 'string' ? [`<${previous}>; rel="prev"`] : []),
  ];
  return links.length === 0 ? undefined : links.join(', ');
}

function addressAt({ path, query }: Address, offset: number): string {
  const kept = Object.entries(query).filter(
    (entry): entry is [string, string] => typeof entry[1] === 'string' && entry[0] !== 'offset',
  );
  const search = new URLSearchParams(kept);
  if (offset > 0) search.set('offset', String(offset));
  const text = search.toString();
  return text === '' ? path : `${path}?${text}`;
}
