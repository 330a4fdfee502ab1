/**
 * Making answers: from an address to something that can be sent. The same address has the same answer for
 * as long as the data stay the same.
 */
import type { Format } from '@stillroot/contract';
import type { Address, Form } from './address.ts';
import type { InForms } from './answers/neck-answer.ts';
import { trimmed } from './fields.ts';
import { HANDLERS, type ServerState } from './handlers.ts';
import { API_FIELDS, API_POLICY } from './header-fields.ts';
import { typeOf } from './negotiation.ts';
import { linkHeader } from './paging.ts';
import { checkParameters } from './parameters.ts';
import { type Prepared, prepare } from './prepared.ts';
import { PROBLEM_MEDIA_TYPE, ProblemReply, problemBody, shortened } from './problem-reply.ts';

/** An address without a version has the newest answer; a stale one will do while it is fetched. */
const UNVERSIONED = 'public, max-age=3600, stale-while-revalidate=86400, stale-if-error=604800';
/** An address with the present version never has another answer. */
const VERSIONED = 'public, max-age=31536000, immutable';
const LIVE = 'no-store';
/** A problem may be cured by the next version. */
const PROBLEM = 'public, max-age=60';

/** The forms an address can be had in: that of its extension alone, or any, the usual one first. */
export function offeredBy({ extension, endpoint }: Address): readonly Form[] {
  return extension === undefined ? ['json', ...endpoint.formats] : [extension];
}

/**
 * Makes the answer to an address in one of its forms.
 * @throws ProblemReply
 */
export function makeAnswer(address: Address, form: Form, state: ServerState): Prepared {
  const { name, endpoint } = address;
  const { params, query, version, fields } = checkParameters(address, form);
  const handler = HANDLERS[name] as (params: unknown, query: unknown, asked: unknown) => unknown;
  const answer = handler(params, query, { address, state });
  const forms = endpoint.formats.length > 0 ? (answer as InForms) : undefined;
  const shared = [...API_FIELDS, 'Content-Security-Policy', API_POLICY, 'Data-Version', state.dataVersion];
  if (endpoint.formats.length > 0 && address.extension === undefined)
    shared.push('Vary', 'Accept, Accept-Encoding');
  else shared.push('Vary', 'Accept-Encoding');
  const cacheControl = endpoint.isLive ? LIVE : version === state.dataVersion ? VERSIONED : UNVERSIONED;
  if (form !== 'json') {
    const made = inForm(forms, form);
    const kind = form === 'mid' || form === 'musicxml' ? 'attachment' : 'inline';
    shared.push('Content-Disposition', `${kind}; filename="${forms?.fileName()}.${form}"`);
    const type = form === 'mid' ? typeOf(form) : `${typeOf(form)}; charset=utf-8`;
    return prepare({ status: 200, type, body: made, cacheControl, fields: shared });
  }
  const json = forms ? forms.json() : answer;
  const link = linkHeader(json);
  if (link !== undefined) shared.push('Link', link);
  return prepare({
    status: name === 'ready' && state.isStopping ? 503 : 200,
    type: 'application/json; charset=utf-8',
    body: JSON.stringify(fields === undefined ? json : trimmed(json, fields, endpoint.answer)),
    cacheControl,
    fields: shared,
  });
}

/** A problem, ready to be sent. */
export function makeProblem(problem: ProblemReply, more: readonly string[] = []): Prepared {
  const { status, body } = problemBody(problem.kind, problem.problems);
  return prepare({
    status,
    type: PROBLEM_MEDIA_TYPE,
    body,
    cacheControl: status < 429 ? PROBLEM : LIVE,
    fields: [...API_FIELDS, 'Vary', 'Accept, Accept-Encoding', ...more],
  });
}

/** A problem about a form that an address does not have. */
export function notAcceptable(accept: string, offered: readonly Form[]): ProblemReply {
  const expected = `one of ${offered.map(typeOf).join(', ')}`;
  return new ProblemReply('notAcceptable', [{ field: 'Accept', value: shortened(accept), expected }]);
}

function inForm(forms: InForms | undefined, form: Format): string | Uint8Array {
  const make = forms?.[form];
  if (!make) throw new Error(`no ${form} of this`);
  return make();
}
