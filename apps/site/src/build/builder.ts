/**
 * A builder: a process that takes editions, and folders of the whole one, for as long as there are any, and
 * writes them into the built site. Astro's own files, which all builders write alike, pass through a folder of
 * the builder's own.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'astro';
import { LANGUAGES, type Language } from '../words/languages.ts';
import { editionConfig, SITE_ROOT } from './edition-config.ts';
import { filesIn, writeOver } from './files.ts';
import { sharedPages } from './shared-pages.ts';
import { sitemapOf } from './sitemap-of.ts';
import { askFor, endWork } from './work.ts';

/** What the editions in other languages would only repeat. */
const REPEATED: ReadonlySet<string> = new Set([
  'robots.txt',
  'sitemap-index.xml',
  'data/catalogue.json',
  'data/written.json',
]);

const [, , site = '', workshop = ''] = process.argv;
const written: string[] = [];

// All builders share the whole edition. One begins with it and lists its pages; the others come to it when no
// other edition is left, so that they do not all wait for the bundler at once, and all end together.
const isFirst = await askFor('/');
for (const language of isFirst ? LANGUAGES : LANGUAGES.toReversed()) {
  if (language.base === '/') await buildEdition(language, isFirst);
  else if (await askFor(language.base)) await buildEdition(language, true);
}
endWork(written);

async function buildEdition(language: Language, isListed: boolean): Promise<void> {
  const { code, base, name } = language;
  const isWhole = base === '/';
  const begun = performance.now();
  let pages = 0;
  const write = (path: string, content: Uint8Array): void => {
    if (!isWhole && REPEATED.has(path.slice(base.length))) return;
    if (path.endsWith('.html')) pages += 1;
    writeOver(join(site, path), content);
    written.push(path.slice(1));
  };
  const config = editionConfig(language);
  const outDir = join(workshop, 'edition', code);
  const cacheDir = join(workshop, 'cache');
  await build({
    ...config,
    configFile: false,
    root: SITE_ROOT,
    outDir,
    cacheDir,
    logLevel: 'warn',
    integrations: [
      sharedPages(isWhole ? askFor : async () => true, write),
      ...(isListed ? [await sitemapOf(language)] : []),
    ],
    vite: { ...config.vite, cacheDir },
  });
  for (const file of filesIn(outDir)) write(base + file, readFileSync(join(outDir, file)));
  const seconds = ((performance.now() - begun) / 1000).toFixed(2);
  console.log(`${name}: ${pages} page(s) built in ${seconds}s`);
}
