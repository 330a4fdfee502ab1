/**
 * Negotiation: which form and which coding of an answer a client prefers (RFC 9110, section 12.5).
 */
import { MEDIA_TYPES } from '@stillroot/contract';
import type { Form } from './address.ts';

/** How a body is packed. */
export type Coding = 'identity' | 'br' | 'gzip';

/** Clients send few different headers; what each means is worked out once. */
const MOST_REMEMBERED = 500;
const formsSeen = new Map<string, Form | null>();
const codingsSeen = new Map<string, Coding>();

/** The form that is liked best of those there are, the first of equals; null where none is allowed. */
export function formOf(accept: string | undefined, offered: readonly Form[]): Form | null {
  if (accept === undefined || accept === '*/*') return offered[0] as Form;
  return remembered(formsSeen, `${offered.join()} ${accept}`, () => {
    const ranges = weighted(accept);
    return best(offered, (form) => weightOf(typeOf(form), ranges)) ?? null;
  });
}

/** The coding that is liked best; brotli of equals. */
export function codingOf(acceptEncoding: string | undefined): Coding {
  if (acceptEncoding === undefined) return 'identity';
  return remembered(codingsSeen, acceptEncoding, () => {
    const weights = new Map(weighted(acceptEncoding));
    return (
      best(['br', 'gzip'] as const, (coding) => weights.get(coding) ?? weights.get('*') ?? 0) ?? 'identity'
    );
  });
}

/** Whether a media type is allowed by a header. */
export function accepts(accept: string | undefined, type: string): boolean {
  return accept === undefined || weightOf(type, weighted(accept)) > 0;
}

/** The media type of a form, without its parameters. */
export function typeOf(form: Form): string {
  return form === 'json' ? 'application/json' : MEDIA_TYPES[form];
}

function remembered<T>(seen: Map<string, T>, header: string, work: () => T): T {
  const known = seen.get(header);
  if (known !== undefined) return known;
  const value = work();
  if (seen.size >= MOST_REMEMBERED) seen.clear();
  if (header.length < 1000) seen.set(header, value);
  return value;
}

/** The items of a header and their weights, 1 where none is given. */
function weighted(header: string): readonly (readonly [string, number])[] {
  return header
    .slice(0, 4000)
    .split(',')
    .slice(0, 64)
    .map((item) => {
      const [name = '', ...parameters] = item.split(';').map((part) => part.trim().toLowerCase());
      const weight = parameters.find((parameter) => parameter.startsWith('q='))?.slice(2);
      const value = weight === undefined ? 1 : Number(weight);
      return [name, value >= 0 && value <= 1 ? value : 0] as const;
    });
}

/** The weight of a media type: that of the range which says most about it. */
function weightOf(type: string, ranges: readonly (readonly [string, number])[]): number {
  const weights = new Map(ranges);
  const [kind] = type.split('/');
  return weights.get(type) ?? weights.get(`${kind}/*`) ?? weights.get('*/*') ?? 0;
}

function best<T>(items: readonly T[], weigh: (item: T) => number): T | undefined {
  let [chosen, most]: [T | undefined, number] = [undefined, 0];
  for (const item of items) {
    const weight = weigh(item);
    if (weight > most) [chosen, most] = [item, weight];
  }
  return chosen;
}
