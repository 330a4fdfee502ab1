/**
 * Numbers and lists in words, in the language of this build.
 */
export * from '#words/numbers.ts';
