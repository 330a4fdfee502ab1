/**
 * The OpenAPI document against the published JSON Schema of OpenAPI 3.1 (spec.openapis.org), by a validator
 * that knows nothing of this project.
 */
import { Validator } from '@seriousme/openapi-schema-validator';
import { openApiDocument } from '@stillroot/contract';
import { describe, expect, test } from 'vitest';

type Json = Record<string, unknown>;

/** A copy that may be changed. */
function copyOf(): Json {
  return JSON.parse(JSON.stringify(openApiDocument()));
}

/** The part of a document at the end of a path of keys. */
function partOf(document: Json, ...keys: readonly string[]): Json {
  return keys.reduce((at, key) => {
    const part = at[key];
    if (part === null || typeof part !== 'object') throw new Error(`no ${key}`);
    return part as Json;
  }, document);
}

const MODE = ['paths', '/v1/modes/{mode}', 'get'] as const;

describe('the OpenAPI document', () => {
  test('is valid by the published schema of version 3.1', async () => {
    const validator = new Validator();
    const { valid, errors } = await validator.validate(copyOf());
    expect(errors ?? []).toEqual([]);
    expect(valid).toBe(true);
    expect(validator.version).toBe('3.1');
  });

  test('is whole when all its references are put in their places', async () => {
    const validator = new Validator();
    await validator.validate(copyOf());
    const resolved = JSON.stringify(validator.resolveRefs());
    expect(resolved).not.toContain('"$ref"');
    expect(resolved.length).toBeGreaterThan(JSON.stringify(copyOf()).length);
  });

  const breakings: readonly (readonly [string, (document: Json) => unknown])[] = [
    ['without a title', (document) => delete partOf(document, 'info')['title']],
    ['without a version of its own', (document) => delete document['openapi']],
    ['of a version that is none', (document) => Object.assign(document, { openapi: '3.1' })],
    [
      'with a path that does not begin with a slash',
      (document) => Object.assign(partOf(document, 'paths'), { health: {} }),
    ],
    [
      'with a method that is none',
      (document) => Object.assign(partOf(document, 'paths', '/health'), { fetch: {} }),
    ],
    [
      'with an answer that is not described',
      (document) => delete partOf(document, ...MODE, 'responses', '200')['description'],
    ],
    [
      'with a path parameter that may be left out',
      (document) => Object.assign(partOf(document, ...MODE, 'parameters', '0'), { required: false }),
    ],
    [
      'with a parameter in no place',
      (document) => Object.assign(partOf(document, ...MODE, 'parameters', '0'), { in: 'somewhere' }),
    ],
    [
      'with a schema that is a word',
      (document) => Object.assign(partOf(document, 'components', 'schemas'), { Mode: 'a mode' }),
    ],
  ];

  test.each(breakings)('is refused %s', async (_how, spoil) => {
    const document = copyOf();
    spoil(document);
    const { valid } = await new Validator().validate(document);
    expect(valid).toBe(false);
  });
});
