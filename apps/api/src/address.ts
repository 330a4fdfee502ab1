/**
 * Addresses: which endpoint a path is of, in which form, and what its parts and its query hold.
 */
import { parse } from 'node:querystring';
import { ENDPOINTS, type Endpoint, type EndpointName, type Format } from '@stillroot/contract';
import { ProblemReply, shortened } from './problem-reply.ts';
import { KNOWN_PATH } from './replies.ts';

/** The form of an answer. */
export type Form = 'json' | Format;

/** An address that an endpoint answers. */
export interface Address {
  readonly name: EndpointName;
  readonly endpoint: Endpoint;
  /** The form that the extension asks for; absent where there is none. */
  readonly extension?: Format;
  /** The path as it was asked for. */
  readonly path: string;
  readonly params: Readonly<Record<string, string>>;
  /** Without a prototype; a name that is given twice has a list. */
  readonly query: Readonly<Record<string, string | readonly string[] | undefined>>;
}

interface Pattern {
  readonly name: EndpointName;
  readonly endpoint: Endpoint;
  /** Words, and the names of parameters where a word may be anything. */
  readonly parts: readonly { readonly word?: string; readonly param?: string }[];
}

const PATTERNS: readonly Pattern[] = (Object.keys(ENDPOINTS) as EndpointName[]).map((name) => ({
  name,
  endpoint: ENDPOINTS[name],
  parts: ENDPOINTS[name].path
    .slice(1)
    .split('/')
    .map((part) => (part.startsWith('{') ? { param: part.slice(1, -1) } : { word: part })),
}));

/** The patterns of so many parts. */
const BY_LENGTH: ReadonlyMap<number, readonly Pattern[]> = Map.groupBy(PATTERNS, ({ parts }) => parts.length);

/**
 * Reads an address: a path and a query.
 * @throws ProblemReply where no endpoint is there, or the percent-encoding is none
 */
export function readAddress(url: string): Address {
  const mark = url.indexOf('?');
  const path = mark < 0 ? url : url.slice(0, mark);
  const segments = path.slice(1).split('/');
  for (const pattern of BY_LENGTH.get(segments.length) ?? []) {
    const found = match(pattern, segments);
    if (found) return { ...found, path, query: mark < 0 ? {} : parse(url.slice(mark + 1)) };
  }
  decoded(path);
  throw new ProblemReply('unknownPath', [{ field: 'path', value: shortened(url), expected: KNOWN_PATH }]);
}

function match(
  { name, endpoint, parts }: Pattern,
  segments: readonly string[],
): Pick<Address, 'name' | 'endpoint' | 'extension' | 'params'> | undefined {
  const last = segments.length - 1;
  const whole = segments[last] as string;
  const extension = endpoint.formats.find((format) => whole.endsWith(`.${format}`));
  const params: [string, string][] = [];
  for (const [at, { word, param }] of parts.entries()) {
    const given = segments[at] as string;
    const segment = at === last && extension !== undefined ? given.slice(0, -extension.length - 1) : given;
    if (param === undefined) {
      if (segment !== word) return undefined;
    } else {
      params.push([param, decoded(segment)]);
    }
  }
  const found = { name, endpoint, params: Object.fromEntries(params) };
  return extension === undefined ? found : { ...found, extension };
}

function decoded(segment: string): string {
  try {
    return decodeURIComponent(segment);
  } catch {
    throw new ProblemReply('badInput', [
      { field: 'path', value: shortened(segment), expected: 'an address with valid percent-encoding' },
    ]);
  }
}
