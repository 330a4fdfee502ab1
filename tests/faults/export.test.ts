/**
 * Answers as files are the answers of the server.
 */
import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { catalogueAddresses, exportAnswers } from '@stillroot/api/export';
import { expect, test } from 'vitest';
import { serve } from '../api/server.ts';

test('the export has every family, mode, scale, instrument and round of the catalogue', () => {
  const addresses = catalogueAddresses();
  expect(new Set(addresses).size).toBe(addresses.length);
  const count = (pattern: RegExp) => addresses.filter((address) => pattern.test(address)).length;
  expect(count(/^\/v1\/families\/[^/]+$/)).toBe(66);
  expect(count(/^\/v1\/modes\/[^/]+$/)).toBe(462);
  expect(count(/^\/v1\/modes\/[^/]+\/[^/]+$/)).toBe(462 * 21);
  expect(count(/^\/v1\/rounds\//)).toBe(66 * 17);
});

test('each file holds what its address answers, packed copies too', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'stillroot-export-'));
  const most = 15;
  const { files } = await exportAnswers({ folder, most });
  expect(files).toBeGreaterThan(catalogueAddresses(most).length * 2);
  const served = await serve();
  for (const address of catalogueAddresses(most)) {
    const text = await (await fetch(served.origin + address)).text();
    const file = join(folder, `${decodeURIComponent(address)}.json`);
    expect(await readFile(file, 'utf8')).toBe(text);
    const packed = await readFile(`${file}.br`).catch(() => undefined);
    if (!packed) continue;
    expect(brotliDecompressSync(packed).toString('utf8')).toBe(text);
    expect(gunzipSync(await readFile(`${file}.gz`)).toString('utf8')).toBe(text);
  }
  const fields = await readFile(join(folder, 'v1', '_headers'), 'utf8');
  expect(fields).toContain('Access-Control-Allow-Origin: *');
  expect(fields).toContain('Cache-Control: public, max-age=3600');
  await served.close();
});
