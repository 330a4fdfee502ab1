/**
 * Lists of links that stand on many pages.
 */
import { CATALOGUE } from '@stillroot/catalog';
import { EVERYDAY_ROOTS, type Root } from '@stillroot/core';
import { capitalised } from '../words/numbers.ts';
import { PAGES } from '../words/pages.ts';
import { signs } from '../words/signs.ts';

/** The 17 everyday roots as links. */
export function rootsHtml(pathOf: (root: Root) => string, label: string, current?: Root): string {
  const items = EVERYDAY_ROOTS.map((root) => {
    const here = root === current ? ' aria-current="page"' : '';
    return `<li><a href="${pathOf(root)}"${here}>${signs(root.name)}</a></li>`;
  });
  return `<ul class="roots" aria-label="${label}">${items.join('')}</ul>`;
}

/** For readers without a script: the API's picture for every instrument. */
export function picturesHtml(pictureOf: (instrumentId: string) => string): string {
  const items = CATALOGUE.instruments.map(
    ({ id, name }) => `<li><a href="${pictureOf(id)}">${capitalised(name)}</a></li>`,
  );
  return `<noscript><p>${PAGES.withoutScript}</p><ul class="columns">${items.join('')}</ul></noscript>`;
}

/** A list whose items are HTML already. */
export function plainList(items: readonly string[]): string {
  return `<ul class="plain-list">${items.map((item) => `<li>${item}</li>`).join('')}</ul>`;
}
