/**
 * The languages of the site. One build is one language: `#words/` stands for the folder of its texts, `en`
 * in package.json, another by the site's build.
 */

/** The languages, the one of the whole site first; each names itself in its own words. */
export const LANGUAGES = [
  { code: 'en', name: 'English', base: '/' },
  { code: 'de', name: 'Deutsch', base: '/de/' },
  { code: 'es', name: 'Español', base: '/es/' },
] as const;

/** A language of the site, and where its edition begins. */
export type Language = (typeof LANGUAGES)[number];

/** As BCP 47 has it. */
export type LanguageCode = Language['code'];

/** The shape of texts, whatever their language: the same names, the same functions, as many items. */
export type SameShape<T> = T extends string
  ? string
  : T extends (...given: never[]) => unknown
    ? T
    : { readonly [K in keyof T]: SameShape<T[K]> };
