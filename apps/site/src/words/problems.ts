/**
 * What is wrong with something that was typed or chosen, in the language of this build.
 */
export * from '#words/problems.ts';
