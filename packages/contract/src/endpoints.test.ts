import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { ENDPOINTS, type Endpoint } from './endpoints.ts';

const endpoints: readonly (readonly [string, Endpoint])[] = Object.entries(ENDPOINTS);

/** The names of the parameters that a schema takes. */
function namesIn(schema: z.ZodType): readonly string[] {
  if (!(schema instanceof z.ZodObject)) throw new Error('parameters are an object');
  return Object.keys(schema.shape);
}

/** A schema's parameters as JSON Schema tells them. */
function describedIn(schema: z.ZodType): readonly (readonly [string, unknown])[] {
  const { properties = {} } = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' });
  return Object.entries(properties).map(([name, property]) => [
    name,
    typeof property === 'object' ? property.description : undefined,
  ]);
}

describe('every endpoint', () => {
  test('has a path and a summary of its own', () => {
    expect(endpoints.length).toBeGreaterThan(10);
    expect(new Set(endpoints.map(([, { path }]) => path)).size).toBe(endpoints.length);
    expect(new Set(endpoints.map(([, { summary }]) => summary)).size).toBe(endpoints.length);
  });

  test.each(endpoints)(
    '%s has a path of plain words and parameters, all but those about the server under /v1',
    (_name, { path, isLive }) => {
      expect(path).toMatch(/^(\/[a-z0-9-]+|\/\{[a-z]+\})+$/);
      expect(path.startsWith('/v1/')).toBe(!isLive);
    },
  );

  test.each(endpoints)(
    '%s has a summary without a full stop, and schemas',
    (_name, { summary, params, query, answer }) => {
      expect(summary).toMatch(/^[A-Z].*[^.]$/);
      for (const schema of [params, query, answer]) expect(schema).toBeInstanceOf(z.ZodObject);
    },
  );

  test.each(endpoints)(
    '%s takes the parameters in its path, no more and no fewer',
    (_name, { path, params }) => {
      const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
      expect(namesIn(params)).toEqual(inPath);
    },
  );

  test.each(endpoints)(
    '%s describes each parameter, and has none both in path and query',
    (_name, { params, query }) => {
      for (const [name, description] of [...describedIn(params), ...describedIn(query)]) {
        expect(description, name).toMatch(/\w{2}/);
      }
      expect(namesIn(query).filter((name) => namesIn(params).includes(name))).toEqual([]);
    },
  );

  test.each(endpoints)('%s refuses parameters that it does not have', (_name, { params, query }) => {
    for (const name of ['colour', 'constructor', '__proto__', 'toString', 'INSTRUMENT', 'limit[]']) {
      for (const schema of [params, query]) {
        const { error } = schema.safeParse(Object.fromEntries([[name, 'x']]));
        const unknown = error?.issues.filter(({ code }) => code === 'unrecognized_keys');
        expect(unknown?.map(({ message }) => message)).toEqual([`Unrecognized key: "${name}"`]);
      }
    }
  });

  test('that is a picture of a neck can be had as a drawing and as text, that is played as files too', () => {
    for (const [name, { formats }] of endpoints) {
      const isPlayed = ['fingerings', 'round'].includes(name);
      const expected = isPlayed
        ? ['svg', 'txt', 'mid', 'musicxml']
        : name === 'fretboard'
          ? ['svg', 'txt']
          : [];
      expect(formats).toEqual(expected);
    }
  });

  test.each(endpoints)('%s has an example that is of its path', (_name, { path, example }) => {
    const pattern = new RegExp(`^${path.replaceAll(/\{\w+\}/g, '[^/]+')}$`);
    expect(example.split('?')[0]).toMatch(pattern);
  });
});
