/**
 * The site: static pages, one folder each, from core and the catalogue.
 */
import sitemap from '@astrojs/sitemap';
import { defineConfig } from 'astro/config';
import { isItsOwnCanonical } from './src/facts/canonical.ts';

export default defineConfig({
  site: process.env['SITE_ORIGIN'] ?? 'http://127.0.0.1:8080',
  trailingSlash: 'always',
  build: { format: 'directory', inlineStylesheets: 'never', concurrency: 8 },
  devToolbar: { enabled: false },
  integrations: [sitemap({ filter: (page) => isItsOwnCanonical(new URL(page).pathname) })],
  vite: {
    // Scripts and styles stay files of their own, so that thousands of pages share them.
    build: { assetsInlineLimit: 0 },
    // The catalogue's own dependencies are not the site's, so they are bundled with it.
    ssr: { noExternal: [/^@stillroot\//, 'zod', 'fastest-levenshtein'] },
  },
});
