/**
 * The texts of the pages of instruments, in the language of this build.
 */
export * from '#words/instruments.ts';
