/**
 * The texts of the pages themselves, in the language of this build.
 */
export * from '#words/pages.ts';
