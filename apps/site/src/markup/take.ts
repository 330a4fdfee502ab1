/**
 * What a reader can take a page along with: a lesson, its link, paper. Hidden until a script runs.
 */
import { pagePath } from '../facts/paths.ts';
import { LESSON } from '../words/lesson.ts';

/** Links and buttons as HTML, with room to say how they fared; a page that is but a list goes into no lesson. */
export function takeHtml(isList = false): string {
  return (
    (isList ? '' : `<a href="${pagePath('/lesson/')}" data-lesson>${LESSON.add}</a> `) +
    `<button type="button" data-copy="${LESSON.copied}" data-failed="${LESSON.copyByHand}">${LESSON.copy}</button> ` +
    `<button type="button" data-print>${LESSON.print}</button> <span role="status"></span>`
  );
}
