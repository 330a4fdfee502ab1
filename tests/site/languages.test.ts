/**
 * The editions of the built site: every page says its language and where its other editions are, and they
 * say the same of it.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Parser } from 'htmlparser2';
import { describe, expect, test } from 'vitest';
import { SITE_FOLDER } from '../browser/browser.ts';

const CODES = ['en', 'de', 'es'] as const;

/** What a page says of its language. */
interface Said {
  readonly lang: string;
  readonly canonical: string;
  /** Paths by language. */
  readonly alternates: ReadonlyMap<string, string>;
  /** The language that each link to another page is marked with. */
  readonly links: readonly { readonly href: string; readonly hreflang: string | undefined }[];
}

const pages: ReadonlyMap<string, Said> = new Map(
  readdirSync(SITE_FOLDER, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    // Thousands of scales and rounds are alike in this; those of one mode and one family stand for them.
    .filter(
      (file) =>
        file.endsWith('index.html') &&
        (!/^(modes|rounds)\/[^/]+\/[^/]+\//.test(file) || /\/(dorian|major)\//.test(file)),
    )
    .map((file) => [`/${file.replace(/index\.html$/, '')}`, saidBy(file)] as const),
);

describe('every page', () => {
  test('says the language of its edition', () => {
    const wrong = [...pages].filter(([path, { lang }]) => lang !== editionOf(path));
    expect(wrong.map(([path, { lang }]) => `${path} says ${lang}`)).toEqual([]);
    expect(pages.size).toBeGreaterThan(900);
  });

  test('names all its editions, which are there and name it too, or none', () => {
    const faults: string[] = [];
    for (const [path, { alternates }] of pages) {
      if (alternates.size === 0) continue;
      if ([...alternates.keys()].toSorted().join() !== 'de,en,es,x-default') faults.push(`${path}: not all`);
      if (alternates.get(editionOf(path)) !== path) faults.push(`${path}: not itself`);
      if (alternates.get('x-default') !== alternates.get('en')) faults.push(`${path}: default`);
      for (const [code, other] of alternates) {
        const back = pages.get(other)?.alternates.get(editionOf(path));
        if (back !== path) faults.push(`${path}: ${code} ${other} leads back to ${back}`);
      }
    }
    expect(faults.slice(0, 10)).toEqual([]);
  });

  test('of another language has the English one beside it', () => {
    // What other sites show within their pages is no page to be found.
    const others = [...pages].filter(([path]) => editionOf(path) !== 'en' && !path.includes('/embed/'));
    expect(others.length).toBeGreaterThan(1300);
    expect(
      others.filter(([path, { alternates }]) => alternates.get('en') !== path.slice(3)).map(([path]) => path),
    ).toEqual([]);
  });

  test('marks links that lead to another language', () => {
    const wrong = new Set<string>();
    for (const [path, { links }] of pages) {
      for (const { href, hreflang } of links) {
        const { pathname, host } = new URL(href, `http://site${path}`);
        const isPage = host === 'site' && pathname.endsWith('/') && !pathname.startsWith('/v1/');
        if (isPage && editionOf(pathname) !== editionOf(path) && hreflang !== editionOf(pathname))
          wrong.add(`${path} -> ${href} (${hreflang})`);
      }
    }
    expect([...wrong].slice(0, 10)).toEqual([]);
  });
});

test('scales and rounds on roots are there in English only, and lead to the nearest page', () => {
  expect(pages.get('/modes/dorian/a/')?.alternates.size).toBe(0);
  expect(existsSync(join(SITE_FOLDER, 'de/modes/dorian/a/index.html'))).toBe(false);
  const there = pages.get('/modes/dorian/a/')?.links.filter(({ hreflang }) => hreflang !== undefined);
  expect(there).toEqual([
    { href: '/de/modes/dorian/?root=a', hreflang: 'de' },
    { href: '/es/modes/dorian/?root=a', hreflang: 'es' },
  ]);
});

test('the sitemap lists every edition', () => {
  const index = readFileSync(join(SITE_FOLDER, 'sitemap-index.xml'), 'utf8');
  for (const file of ['/sitemap-0.xml', '/de/sitemap-0.xml', '/es/sitemap-0.xml']) {
    expect(index).toContain(`${file}</loc>`);
    expect(existsSync(join(SITE_FOLDER, file))).toBe(true);
  }
  expect(readFileSync(join(SITE_FOLDER, 'de/sitemap-0.xml'), 'utf8')).toContain('/de/families/major/</loc>');
});

function editionOf(path: string): string {
  return CODES.find((code) => path.startsWith(`/${code}/`)) ?? 'en';
}

function saidBy(file: string): Said {
  let lang = '';
  let canonical = '';
  const alternates = new Map<string, string>();
  const links: Said['links'][number][] = [];
  const parser = new Parser({
    onopentag: (name, { lang: said, rel, href, hreflang }) => {
      if (name === 'html') lang = said ?? '';
      if (href === undefined) return;
      if (name === 'a') links.push({ href, hreflang });
      if (rel === 'canonical') canonical = new URL(href).pathname;
      if (rel === 'alternate' && hreflang !== undefined) alternates.set(hreflang, new URL(href).pathname);
    },
  });
  parser.end(readFileSync(join(SITE_FOLDER, file), 'utf8'));
  return { lang, canonical, alternates, links };
}
