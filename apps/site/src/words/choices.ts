/**
 * The texts of the choices, in the language of this build.
 */
export * from '#words/choices.ts';
