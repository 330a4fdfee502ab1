/**
 * The texts of routes, in the language of this build.
 */
export * from '#words/routes.ts';
