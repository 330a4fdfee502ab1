/**
 * The site as it is developed: one edition, in English or in the language of SITE_LANGUAGE. `build.ts` builds
 * all of them.
 */
import { defineConfig } from 'astro/config';
import { editionConfig } from './src/build/edition-config.ts';
import { LANGUAGES } from './src/words/languages.ts';

const asked = process.env['SITE_LANGUAGE'] ?? 'en';
const language = LANGUAGES.find(({ code }) => code === asked);
if (!language) throw new Error(`SITE_LANGUAGE is ${asked}; expected one of the languages of the site`);

export default defineConfig(editionConfig(language));
