/**
 * On a page that was opened from a lesson: which of its pages this is, and the ways on, back, and to the
 * lesson itself.
 */
import { walkHtml } from '../markup/lesson-walk.ts';
import { openedPages, readLesson } from './lesson-link.ts';
import { keepWalk, readWalk } from './lesson-memory.ts';

const walk = readWalk();
const { pages: written, title } = readLesson(walk?.lesson ?? '').lesson;
const pages = openedPages(written);
const page = walk && pages[walk.at];

if (walk && page && new URL(page, location.origin).pathname === location.pathname) {
  document.querySelector('.foot')?.insertAdjacentHTML('beforebegin', walkHtml({ title, pages, ...walk }));
  document.querySelector('.walk')?.addEventListener('click', ({ target }) => {
    const link = target instanceof Element ? target.closest<HTMLElement>('[data-page]') : null;
    if (link) keepWalk({ ...walk, at: Number(link.dataset['page']) });
  });
} else {
  // Whoever has gone elsewhere is not followed about.
  keepWalk(undefined);
}
