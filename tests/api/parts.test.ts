/**
 * Parts of answers: pages of long lists (RFC 8288), and the fields that are wanted.
 */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask, type Served, serve } from './server.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const SCALE = '/v1/modes/phrygian-dominant/A';
const ROUND = '/v1/rounds/harmonic-minor/A';

describe('pages', () => {
  test.each([
    '/v1/modes?name=dominant&limit=7',
    '/v1/search?notes=A,C,E&limit=9',
    '/v1/instruments?limit=20',
    '/v1/families?limit=10',
    '/v1/modes/dorian/A/related?shared=5&limit=100',
  ])('%s leads through all of its list, each once', async (path) => {
    const seen: string[] = [];
    let next: string | null = path;
    let total = 0;
    while (next !== null) {
      const { body, headers, status } = await ask<Record<string, unknown>>(served.origin, next);
      expect(status).toBe(200);
      const items = (body['modes'] ??
        body['matches'] ??
        body['instruments'] ??
        body['families'] ??
        body['shared']) as {
        id?: string;
        name: string;
      }[];
      seen.push(...items.map(({ id, name }) => id ?? name));
      total = Number(body['foundTotal'] ?? body['total']);
      next = body['next'] as string | null;
      expect(headers.get('link')?.includes('rel="next"') ?? false).toBe(next !== null);
      if (next !== null) expect(headers.get('link')).toContain(`<${next}>; rel="next"`);
    }
    expect(seen).toHaveLength(total);
    expect(new Set(seen).size).toBe(total);
  });

  test('a page says what came before it', async () => {
    const { body } = await ask<Record<string, unknown>>(served.origin, '/v1/modes?limit=10&offset=15');
    expect(body).toMatchObject({
      offset: 15,
      previous: '/v1/modes?limit=10&offset=5',
      next: '/v1/modes?limit=10&offset=25',
    });
    const first = await ask<Record<string, unknown>>(served.origin, '/v1/modes?limit=10&offset=5');
    expect(first.body['previous']).toBe('/v1/modes?limit=10');
  });
});

describe('fields', () => {
  test('that are wanted are all there is', async () => {
    const { body } = await ask(served.origin, `${SCALE}?fields=name,notes,chords.triads.name`);
    expect(Object.keys(body)).toEqual(['name', 'notes', 'chords']);
    expect(body['chords']).toEqual({
      triads: ['A', 'Bb', 'C# dim', 'D min', 'E dim', 'F aug', 'G min'].map((name) => ({
        name: expect.stringContaining(name[0] ?? ''),
      })),
    });
    const whole = await ask(served.origin, SCALE);
    expect(body['notes']).toEqual(whole.body['notes']);
  });

  test('may be one that is seldom there', async () => {
    const { status, body } = await ask(served.origin, `${ROUND}?fields=root,reason`);
    expect([status, body]).toEqual([200, { root: 'A' }]);
  });
});
