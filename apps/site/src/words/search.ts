/**
 * The texts of the search, in the language of this build.
 */
export * from '#words/search.ts';
