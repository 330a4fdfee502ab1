/**
 * Documents about the service itself: its description, its reference and its figures.
 */
import { openApiDocument } from '@stillroot/contract';
import type { AnswerCache } from './answer-cache.ts';
import { API_FIELDS } from './header-fields.ts';
import { makeProblem } from './make-answer.ts';
import type { Metrics } from './metrics.ts';
import { accepts } from './negotiation.ts';
import { type Prepared, prepare } from './prepared.ts';
import { ProblemReply, shortened } from './problem-reply.ts';
import { referencePage } from './reference-page.ts';
import { methodsOf, wrongMethod } from './replies.ts';

/** What the documents tell of. */
export interface Described {
  readonly dataVersion: string;
  readonly cache: AnswerCache;
  readonly metrics: Metrics;
  readonly state: { readonly counting: string };
  /** Where clients find the server. */
  readonly origin: string | undefined;
}

const HOUR = 'public, max-age=3600, stale-while-revalidate=86400';

/** Made when first asked for. */
const made = new Map<string, Prepared>();

/** The document at an address; undefined where there is none. */
export function documentAt(url: string, accept: string | undefined, about: Described): Prepared | undefined {
  switch (url) {
    case '/v1/openapi.json':
      return ifAccepted(accept, 'application/json', () => once(url, about, openApi));
    case '/v1':
    case '/v1/':
    case '/v1/docs':
      return ifAccepted(accept, 'text/html', () => once('/v1/docs', about, reference));
    case '/metrics':
      return ifAccepted(accept, 'text/plain', () => figures(about));
    case '/v1/batch':
      return makeProblem(new ProblemReply('wrongMethod', [wrongMethod('GET', url)]), [
        'Allow',
        methodsOf(url),
      ]);
    default:
      return undefined;
  }
}

function once(key: string, about: Described, make: (about: Described) => Prepared): Prepared {
  const name = `${about.dataVersion} ${about.origin} ${key}`;
  const known = made.get(name);
  if (known) return known;
  const fresh = make(about);
  made.set(name, fresh);
  return fresh;
}

function openApi({ dataVersion, origin }: Described): Prepared {
  const fields = [...API_FIELDS, 'Vary', 'Accept-Encoding', 'Data-Version', dataVersion];
  const body = JSON.stringify(openApiDocument(origin));
  return prepare({ status: 200, type: 'application/json; charset=utf-8', body, cacheControl: HOUR, fields });
}

function reference({ dataVersion, origin }: Described): Prepared {
  const { html, policy } = referencePage(origin);
  const fields = [
    ...API_FIELDS,
    'Content-Security-Policy',
    policy,
    'Vary',
    'Accept-Encoding',
    'Data-Version',
    dataVersion,
  ];
  return prepare({ status: 200, type: 'text/html; charset=utf-8', body: html, cacheControl: HOUR, fields });
}

function figures({ metrics, cache, state }: Described): Prepared {
  return prepare({
    status: 200,
    type: 'text/plain; version=0.0.4; charset=utf-8',
    body: metrics.text(cache, state.counting),
    cacheControl: 'no-store',
    fields: ['X-Content-Type-Options', 'nosniff'],
  });
}

/** Refuses a client that takes no such document. */
function ifAccepted(accept: string | undefined, type: string, make: () => Prepared): Prepared {
  if (accepts(accept, type)) return make();
  const errors = [{ field: 'Accept', value: shortened(accept ?? ''), expected: type }];
  return makeProblem(new ProblemReply('notAcceptable', errors));
}
