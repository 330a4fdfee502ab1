/**
 * Pages that are there in English only, marked as such in the other editions.
 */
import { isEnglishOnly } from '../facts/editions.ts';
import { LANGUAGE } from '../words/language.ts';

/** What to say of the language of a linked page, where it is not the page's own. */
export function languageOf(path: string): 'en' | undefined {
  return LANGUAGE !== 'en' && isEnglishOnly(path) ? 'en' : undefined;
}

/** The same as an attribute in HTML, with its space. */
export function hreflang(path: string): string {
  return languageOf(path) === undefined ? '' : ' hreflang="en"';
}
