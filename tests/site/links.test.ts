/**
 * The built site as a whole: every page is there, and no link or anchor leads nowhere.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { CATALOGUE } from '@stillroot/catalog';
import { EVERYDAY_ROOTS } from '@stillroot/core';
import { Parser } from 'htmlparser2';
import { describe, expect, test } from 'vitest';
import { SITE_FOLDER } from '../browser/browser.ts';

const files = new Set(
  readdirSync(SITE_FOLDER, { recursive: true, encoding: 'utf8' }).map(
    (file) => `/${file.replaceAll('\\', '/')}`,
  ),
);

const CHURCH_MODES_BY_BRIGHTNESS = [
  'lydian',
  'ionian',
  'mixolydian',
  'dorian',
  'aeolian',
  'phrygian',
  'locrian',
];

/** What a page points at, and what can be pointed at in it. */
interface PageLinks {
  readonly targets: ReadonlySet<string>;
  readonly anchors: ReadonlySet<string>;
}

/** The most that a page may weigh, in bytes as they are sent. */
const BUDGETS: readonly (readonly [kind: string, path: string, bytes: number])[] = [
  ['a mode on a root', '/modes/dorian-sharp4/a/index.html', 16_000],
  ['the map', '/map/index.html', 60_000],
  ['a comparison', '/compare/dorian-and-phrygian/index.html', 16_000],
  ['a route', '/routes/lydian-to-locrian/index.html', 16_000],
  ['the search', '/search/index.html', 16_000],
  ['the index of the search', '/data/search.json', 40_000],
];

test.each(BUDGETS)('%s stays light', (_kind, path, bytes) => {
  expect(gzipSync(readFileSync(join(SITE_FOLDER, path))).length).toBeLessThan(bytes);
});

describe('pages', () => {
  test.each([
    ['families', CATALOGUE.families.map(({ slug }) => `/families/${slug}`)],
    ['modes', CATALOGUE.modes.map(({ slug }) => `/modes/${slug}`)],
    [
      'modes on roots',
      CATALOGUE.modes.flatMap(({ slug }) => EVERYDAY_ROOTS.map((root) => `/modes/${slug}/${root.slug}`)),
    ],
    [
      'rounds',
      CATALOGUE.families.flatMap(({ slug }) => EVERYDAY_ROOTS.map((root) => `/rounds/${slug}/${root.slug}`)),
    ],
    ['instruments', CATALOGUE.instruments.map(({ id }) => `/instruments/${id}`)],
    [
      'pairs of church modes, compared',
      CHURCH_MODES_BY_BRIGHTNESS.flatMap((first, at) =>
        CHURCH_MODES_BY_BRIGHTNESS.slice(at + 1).map((second) => `/compare/${first}-and-${second}`),
      ),
    ],
  ])('of all %s are built', (_kind, paths) => {
    expect(paths.length).toBeGreaterThan(10);
    expect(paths.filter((path) => !files.has(`${path}/index.html`))).toEqual([]);
  });

  test('are listed in a sitemap', () => {
    expect(files.has('/sitemap-index.xml')).toBe(true);
    expect(files.has('/sitemap-0.xml')).toBe(true);
  });
});

test('no link or anchor of any page leads nowhere', () => {
  const pages = new Map(
    [...files].filter((file) => file.endsWith('.html')).map((file) => [file, linksOf(file)] as const),
  );
  const broken = new Set<string>();
  // Thousands of pages point at the same places; an absolute address means the same on all of them.
  const known = new Map<string, boolean>();
  let count = 0;
  for (const [file, { targets }] of pages) {
    for (const target of targets) {
      count += 1;
      const isFine = known.get(target) ?? leadsSomewhere(target, file, pages);
      if (target.startsWith('/')) known.set(target, isFine);
      if (!isFine) broken.add(`${file} -> ${target}`);
    }
  }
  expect(pages.size).toBeGreaterThan(9000);
  expect(count).toBeGreaterThan(100_000);
  expect([...broken].slice(0, 20)).toEqual([]);
}, 240_000);

test('a link or an anchor that leads nowhere would be noticed', () => {
  const pages = new Map([['/index.html', { targets: new Set<string>(), anchors: new Set(['here']) }]]);
  expect(leadsSomewhere('/#here', '/index.html', pages)).toBe(true);
  expect(leadsSomewhere('#there', '/index.html', pages)).toBe(false);
  expect(leadsSomewhere('/modes/dorain/', '/index.html', pages)).toBe(false);
});

/** The API answers its own addresses and is tested for itself; a query does not choose another file. */
function leadsSomewhere(target: string, from: string, pages: ReadonlyMap<string, PageLinks>): boolean {
  const { pathname, hash, host } = new URL(target, `http://site${from.replace(/index\.html$/, '')}`);
  if (host !== 'site' || pathname.startsWith('/v1/')) return true;
  const file = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
  if (hash === '') return files.has(file);
  return pages.get(file)?.anchors.has(decodeURIComponent(hash.slice(1))) ?? false;
}

function linksOf(file: string): PageLinks {
  const targets = new Set<string>();
  const anchors = new Set<string>();
  const parser = new Parser({
    onopentag: (_name, attributes) => {
      for (const key of ['href', 'src', 'action']) {
        const target = attributes[key];
        if (target !== undefined) targets.add(target);
      }
      if (attributes['id'] !== undefined) anchors.add(attributes['id']);
    },
  });
  parser.end(readFileSync(join(SITE_FOLDER, file), 'utf8'));
  return { targets, anchors };
}
