/**
 * Lists of links that stand on many pages.
 */
import { CATALOGUE } from '@stillroot/catalog';
import { EVERYDAY_ROOTS, type Root } from '@stillroot/core';
import { pagePath } from '../facts/paths.ts';
import { PAGES } from '../words/pages.ts';
import { signs } from '../words/signs.ts';
import { hreflang } from './english.ts';

/** The 17 everyday roots as links. */
export function rootsHtml(pathOf: (root: Root) => string, label: string, current?: Root): string {
  const items = EVERYDAY_ROOTS.map((root) => {
    const here = root === current ? ' aria-current="page"' : '';
    return `<li><a href="${pathOf(root)}"${hreflang(pathOf(root))}${here}>${signs(root.name)}</a></li>`;
  });
  return `<ul class="roots" aria-label="${label}">${items.join('')}</ul>`;
}

/**
 * For readers without a script: a form that asks for the API's picture on any instrument, by its name. The
 * list of them is a page away: on thousands of pages it would weigh more than all else that they say.
 */
export function picturesHtml(pictureOf: (instrumentId: string) => string): string {
  const id = CATALOGUE.instruments[0]?.id ?? '';
  const [path = ''] = pictureOf(id).split('?');
  return `<noscript><form action="${path}"><label>${PAGES.withoutScript} <input name="instrument" value="${id}"></label> <button>${PAGES.showPicture}</button> <a href="${pagePath('/instruments/')}">${PAGES.instrumentsTitle}</a></form></noscript>`;
}

/** A list whose items are HTML already. */
export function plainList(items: readonly string[]): string {
  return `<ul class="plain-list">${items.map((item) => `<li>${item}</li>`).join('')}</ul>`;
}
