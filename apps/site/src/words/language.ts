/**
 * The language of this build.
 */
export * from '#words/language.ts';
