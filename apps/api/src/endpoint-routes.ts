/**
 * Routes of the API: each endpoint's path, and its path with each extension, bound to its handler.
 */
import { ENDPOINTS, type Endpoint, type EndpointName, type Format } from '@stillroot/contract';
import type { Problem } from '@stillroot/core';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type * as z from 'zod';
import type { InForms } from './answers/neck-answer.ts';
import { HANDLERS } from './handlers.ts';
import { ProblemReply } from './problem-reply.ts';
import { CACHE_CONTROL, sendJson } from './replies.ts';

const MEDIA_TYPES: Record<Format, string> = {
  svg: 'image/svg+xml; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
};

/** Binds an endpoint's path, and its path with each extension, to its handler. */
export function bindEndpoint(app: FastifyInstance, name: EndpointName): void {
  const endpoint: Endpoint = ENDPOINTS[name];
  const handler = HANDLERS[name] as (params: unknown, query: unknown) => unknown;
  const path = endpoint.path.replaceAll(/\{(\w+)\}/g, ':$1');
  const answer = (request: FastifyRequest): unknown => handler(...checked(endpoint, request));
  app.get(path, (request, reply) => {
    const body = answer(request);
    return sendJson(reply, JSON.stringify(endpoint.formats.length > 0 ? (body as InForms).json() : body));
  });
  for (const format of endpoint.formats) {
    app.get(`${path}.${format}`, (request, reply) => {
      const body = (answer(request) as InForms)[format]();
      return reply.header('cache-control', CACHE_CONTROL).type(MEDIA_TYPES[format]).send(body);
    });
  }
}

/** The parameters of a request, or a problem that names every one that is wrong. */
function checked(endpoint: Endpoint, request: FastifyRequest): [unknown, unknown] {
  const params = endpoint.params.safeParse(request.params);
  const query = endpoint.query.safeParse(request.query);
  const problems = [
    ...problemsOf(params, request.params, endpoint.params),
    ...problemsOf(query, request.query, endpoint.query),
  ];
  if (problems.length > 0) throw new ProblemReply('badInput', problems);
  return [params.data, query.data];
}

function problemsOf(
  result: z.ZodSafeParseResult<unknown>,
  given: unknown,
  schema: z.ZodType,
): readonly Problem[] {
  if (result.success) return [];
  const values = new Map(Object.entries(given as Record<string, unknown>));
  return result.error.issues.flatMap((issue): readonly Problem[] => {
    if (issue.code === 'unrecognized_keys') {
      const known = Object.keys((schema as z.ZodObject).shape).join(', ');
      const expected = known === '' ? 'no parameters here' : `one of the parameters ${known}`;
      return issue.keys.map((field) => ({
        field: field.slice(0, 60),
        value: String(values.get(field)).slice(0, 60),
        expected,
      }));
    }
    const field = String(issue.path[0] ?? 'request');
    return [{ field, value: String(values.get(field) ?? '').slice(0, 60), expected: issue.message }];
  });
}
