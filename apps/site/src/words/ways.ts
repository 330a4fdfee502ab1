/**
 * The texts of links from one page to what belongs to it elsewhere, in the language of this build.
 */
export * from '#words/ways.ts';
