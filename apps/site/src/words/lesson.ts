/**
 * The texts of lessons and of what other sites show, in the language of this build.
 */
export * from '#words/lesson.ts';
