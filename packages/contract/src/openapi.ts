/**
 * The OpenAPI 3.1 document, written from the endpoints. Schemas are turned into JSON Schema by zod.
 */
import * as z from 'zod';
import * as answers from './answers.ts';
import { ENDPOINTS, type Endpoint, type Format } from './endpoints.ts';
import { PROBLEM_KINDS } from './problems.ts';

type Json = Readonly<Record<string, unknown>>;

const MEDIA_TYPES: Record<Format, string> = { svg: 'image/svg+xml', txt: 'text/plain' };

/** The whole document. */
export function openApiDocument(): Json {
  const named: Record<string, unknown> = {};
  const schemaOf = (schema: z.ZodType): Json =>
    collect(z.toJSONSchema(schema, { io: 'output', unrepresentable: 'any' }), named);
  const paths = Object.entries(ENDPOINTS).flatMap(([name, endpoint]) => pathsOf(name, endpoint, schemaOf));
  schemaOf(z.object({ problem: answers.Problem }));
  return {
    openapi: '3.1.1',
    info: {
      title: 'Stillroot',
      version: '1.0.0',
      summary:
        'Every mode of every seven-note family, spelled, related and fingered on any fretted instrument.',
      description:
        'Every answer is a pure function of its address. Spelling in data is ASCII: F#, Bbb, b3, bb7.',
      license: { name: 'MIT', identifier: 'MIT' },
    },
    servers: [{ url: '/' }],
    security: [],
    paths: Object.fromEntries(paths),
    components: { schemas: named },
  };
}

function pathsOf(
  name: string,
  endpoint: Endpoint,
  schemaOf: (schema: z.ZodType) => Json,
): readonly [string, Json][] {
  const parameters = [...parametersOf(endpoint.params, 'path'), ...parametersOf(endpoint.query, 'query')];
  const operation = (operationId: string, summary: string, content: Json): Json => ({
    get: {
      operationId,
      summary,
      parameters,
      responses: { 200: { description: summary, content }, ...problemResponses(parameters.length > 0) },
    },
  });
  return [
    [
      endpoint.path,
      operation(name, endpoint.summary, { 'application/json': { schema: schemaOf(endpoint.answer) } }),
    ],
    ...endpoint.formats.map((format): [string, Json] => [
      `${endpoint.path}.${format}`,
      operation(`${name}-${format}`, `${endpoint.summary}, as .${format}`, {
        [MEDIA_TYPES[format]]: { schema: { type: 'string' } },
      }),
    ]),
  ];
}

function parametersOf(schema: z.ZodType, place: 'path' | 'query'): readonly Json[] {
  const { properties = {}, required = [] } = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' });
  // What a number is by default is only told of the output: the input is text.
  const output = z.toJSONSchema(schema, { io: 'output', unrepresentable: 'any' }).properties ?? {};
  return Object.entries(properties).map(([name, property]) => {
    const { description, example, ...rest } = property as Record<string, unknown>;
    const byDefault = defaultOf(output[name] as Json);
    return {
      name,
      in: place,
      required: place === 'path' || required.includes(name),
      ...(description !== undefined && { description }),
      ...(example !== undefined && { example }),
      schema: isNumeric(rest)
        ? { type: rest['type'], minimum: rest['minimum'], maximum: rest['maximum'], ...byDefault }
        : rest,
    };
  });
}

/** A number arrives as text, but is described as the number it stands for. */
function isNumeric({ type }: Readonly<Record<string, unknown>>): boolean {
  return type === 'integer' || type === 'number';
}

function defaultOf(schema: Readonly<Record<string, unknown>>): Json {
  return schema['default'] === undefined ? {} : { default: schema['default'] };
}

function problemResponses(takesParameters: boolean): Json {
  const kinds = takesParameters
    ? [PROBLEM_KINDS.badInput, PROBLEM_KINDS.unknownName]
    : [PROBLEM_KINDS.badInput];
  return Object.fromEntries(
    kinds.map(({ status, title }) => [
      status,
      {
        description: title,
        content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
      },
    ]),
  );
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
