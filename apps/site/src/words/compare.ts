/**
 * The texts of comparisons, in the language of this build.
 */
export * from '#words/compare.ts';
