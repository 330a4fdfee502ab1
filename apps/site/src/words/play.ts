/**
 * The texts of the play-along, in the language of this build.
 */
export * from '#words/play.ts';
