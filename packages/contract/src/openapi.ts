/**
 * The OpenAPI 3.1 document, written from the endpoints. Schemas are turned into JSON Schema by zod.
 */
import * as z from 'zod';
import * as answers from './answers.ts';
import { ENDPOINTS, type Endpoint, type Format, MEDIA_TYPES, SUBJECTS } from './endpoints.ts';
import { type Json, parametersOf, problemResponses } from './openapi-parts.ts';
import { serviceOperations } from './openapi-service.ts';
import { CommonQuery, NoQuery } from './requests.ts';
import { codeSamples, SAMPLE_ORIGIN, type SampleRequest } from './samples.ts';

/** The whole document, its samples written for a server at an origin. */
export function openApiDocument(origin = SAMPLE_ORIGIN): Json {
  const named: Record<string, unknown> = {};
  const schemaOf = (schema: z.ZodType): Json =>
    collect(z.toJSONSchema(schema, { io: 'output', unrepresentable: 'any' }), named);
  const paths = Object.entries(ENDPOINTS).flatMap(([name, endpoint]) =>
    pathsOf(name, endpoint, schemaOf, origin),
  );
  schemaOf(z.object({ problem: answers.Problem }));
  return {
    openapi: '3.1.1',
    info: {
      title: 'Stillroot',
      version: '1.0.0',
      summary:
        'Every mode of every seven-note family, spelled, related and fingered on any fretted instrument.',
      description:
        'Every answer is a pure function of its address and of the version of the data, which the header `data-version` gives. Spelling in data is ASCII: F#, Bbb, b3, bb7.',
      license: { name: 'MIT', identifier: 'MIT' },
    },
    servers: [{ url: '/' }],
    security: [],
    tags: Object.entries(SUBJECTS).map(([name, description]) => ({ name, description })),
    paths: { ...Object.fromEntries(paths), ...serviceOperations(schemaOf, origin) },
    components: { schemas: named },
  };
}

function pathsOf(
  name: string,
  endpoint: Endpoint,
  schemaOf: (schema: z.ZodType) => Json,
  origin: string,
): readonly [string, Json][] {
  const { path, summary, formats, answer, subject, isLive } = endpoint;
  const operation = (form: Format | undefined, content: Json): Json => {
    const request = exampleOf(endpoint, form);
    const parameters = [
      ...parametersOf(endpoint.params, 'path', request.params),
      ...parametersOf(endpoint.query, 'query', request.query),
      ...parametersOf(commonOf(endpoint, form), 'query', {}),
    ];
    const whole = form === undefined ? summary : `${summary}, as .${form}`;
    return {
      get: {
        operationId: form === undefined ? name : `${name}-${form}`,
        summary: whole,
        tags: [subject],
        parameters,
        responses: {
          200: { description: whole, content },
          ...(isLive ? {} : { 304: { description: 'What the client has is still what there is' } }),
          ...problemResponses(endpoint, form),
        },
        'x-codeSamples': codeSamples(request, origin),
      },
    };
  };
  return [
    [path, operation(undefined, { 'application/json': { schema: schemaOf(answer) } })],
    ...formats.map((form): [string, Json] => [
      `${path}.${form}`,
      operation(form, {
        [MEDIA_TYPES[form]]: {
          schema: form === 'mid' ? { type: 'string', format: 'binary' } : { type: 'string' },
        },
      }),
    ]),
  ];
}

/** What an endpoint takes beside its own parameters, in one of its forms. */
function commonOf({ isLive }: Endpoint, form: Format | undefined): z.ZodObject {
  if (isLive) return NoQuery;
  return form === undefined ? CommonQuery : CommonQuery.omit({ fields: true });
}

/** An endpoint's example, taken apart; numbers are numbers. */
function exampleOf({ path, example, query: schema }: Endpoint, form: Format | undefined): SampleRequest {
  const [before = '', search = ''] = example.split('?');
  const extension = form === undefined ? '' : `.${form}`;
  const segments = before.split('/');
  const params = path.split('/').flatMap((part, at): readonly [string, string][] => {
    const [, name] = /^\{(\w+)\}$/.exec(part) ?? [];
    return name === undefined ? [] : [[name, decodeURIComponent(segments[at] ?? '')]];
  });
  const numeric = new Set(
    parametersOf(schema, 'query', {}).flatMap(({ name, schema: { type } }) =>
      type === 'integer' || type === 'number' ? [name] : [],
    ),
  );
  const query = search.split('&').flatMap((pair): readonly (readonly [string, string | number])[] => {
    const [name = '', value = ''] = pair.split('=').map(decodeURIComponent);
    return name === '' ? [] : [[name, numeric.has(name) ? Number(value) : value]];
  });
  return {
    path: `${path}${extension}`,
    address: `${before}${extension}${search === '' ? '' : `?${search}`}`,
    params: Object.fromEntries(params),
    query: Object.fromEntries(query),
    reads: form === undefined ? 'json' : form === 'mid' ? 'arrayBuffer' : 'text',
  };
}

/** Moves the named parts of a schema to the document's components and points at them. */
function collect(schema: Json, named: Record<string, unknown>): Json {
  const { $defs, $schema: _dialect, id: _id, ...rest } = schema as Record<string, unknown>;
  for (const [name, part] of Object.entries(($defs ?? {}) as Record<string, Json>)) {
    const { id: _partId, ...body } = part as Record<string, unknown>;
    named[name] = repoint(body);
  }
  const body = repoint(rest) as Json;
  const own = (schema as Record<string, unknown>)['id'];
  if (typeof own !== 'string') return body;
  named[own] = body;
  return { $ref: `#/components/schemas/${own}` };
}

function repoint(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(repoint);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [
      key,
      key === '$ref' && typeof part === 'string'
        ? part.replace('#/$defs/', '#/components/schemas/')
        : repoint(part),
    ]),
  );
}
