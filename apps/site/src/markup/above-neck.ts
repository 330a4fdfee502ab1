/**
 * What stands between a scale's table and its neck: how its notes are to be read, its parent and its twin.
 */
import type { Scale } from '@stillroot/core';
import { familyPath, roundPath } from '../facts/paths.ts';
import type { ScalePage } from '../facts/scale-page.ts';
import { modeName } from '../words/names.ts';
import { PAGES } from '../words/pages.ts';
import { placeInParent, placeOfParent, withRound } from '../words/sentences.ts';
import { signs } from '../words/signs.ts';

/** Paragraphs in HTML. */
export function aboveNeck(page: ScalePage, link: (scale: Scale) => string): string {
  const { scale, family, parent, twin, hasReadable, degreeOfParent } = page;
  const name = modeName(family.name);
  const place =
    parent.mode === scale.mode
      ? placeOfParent(`<a href="${familyPath(family.slug)}">${name}</a>`)
      : placeInParent(degreeOfParent, link(parent));
  const round = withRound(place, name, signs(scale.root.name), roundPath(family.slug, scale.root));
  const kinder = twin
    ? `${PAGES.kinder} ${link(twin)}, ${PAGES.sameSound}: ${signs(twin.notes.join(' '))}.`
    : '';
  return [
    hasReadable ? `<p class="note">${PAGES.readableNote}</p>` : '',
    `<p class="place">${round}</p>`,
    kinder && `<p class="note">${kinder}</p>`,
  ].join('');
}
