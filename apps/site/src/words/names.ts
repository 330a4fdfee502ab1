/**
 * Names of modes, scales and instruments, in the language of this build.
 */
export * from '#words/names.ts';
