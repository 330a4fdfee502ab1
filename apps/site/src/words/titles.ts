/**
 * Titles that the server and the browser both write, in the language of this build.
 */
export * from '#words/titles.ts';
