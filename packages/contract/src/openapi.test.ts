import { describe, expect, test } from 'vitest';
import { ENDPOINTS, type Endpoint } from './endpoints.ts';
import { openApiDocument } from './openapi.ts';

interface Parameter {
  readonly name: string;
  readonly in: string;
  readonly required: boolean;
  readonly description?: string;
  readonly schema: Readonly<Record<string, unknown>>;
}

interface Operation {
  readonly operationId: string;
  readonly summary: string;
  readonly parameters: readonly Parameter[];
  readonly responses: Readonly<Record<string, { readonly content: Readonly<Record<string, unknown>> }>>;
}

interface Document {
  readonly openapi: string;
  readonly info: Readonly<Record<string, unknown>>;
  readonly paths: Readonly<Record<string, { readonly get?: Operation; readonly post?: Operation }>>;
  readonly components: { readonly schemas: Readonly<Record<string, unknown>> };
}

const written = JSON.stringify(openApiDocument());
const document: Document = JSON.parse(written);
const operations = Object.entries(document.paths).map(([path, { get, post }]): [string, Operation] => {
  const operation = get ?? post;
  if (!operation) throw new Error(`nothing can be done at ${path}`);
  return [path, { ...operation, parameters: operation.parameters ?? [] }];
});

/** Media types by extension (IANA's list; audio/midi is common practice, no source), or by path. */
const FORM_OF: Readonly<Record<string, string>> = {
  svg: 'image/svg+xml',
  txt: 'text/plain',
  mid: 'audio/midi',
  musicxml: 'application/vnd.recordare.musicxml+xml',
  '/v1/docs': 'text/html',
  '/metrics': 'text/plain',
};

/** What is answered beside the endpoints. */
const SERVICE = ['/v1/batch', '/v1/docs', '/v1/openapi.json', '/metrics'];

/** Every value of a key, however deep it lies. */
function valuesOf(key: string, within: unknown): readonly unknown[] {
  if (within === null || typeof within !== 'object') return [];
  return Object.entries(within).flatMap(([name, value]) => [
    ...(name === key ? [value] : []),
    ...valuesOf(key, value),
  ]);
}

/** What a JSON pointer leads to (RFC 6901), or undefined. */
function follow(pointer: string): unknown {
  const parts = pointer
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));
  return parts.reduce<unknown>(
    (at, part) => (at as Readonly<Record<string, unknown>> | undefined)?.[part],
    document,
  );
}

function parameterOf(path: string, name: string): Parameter | undefined {
  return document.paths[path]?.get?.parameters.find((one) => one.name === name);
}

describe('the OpenAPI document', () => {
  test('is of version 3.1, is plain JSON, and is the same each time', () => {
    expect(document.openapi).toMatch(/^3\.1\.\d+$/);
    expect(openApiDocument()).toEqual(document);
    expect(JSON.stringify(openApiDocument())).toBe(written);
    expect(document.info['version']).toMatch(/^\d+\.\d+\.\d+$/);
  });

  test('has every endpoint, each of its other forms, the service beside them, and nothing else', () => {
    const endpoints: readonly Endpoint[] = Object.values(ENDPOINTS);
    const paths = endpoints.flatMap(({ path, formats }) => [
      path,
      ...formats.map((format) => `${path}.${format}`),
    ]);
    expect(operations.map(([path]) => path).toSorted()).toEqual([...paths, ...SERVICE].toSorted());
  });

  test('has only references that lead somewhere', () => {
    const references = valuesOf('$ref', document);
    expect(references.length).toBeGreaterThan(10);
    for (const reference of references) {
      expect(reference).toMatch(/^#\/components\/schemas\/\w+$/);
      expect(follow(String(reference)), String(reference)).toBeTypeOf('object');
    }
    expect(follow('#/components/schemas/Nothing')).toBeUndefined();
  });

  test('has no named schema that nothing refers to', () => {
    const referred = new Set(valuesOf('$ref', document));
    for (const name of Object.keys(document.components.schemas)) {
      expect(referred.has(`#/components/schemas/${name}`) || isWholeAnswer(name), name).toBe(true);
    }
  });

  test('has an operationId of its own for each operation', () => {
    const ids = operations.map(([, { operationId }]) => operationId);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('round-svg');
  });

  test.each(operations)(
    '%s declares each parameter in its path, and each only once',
    (path, { parameters }) => {
      const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
      const declared = parameters.filter((one) => one.in === 'path');
      expect(declared.map(({ name }) => name)).toEqual(inPath);
      expect(declared.every(({ required }) => required)).toBe(true);
      expect(new Set(parameters.map((one) => `${one.in} ${one.name}`)).size).toBe(parameters.length);
      for (const { name, description } of parameters) expect(description, name).toBeTypeOf('string');
    },
  );

  test.each(operations)(
    '%s answers in its own form, and its problems as problem details',
    (path, { responses }) => {
      const [, extension] = /\.(\w+)$/.exec(path) ?? [];
      const form = FORM_OF[extension ?? path] ?? 'application/json';
      expect(Object.keys(responses['200']?.content ?? {})).toEqual([form]);
      // RFC 9457, section 3: application/problem+json.
      const problems = Object.entries(responses).filter(([status]) => Number(status) >= 400);
      expect(problems.length).toBeGreaterThan(0);
      for (const [status, { content }] of problems) {
        expect(Object.keys(content), status).toEqual(['application/problem+json']);
      }
    },
  );
});

describe('a parameter in the document', () => {
  const round = '/v1/rounds/{family}/{root}';

  test.each([
    [round, 'capo', { type: 'number', minimum: 0, maximum: 36, default: 0 }],
    [round, 'transpose', { type: 'integer', minimum: -24, maximum: 24, default: 0 }],
    [round, 'capoStrings', { type: 'string', pattern: '^\\d{1,2}(,\\d{1,2}){0,13}$' }],
    [round, 'handSize', { type: 'string', enum: ['small', 'medium', 'large'], default: 'medium' }],
    [round, 'tempo', { type: 'number', minimum: 20, maximum: 400, default: 80 }],
    [round, 'meter', { type: 'string', default: '4/4' }],
    [round, 'drone', { type: 'string', enum: ['true', 'false'], default: 'false' }],
    [round, 'seed', { type: 'integer', minimum: 1, maximum: 4_294_967_295, default: 1 }],
    [round, 'countIn', { type: 'integer', minimum: 0, maximum: 4, default: 0 }],
    [round, 'frets', { type: 'integer', minimum: 1, maximum: 36 }],
    [round, 'instrument', { type: 'string', minLength: 1, maxLength: 200, default: 'guitar-6' }],
    [round, 'hand', { type: 'string', enum: ['right', 'left'], default: 'right' }],
    ['/v1/search', 'limit', { type: 'integer', minimum: 1, maximum: 500, default: 40 }],
    ['/v1/search', 'notes', { type: 'string', minLength: 1, maxLength: 200 }],
  ])('of %s, %s, is told with its kind, its range and what it is by default', (path, name, schema) => {
    expect(parameterOf(path, name)?.schema).toEqual(schema);
  });

  test('is required in a query only where there is no answer without it', () => {
    const required = operations.flatMap(([path, { parameters }]) =>
      parameters.flatMap((one) => (one.in === 'query' && one.required ? [`${path} ${one.name}`] : [])),
    );
    expect(required).toEqual(['/v1/compare a', '/v1/compare b', '/v1/routes from', '/v1/routes to']);
  });

  test('is by default within its own range', () => {
    for (const { name, schema } of operations.flatMap(([, { parameters }]) => parameters)) {
      const { default: usual, minimum, maximum } = schema;
      if (typeof usual !== 'number') continue;
      expect(usual, name).toBeGreaterThanOrEqual(Number(minimum));
      expect(usual, name).toBeLessThanOrEqual(Number(maximum));
    }
  });
});

/** Whether some endpoint answers with a named schema as a whole. */
function isWholeAnswer(name: string): boolean {
  return Object.values<Endpoint>(ENDPOINTS).some(({ answer }) => answer.meta()?.id === name);
}
