/**
 * The built site as a whole: every page is there, and no link or anchor leads nowhere.
 */
import { execFile } from 'node:child_process';
import { readdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { CATALOGUE } from '@stillroot/catalog';
import { EVERYDAY_ROOTS } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { SITE_FOLDER } from '../browser/browser.ts';

const files = new Set((await readdir(SITE_FOLDER, { recursive: true })).map((file) => file.replaceAll('\\', '/')));

describe('pages', () => {
  test.each([
    ['families', CATALOGUE.families.map(({ slug }) => `families/${slug}`)],
    ['modes', CATALOGUE.modes.map(({ slug }) => `modes/${slug}`)],
    ['modes on roots', CATALOGUE.modes.flatMap(({ slug }) => EVERYDAY_ROOTS.map((root) => `modes/${slug}/${root.slug}`))],
    ['rounds', CATALOGUE.families.flatMap(({ slug }) => EVERYDAY_ROOTS.map((root) => `rounds/${slug}/${root.slug}`))],
    ['instruments', CATALOGUE.instruments.map(({ id }) => `instruments/${id}`)],
  ])('of all %s are built', (_kind, paths) => {
    expect(paths.length).toBeGreaterThan(10);
    expect(paths.filter((path) => !files.has(`${path}/index.html`))).toEqual([]);
  });

  test('are listed in a sitemap', () => {
    expect(files.has('sitemap-index.xml')).toBe(true);
    expect(files.has('sitemap-0.xml')).toBe(true);
  });
});

test('no link or anchor of any page leads nowhere', async () => {
  const entry = createRequire(import.meta.url).resolve('check-html-links');
  const command = join(dirname(entry), 'src', 'cli.js');
  const { stdout } = await promisify(execFile)(process.execPath, [command, SITE_FOLDER, '--ignore-link-pattern', '/v1/*'], {
    maxBuffer: 64 * 1024 * 1024,
  });
  expect(stdout).toMatch(/Checked \d+ links|[Aa]ll|found/);
}, 240_000);
