/**
 * Why something cannot be played, and what to take care of, in the language of this build.
 */
export * from '#words/reasons.ts';
