/**
 * The sitemap of an edition; that of the whole one leads to those of the others.
 */
import sitemap from '@astrojs/sitemap';
import type { AstroIntegration } from 'astro';
import { isFrame } from '../facts/editions.ts';
import { LANGUAGES, type Language } from '../words/languages.ts';
import { ORIGIN } from './edition-config.ts';

/** Lists an edition's pages. Only the whole one has scales, and so needs the catalogue to list each once. */
export async function sitemapOf({ base }: Language): Promise<AstroIntegration> {
  const isWhole = base === '/';
  const isListed = isWhole
    ? (await import('../facts/canonical.ts')).isListed
    : (path: string) => !isFrame(path);
  return sitemap({
    filter: (page) => isListed(new URL(page).pathname),
    customSitemaps: isWhole ? LANGUAGES.slice(1).map((other) => `${ORIGIN}${other.base}sitemap-0.xml`) : [],
  });
}
