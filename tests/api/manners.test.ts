/**
 * Manners of HTTP: validators, caching, codings, forms, methods and ids (RFC 9110, RFC 9111, the Fetch
 * standard).
 */
import { request } from 'node:http';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import type { answers } from '@stillroot/contract';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type * as z from 'zod';
import { ask, type Served, serve } from './server.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const SCALE = '/v1/modes/phrygian-dominant/A';
const ROUND = '/v1/rounds/harmonic-minor/A';

/** An answer as it came over the wire, its body as it was packed. */
function raw(path: string, headers: Record<string, string>, method = 'GET') {
  return new Promise<{ status: number; headers: Record<string, unknown>; body: Buffer }>(
    (resolve, reject) => {
      const asked = request(served.origin + path, { method, headers }, (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk) => chunks.push(chunk));
        response.on('end', () =>
          resolve({
            status: response.statusCode ?? 0,
            headers: response.headers,
            body: Buffer.concat(chunks),
          }),
        );
      });
      asked.on('error', reject);
      asked.end();
    },
  );
}

describe('validators', () => {
  test.each([SCALE, ROUND, `${ROUND}.mid`, `${ROUND}.svg`, '/v1/families', '/v1/openapi.json', '/v1/docs'])(
    '%s is the same when asked again, and 304 to whoever has it',
    async (path) => {
      const first = await ask(served.origin, path);
      const etag = first.headers.get('etag') ?? '';
      expect(etag).toMatch(/^"[\w-]{20}(-br|-gzip)?"$/);
      for (const value of [etag, `W/${etag}`, `"other", ${etag}`, '*']) {
        const again = await ask(served.origin, path, { headers: { 'if-none-match': value } });
        expect([again.status, again.text], value).toEqual([304, '']);
        // RFC 9110, section 15.4.5: what a cache needs to know of the answer it has.
        expect(again.headers.get('etag')).toBe(etag);
        expect(again.headers.get('cache-control')).toBe(first.headers.get('cache-control'));
        expect(again.headers.get('vary')).toBe(first.headers.get('vary'));
      }
      const other = await ask(served.origin, path, { headers: { 'if-none-match': '"other"' } });
      expect(other.status).toBe(200);
    },
  );

  test('differ between answers, and between codings of one', async () => {
    const tags = await Promise.all([
      raw(SCALE, {}),
      raw(SCALE, { 'accept-encoding': 'br' }),
      raw(SCALE, { 'accept-encoding': 'gzip' }),
      raw('/v1/modes/dorian/A', {}),
      raw(`${ROUND}.svg`, {}),
    ]);
    expect(new Set(tags.map(({ headers }) => headers['etag'])).size).toBe(5);
  });

  test('a problem has no 304', async () => {
    const { status } = await ask(served.origin, '/v1/modes/nothing/A', { headers: { 'if-none-match': '*' } });
    expect(status).toBe(404);
  });
});

describe('caching', () => {
  test('an answer may be kept for ever under the present version of the data, for an hour without', async () => {
    const { headers } = await ask(served.origin, SCALE);
    const version = headers.get('data-version') ?? '';
    expect(version).toMatch(/^[\w-]{12}$/);
    expect(headers.get('cache-control')).toContain('max-age=3600');
    const versioned = await ask(served.origin, `${SCALE}?v=${version}`);
    expect(versioned.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
    const old = await ask(served.origin, `${SCALE}?v=000000000000`);
    expect(old.headers.get('cache-control')).toContain('max-age=3600');
    expect([old.text, versioned.text]).toEqual([versioned.text, old.text]);
  });

  test('an answer is kept when it is asked for a second time, and no sooner', async () => {
    const figure = async (): Promise<string | undefined> =>
      /^stillroot_answers_kept_hits_total (\d+)$/m.exec((await ask(served.origin, '/metrics')).text)?.[1];
    const path = '/v1/rounds/harmonic-major/Gb?instrument=mandolin&tempo=61';
    const hits = Number(await figure());
    await ask(served.origin, path);
    await ask(served.origin, path);
    expect(Number(await figure())).toBe(hits);
    await ask(served.origin, path);
    expect(Number(await figure())).toBe(hits + 1);
  });

  test.each(['/health', '/ready', '/metrics'])('%s is never kept', async (path) => {
    expect((await ask(served.origin, path)).headers.get('cache-control')).toBe('no-store');
  });
});

describe('codings', () => {
  test.each([
    ['br', 'br'],
    ['gzip', 'gzip'],
    ['gzip, deflate, br', 'br'],
    ['gzip;q=1, br;q=0.5', 'gzip'],
    ['br;q=0, gzip;q=0', undefined],
    ['*', 'br'],
    ['deflate', undefined],
    ['identity', undefined],
    ['', undefined],
  ])('of "%s" is %s, and holds the same', async (accepted, coding) => {
    const plain = await raw(ROUND, {});
    const packed = await raw(ROUND, { 'accept-encoding': accepted });
    expect(packed.headers['content-encoding']).toBe(coding);
    expect(Number(packed.headers['content-length'])).toBe(packed.body.length);
    const unpack = coding === 'br' ? brotliDecompressSync : coding === 'gzip' ? gunzipSync : Buffer.from;
    expect(Buffer.from(unpack(packed.body)).equals(plain.body)).toBe(true);
    if (coding !== undefined) expect(packed.body.length).toBeLessThan(plain.body.length / 3);
    expect(String(packed.headers['vary'])).toContain('Accept-Encoding');
  });
});

describe('forms', () => {
  test.each([
    ['application/json', 'application/json; charset=utf-8'],
    ['*/*', 'application/json; charset=utf-8'],
    ['text/html,application/xhtml+xml,*/*;q=0.8', 'application/json; charset=utf-8'],
    ['image/svg+xml', 'image/svg+xml; charset=utf-8'],
    ['image/avif,image/webp,image/svg+xml,image/*,*/*;q=0.8', 'image/svg+xml; charset=utf-8'],
    ['text/plain;q=0.9, application/json;q=0.1', 'text/plain; charset=utf-8'],
    ['audio/midi', 'audio/midi'],
    ['application/vnd.recordare.musicxml+xml', 'application/vnd.recordare.musicxml+xml; charset=utf-8'],
  ])('Accept: %s gets %s, the same bytes as its extension', async (accept, type) => {
    const extensions: Record<string, string> = {
      json: '',
      svg: '.svg',
      plain: '.txt',
      midi: '.mid',
      vnd: '.musicxml',
    };
    const [, name = ''] = /(json|svg|plain|midi|vnd)/.exec(type) ?? [];
    const negotiated = await raw(ROUND, { accept });
    const extended = await raw(`${ROUND}${extensions[name]}`, {});
    expect(negotiated.headers['content-type']).toBe(type);
    expect(negotiated.body.equals(extended.body)).toBe(true);
    expect(negotiated.headers['vary']).toBe('Accept, Accept-Encoding');
  });

  test.each([
    [SCALE, 'image/svg+xml', 'application/json'],
    [`${ROUND}.svg`, 'application/json', 'image/svg+xml'],
    [ROUND, 'video/mp4', 'audio/midi'],
    [ROUND, 'application/json;q=0, text/*;q=0', 'application/json'],
  ])('%s cannot be had as %s, and says as what it can', async (path, accept, offered) => {
    const { status, body } = await ask<z.infer<typeof answers.Problem>>(served.origin, path, {
      headers: { accept },
    });
    expect([status, body.errors[0]?.field]).toEqual([406, 'Accept']);
    expect(body.errors[0]?.expected).toContain(offered);
  });
});

describe('methods', () => {
  test.each([SCALE, `${ROUND}.mid`, '/health', '/v1/openapi.json'])(
    'HEAD %s is GET without a body',
    async (path) => {
      const [get, head] = [await raw(path, {}), await raw(path, {}, 'HEAD')];
      const { date: _one, 'x-request-id': _id, ...expected } = get.headers;
      expect(head.headers).toMatchObject(expected);
      expect(head.body.length).toBe(0);
    },
  );

  test.each([
    [SCALE, 'GET, HEAD, OPTIONS'],
    ['/v1/batch', 'POST, OPTIONS'],
  ])('OPTIONS %s says what may be done, from pages of any origin', async (path, allow) => {
    const { status, headers } = await ask(served.origin, path, {
      method: 'OPTIONS',
      headers: { origin: 'https://example.org', 'access-control-request-method': 'GET' },
    });
    expect([status, headers.get('allow')]).toEqual([204, allow]);
    expect(headers.get('access-control-allow-origin')).toBe('*');
    expect(headers.get('access-control-allow-methods')).toContain(allow.split(',')[0]);
  });

  test('every answer may be read by anyone, and is what it says it is', async () => {
    for (const path of [SCALE, `${ROUND}.svg`, '/v1/nothing', '/health', '/v1/batch']) {
      const { headers } = await ask(served.origin, path);
      expect(headers.get('access-control-allow-origin')).toBe('*');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
    }
    const { headers } = await ask(served.origin, `${ROUND}.svg`);
    expect(headers.get('content-security-policy')).toContain("default-src 'none'");
  });
});

describe('request ids', () => {
  test('are kept where they came, and new where they did not', async () => {
    const given = await ask(served.origin, SCALE, { headers: { 'x-request-id': 'lesson-7' } });
    expect(given.headers.get('x-request-id')).toBe('lesson-7');
    const ids = await Promise.all(
      ['/v1/nothing', SCALE, '/health', SCALE].map(async (path) =>
        (await ask(served.origin, path)).headers.get('x-request-id'),
      ),
    );
    expect(new Set(ids).size).toBe(4);
    const odd = await ask(served.origin, SCALE, { headers: { 'x-request-id': 'a b<script>' } });
    expect(odd.headers.get('x-request-id')).toMatch(/^[\w-]+$/);
  });
});
