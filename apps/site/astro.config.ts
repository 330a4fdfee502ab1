/**
 * The site: static pages, one folder each, from core and the catalogue; one build for each language.
 */
import sitemap from '@astrojs/sitemap';
import { defineConfig } from 'astro/config';
import { isListed } from './src/facts/canonical.ts';
import { LANGUAGES } from './src/words/languages.ts';

const origin = process.env['SITE_ORIGIN'] ?? 'http://127.0.0.1:8080';
const asked = process.env['SITE_LANGUAGE'] ?? 'en';
const language = LANGUAGES.find(({ code }) => code === asked);
if (!language) throw new Error(`SITE_LANGUAGE is ${asked}; expected one of the languages of the site`);
const { code, base } = language;
const isWhole = base === '/';

export default defineConfig({
  site: origin,
  base,
  outDir: `./dist${base}`,
  // Fonts and icons are there once, at the top.
  publicDir: isWhole ? './public' : './src/words/no-public-files',
  trailingSlash: 'always',
  build: { format: 'directory', inlineStylesheets: 'never', concurrency: 8 },
  devToolbar: { enabled: false },
  integrations: [
    sitemap({
      filter: (page) => isListed(new URL(page).pathname),
      customSitemaps: isWhole ? LANGUAGES.slice(1).map((other) => `${origin}${other.base}sitemap-0.xml`) : [],
    }),
  ],
  vite: {
    // Scripts and styles stay files of their own, so that thousands of pages share them.
    build: { assetsInlineLimit: 0 },
    // The texts of this build's language; without a build they are English, as package.json says.
    resolve: {
      alias: [{ find: /^#words\//, replacement: `${import.meta.dirname}/src/words/${code}/` }],
    },
    ssr: {
      // The catalogue's own dependencies are not the site's, so they are bundled with it.
      noExternal: [/^@stillroot\//, 'zod', 'fastest-levenshtein'],
      external: ['@resvg/resvg-js'],
    },
  },
});
