/**
 * Names that would be something else: code in pictures and scores, paths out of the folder, properties of
 * every object, patterns that never end.
 */
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { XmlDocument } from 'libxml2-wasm';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask, type Served, serve } from '../api/server.ts';

let served: Served;
beforeAll(async () => {
  const folder = await mkdtemp(join(tmpdir(), 'stillroot-site-'));
  await writeFile(join(folder, '404.html'), '<p>none</p>');
  await writeFile(join(folder, 'index.html'), '<p>home</p>');
  served = await serve({ siteFolder: folder });
});
afterAll(() => served.close());

const CODE = [
  '<script>alert(1)</script>',
  '"><image href=x onerror=alert(1)>',
  ']]><x/><![CDATA[',
  '&xxe;',
  '<!DOCTYPE x [<!ENTITY xxe SYSTEM "file:///etc/passwd">]>',
];

describe('code in a name', () => {
  test.each(CODE)('%s comes back as text of JSON, or not at all', async (code) => {
    const hidden = encodeURIComponent(code);
    const addresses = [
      `/v1/modes/${hidden}/A/fretboard.svg`,
      `/v1/modes/dorian/A/fretboard.svg?tuning=${hidden}`,
      `/v1/modes/dorian/A/fretboard.svg?instrument=${hidden}`,
      `/v1/rounds/major/A.musicxml?tuning=${hidden}`,
      `/v1/rounds/major/A.svg?labels=${hidden}`,
      `/v1/modes?name=${hidden}`,
      `/v1/${hidden}`,
    ];
    for (const address of addresses) {
      const { type, text, headers, status } = await ask(served.origin, address);
      expect(type, address).toMatch(/^application\/(problem\+)?json/);
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      if (status !== 200) expect(JSON.parse(text).errors.length).toBeGreaterThan(0);
    }
  });

  test('in a page of the site is not repeated there', async () => {
    const { text } = await ask(served.origin, `/${encodeURIComponent(CODE[0] ?? '')}`);
    expect(text).toBe('<p>none</p>');
  });

  test('cannot get into a picture or a score: these are well-formed and hold no script', async () => {
    const tunings = ["E A d g b e'", 'B1-E2-A2-D3-G3-B3-E4', 'DADGAD'];
    for (const tuning of tunings) {
      for (const extension of ['svg', 'musicxml']) {
        const address = `/v1/rounds/harmonic-minor/A.${extension}?tuning=${encodeURIComponent(tuning)}`;
        const { text } = await ask(served.origin, address);
        // Throws where it is not well-formed.
        XmlDocument.fromString(text).dispose();
        expect(text).not.toMatch(/<script|\son\w+=|javascript:|<!ENTITY|<foreignObject/i);
      }
    }
  });
});

test.each([
  '/../package.json',
  '/..%2f..%2fpackage.json',
  '/%2e%2e/%2e%2e/etc/passwd',
  '/....//....//etc/passwd',
  '/..\\..\\etc\\passwd',
  '//etc/passwd',
  '/index.html%00.svg',
  '/v1/../../../etc/passwd',
  '/v1/modes/..%2f..%2f..%2fetc%2fpasswd',
  '/v1/instruments/..%2f..%2fpackage',
])('%s leads nowhere', async (path) => {
  const { status, text } = await ask(served.origin, path);
  expect(status).toBeGreaterThanOrEqual(300);
  expect(status).toBeLessThan(500);
  expect(text).not.toMatch(/root:|"workspaces"|"private"/);
});

test.each([
  '__proto__',
  'constructor',
  'prototype',
  '__proto__[admin]',
  'constructor[prototype][admin]',
  '__proto__.admin',
])('%s in a query changes no object', async (name) => {
  for (const path of ['/v1/modes', '/v1/rounds/major/A', '/v1/modes/dorian/A', '/rounds/']) {
    const { status } = await ask(served.origin, `${path}?${encodeURIComponent(name)}=true&${name}=true`);
    expect(status).toBeLessThan(500);
  }
  expect(({} as Record<string, unknown>)['admin']).toBeUndefined();
  const fields = await ask(served.origin, `/v1/modes/dorian/A?fields=${encodeURIComponent(name)}`);
  expect(fields.status).toBe(400);
});

const LONG = 200;
test.each([
  ['/v1/modes/dorian/A/fretboard?tuning=', 'E2-'],
  ['/v1/modes/dorian/A/fretboard?tuning=', "e'"],
  ['/v1/modes/dorian/A/fretboard?tuning=', '#'],
  ['/v1/modes/dorian/A/fretboard?capoStrings=', '1,'],
  ['/v1/modes/dorian/A/fretboard?scaleLength=', '6'],
  ['/v1/rounds/major/A?meter=', '4/'],
  ['/v1/rounds/major/A?vamp=', '1,'],
  ['/v1/modes?name=', 'a '],
  ['/v1/modes?contains=', 'b'],
  ['/v1/modes/', 'sharp'],
  ['/v1/modes/', 'b4 '],
  ['/v1/instruments?q=', 'five '],
  ['/v1/search?notes=', 'A#'],
  ['/v1/modes/dorian/A?fields=', 'a.'],
])('%s with %s over and over is answered soon', async (path, part) => {
  const value = encodeURIComponent(`${part.repeat(Math.floor(LONG / part.length))}!`.slice(0, LONG));
  const begun = performance.now();
  const { status } = await ask(served.origin, path + value);
  expect(status).toBeLessThan(500);
  expect(performance.now() - begun).toBeLessThan(1500);
});

test('header fields with much in them are read soon', async () => {
  const begun = performance.now();
  for (const name of ['accept', 'accept-encoding', 'if-none-match', 'x-request-id', 'x-forwarded-for']) {
    for (const value of [','.repeat(7000), 'a/b;q=0.1,'.repeat(700), '"'.repeat(7000), ' '.repeat(7000)]) {
      const { status } = await ask(served.origin, '/v1/rounds/major/A', {
        headers: { [name]: `x${value}x` },
      });
      expect(status).toBeLessThan(500);
    }
  }
  expect(performance.now() - begun).toBeLessThan(3000);
});
