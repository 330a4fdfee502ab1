/**
 * The way through a lesson, at the foot of the screen while its pages are read.
 */
import { escapeXml } from '@stillroot/notation';
import { pagePath } from '../facts/paths.ts';
import { LESSON, pageOf } from '../words/lesson.ts';
import { hreflang } from './english.ts';

/** A lesson that is gone through, and where. */
export interface WalkView {
  readonly title: string;
  readonly pages: readonly string[];
  /** What stands behind the `#` of its link. */
  readonly lesson: string;
  /** The page that is open, from 0. */
  readonly at: number;
}

/** The way through a lesson as HTML. */
export function walkHtml({ title, pages, lesson, at }: WalkView): string {
  const name = escapeXml(title === '' ? LESSON.title : title);
  const to = (page: number, text: string): string => {
    const path = pages[page];
    return path === undefined
      ? ''
      : `<li><a href="${escapeXml(path)}"${hreflang(path)} data-page="${page}" data-exact>${text}</a></li>`;
  };
  return (
    `<nav class="walk screen" aria-label="${LESSON.walk}"><div><a href="${pagePath('/lesson/')}#${escapeXml(lesson)}">${name}</a> ` +
    `<span>${pageOf(at + 1, pages.length)}</span></div><ul class="walk-ways">${to(at - 1, LESSON.previous)}${to(at + 1, LESSON.next)}</ul></nav>`
  );
}
