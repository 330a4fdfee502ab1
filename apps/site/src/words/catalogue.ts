/**
 * What the catalogue says in sentences, in the language of this build.
 */
export * from '#words/catalogue.ts';
