/**
 * How an edition of the site is built: its language, its address, and where its texts lie.
 */
import type { AstroUserConfig } from 'astro';
import type { Language } from '../words/languages.ts';

/** The site's own folder. */
export const SITE_ROOT: string = `${import.meta.dirname}/../../`;

/** Where the built site will be found. */
export const ORIGIN: string = process.env['SITE_ORIGIN'] ?? 'http://127.0.0.1:8080';

/** Read by the first script of every page and by all islands alike. */
const SHARED_EARLY = { name: 'choices', test: /islands\/(?:choices|storage)\.ts$/ } as const;

/** Astro's settings for an edition. */
export function editionConfig({ code, base }: Language) {
  return {
    site: ORIGIN,
    base,
    // Fonts and icons are there once, at the top.
    publicDir: base === '/' ? './public' : './src/words/no-public-files',
    trailingSlash: 'always',
    build: { format: 'directory', inlineStylesheets: 'never', concurrency: 8 },
    devToolbar: { enabled: false },
    vite: {
      // Scripts and styles stay files of their own, so that thousands of pages share them.
      build: {
        assetsInlineLimit: 0,
        cssCodeSplit: false,
        // What the first script shares with the islands lies beside it, so that it stays small itself.
        rolldownOptions: { output: { codeSplitting: { groups: [SHARED_EARLY] } } },
      },
      // The texts of this edition's language; without a build they are English, as package.json says.
      resolve: {
        alias: [{ find: /^#words\//, replacement: `${SITE_ROOT}src/words/${code}/` }],
      },
      ssr: {
        // The catalogue's own dependencies are not the site's, so they are bundled with it.
        noExternal: [/^@stillroot\//, 'zod', 'fastest-levenshtein'],
        external: ['@resvg/resvg-js'],
      },
    },
  } as const satisfies AstroUserConfig;
}
