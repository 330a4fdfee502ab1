/**
 * Sentences with something to fill in, in the language of this build.
 */
export * from '#words/sentences.ts';
