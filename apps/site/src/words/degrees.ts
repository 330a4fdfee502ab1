/**
 * Degrees and moves in words, in the language of this build.
 */
export * from '#words/degrees.ts';
