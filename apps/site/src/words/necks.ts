/**
 * Necks and fingerings in words, in the language of this build.
 */
export * from '#words/necks.ts';
