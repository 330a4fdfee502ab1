/**
 * The texts of the map, in the language of this build.
 */
export * from '#words/map.ts';
