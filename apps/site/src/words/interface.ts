/**
 * The texts of the interface, in the language of this build.
 */
export * from '#words/interface.ts';
