/**
 * A lesson as its page shows it. Everything in it came by a link, so all of it is escaped.
 */
import { escapeXml } from '@stillroot/notation';
import { pagePath, searchPath } from '../facts/paths.ts';
import type { Lesson, LessonFault } from '../islands/lesson-link.ts';
import { LESSON_LIMITS } from '../islands/lesson-link.ts';
import type { ListedPage } from '../islands/lesson-pages.ts';
import { NAVIGATION } from '../words/interface.ts';
import { LESSON } from '../words/lesson.ts';
import { hreflang } from './english.ts';

/** A page, or the path of one whose name is not known. */
export type ShownPage = ListedPage | { readonly path: string; readonly title?: undefined };

/** The note and the pages, each with its place in the lesson, for who follows it. */
export function lessonHtml(
  { note }: Lesson,
  pages: readonly (ShownPage & { readonly at: number })[],
): string {
  const paragraphs = note
    .split(/\n+/)
    .filter((line) => line.trim() !== '')
    .map((line) => `<p class="prose">${escapeXml(line)}</p>`);
  const items = pages.map((page) => {
    const chosen =
      page.title !== undefined && page.choices !== '' ? `<br><span>${escapeXml(page.choices)}</span>` : '';
    return `<li><a href="${escapeXml(page.path)}"${hreflang(page.path)} data-page="${page.at}" data-exact>${escapeXml(page.title ?? page.path)}</a>${chosen}</li>`;
  });
  const list =
    items.length === 0
      ? `<p class="note">${LESSON.empty} ${toPagesHtml()}</p>`
      : `<ol class="lesson-pages" aria-label="${LESSON.pageNames}">${items.join('')}</ol>`;
  return paragraphs.join('') + list;
}

/** Links to where pages for a lesson are found. */
export function toPagesHtml(): string {
  const links = [
    [pagePath('/rounds/'), NAVIGATION.rounds],
    [pagePath('/modes/'), NAVIGATION.modes],
    [searchPath(), NAVIGATION.search],
  ];
  return links.map(([path, text]) => `<a href="${path}">${text}</a>`).join(' · ');
}

/** What is wrong with the link, in sentences. */
export function faultsHtml(faults: readonly LessonFault[]): string {
  return faults
    .map((fault) => {
      if (fault.kind === 'changed') return `<p>${LESSON.changed}</p>`;
      if (fault.kind === 'too-many') return `<p>${LESSON.tooMany} ${LESSON_LIMITS.pages}.</p>`;
      return `<p>${LESSON.notPage} <b>${escapeXml(fault.text.slice(0, 120))}</b></p>`;
    })
    .join('');
}

/** The pages in the form, each with what can be done to it. */
export function pageRowsHtml(pages: readonly ShownPage[]): string {
  return pages
    .map((page, at) => {
      const name = escapeXml(page.title ?? page.path);
      const button = (act: 'up' | 'down' | 'remove', isOff = false): string =>
        `<button type="button" data-act="${act}" data-at="${at}"${isOff ? ' disabled' : ''}>${LESSON[act]}<span class="unseen"> ${name}</span></button>`;
      const buttons = [button('up', at === 0), button('down', at === pages.length - 1), button('remove')];
      return `<li><span>${name}</span><span class="acts">${buttons.join('')}</span></li>`;
    })
    .join('');
}

/** For every page that other sites can show: the HTML that shows it. */
export function embedsHtml(pages: readonly ShownPage[], origin: string): string {
  return pages
    .flatMap((page, at) => {
      if (page.title === undefined || page.embed === undefined) return [];
      const code = `<iframe src="${escapeXml(origin + page.embed)}" title="${escapeXml(page.title)}" width="100%" height="640" loading="lazy"></iframe>`;
      return [
        `<div class="field"><label for="embed-${at}">${escapeXml(page.title)}</label><textarea id="embed-${at}" rows="3" readonly spellcheck="false">${escapeXml(code)}</textarea></div>`,
      ];
    })
    .join('');
}
