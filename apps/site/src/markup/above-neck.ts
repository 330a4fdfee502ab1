/**
 * What stands between a scale's table and its neck: how its notes are to be read, its parent and its twin.
 */
import type { Scale } from '@stillroot/core';
import { familyPath, roundPath } from '../facts/paths.ts';
import type { ScalePage } from '../facts/scale-page.ts';
import { ordinalWord } from '../words/numbers.ts';
import { PAGES } from '../words/pages.ts';
import { signs } from '../words/signs.ts';

/** Paragraphs in HTML. */
export function aboveNeck(page: ScalePage, link: (scale: Scale) => string): string {
  const { scale, family, parent, twin, hasReadable, degreeOfParent } = page;
  const name = signs(family.name);
  const place =
    parent.mode === scale.mode
      ? `The parent scale of the family <a href="${familyPath(family.slug)}">${name}</a>`
      : `The ${ordinalWord(degreeOfParent)} mode of ${link(parent)}`;
  const round = `<a href="${roundPath(family.slug, scale.root)}">the round of ${name} from ${signs(scale.root.name)}</a>`;
  const kinder = twin
    ? `${PAGES.kinder} ${link(twin)}, ${PAGES.sameSound}: ${signs(twin.notes.join(' '))}.`
    : '';
  return [
    hasReadable ? `<p class="note">${PAGES.readableNote}</p>` : '',
    `<p class="place">${place}; in ${round}.</p>`,
    kinder && `<p class="note">${kinder}</p>`,
  ].join('');
}
