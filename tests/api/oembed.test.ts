/**
 * oEmbed, version 1.0 (oembed.com, sections 2.2 "Consumer request", 2.3 "Provider response" and 4 "Discovery").
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { XmlDocument } from 'libxml2-wasm';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask, type Served, serve } from './server.ts';

let served: Served;
const folder = mkdtempSync(join(tmpdir(), 'stillroot-'));
beforeAll(async () => {
  served = await serve({ siteFolder: folder });
});
afterAll(async () => {
  await served.close();
  rmSync(folder, { recursive: true });
});

type Body = Readonly<Record<string, string | number>>;

function about(page: string, more = ''): Promise<Awaited<ReturnType<typeof ask<Body>>>> {
  return ask<Body>(served.origin, `/oembed?url=${encodeURIComponent(served.origin + page)}${more}`);
}

/** What the frame of an answer shows. */
function sourceOf({ html }: Body): URL {
  const [, source = ''] = /^<iframe src="([^"]*)"/.exec(String(html)) ?? [];
  return new URL(source.replaceAll('&amp;', '&'));
}

describe('oEmbed', () => {
  test('of a round is a frame of it, everything chosen kept', async () => {
    const { status, type, body, headers } = await about(
      '/rounds/harmonic-minor/d/?instrument=bass-4&tuning=drop-d&fret=5',
    );
    expect([status, type]).toEqual([200, 'application/json; charset=utf-8']);
    expect(headers.get('access-control-allow-origin')).toBe('*');
    expect(body).toMatchObject({
      type: 'rich',
      version: '1.0',
      title: 'Round of harmonic minor from D, four-string bass',
      provider_name: 'Stillroot',
      provider_url: `${served.origin}/`,
      width: 960,
      height: 640,
    });
    const { origin, pathname, searchParams } = sourceOf(body);
    expect([origin, pathname]).toEqual([served.origin, '/embed/round/']);
    expect(Object.fromEntries(searchParams)).toEqual({
      family: 'harmonic-minor',
      root: 'd',
      instrument: 'bass-4',
      tuning: 'drop-d',
      fret: '5',
    });
  });

  test('of a scale has its name with proper signs, and is no larger than is asked for', async () => {
    const { body } = await about('/modes/dorian-sharp4/b-flat/', '&maxwidth=400&maxheight=2000');
    expect(body).toMatchObject({ title: 'B♭ Dorian ♯4', width: 400, height: 640 });
    expect(body['html']).toContain('width="400" height="640"');
    expect(sourceOf(body).search).toBe('?mode=dorian-sharp4&root=b-flat');
  });

  test('is had as XML with the same fields', async () => {
    const [json, xml] = [await about('/modes/dorian/a/'), await about('/modes/dorian/a/', '&format=xml')];
    expect(xml.type).toBe('text/xml; charset=utf-8');
    using document = XmlDocument.fromString(xml.text);
    const read = (name: string): string | undefined => document.get(`/oembed/${name}`)?.content;
    for (const [name, value] of Object.entries(json.body)) expect(read(name)).toBe(String(value));
    expect(document.root.name).toBe('oembed');
  });

  test.each([
    ['', 400, 'url'],
    ['?url=nonsense', 404, 'url'],
    ['?url=https%3A%2F%2Fexample.org%2Frounds%2Fharmonic-minor%2Fa%2F', 404, 'url'],
  ])('refuses %j with %i', async (query, status, field) => {
    const answer = await ask<{ errors: { field: string }[] }>(served.origin, `/oembed${query}`);
    expect([answer.status, answer.body.errors[0]?.field]).toEqual([status, field]);
    expect(answer.type).toBe('application/problem+json; charset=utf-8');
  });

  test.each([
    ['/rounds/harmonic-minor/h/', '', 404],
    ['/rounds/dorian-sharp4/a/', '', 404],
    ['/instruments/bass-4/', '', 404],
    ['/modes/dorian/a/', '&format=yaml', 501],
    ['/modes/dorian/a/', '&maxwidth=0', 400],
    ['/modes/dorian/a/', '&maxheight=1e9', 400],
  ])('refuses %s%s with %i', async (page, more, status) => {
    expect((await about(page, more)).status).toBe(status);
  });

  test('lets no markup out of the address into the frame', async () => {
    const { body } = await about('/modes/dorian/a/?tuning="><script>alert(1)</script>');
    expect(String(body['html']).match(/[<>]/g)).toHaveLength(4);
  });
});
