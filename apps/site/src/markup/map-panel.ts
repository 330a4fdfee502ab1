/**
 * What the map says of a mode that is pointed at.
 */
import { type Mode, neighboursOf, type Root } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { comparePath, modePath, routePath, scalePath } from '../facts/paths.ts';
import { baseWords, moveWords } from '../words/degrees.ts';
import { MAP } from '../words/map.ts';
import { scaleOn } from '../words/names.ts';
import { signs } from '../words/signs.ts';
import { hreflang } from './english.ts';
import { glyph } from './glyph.ts';

/** A mode as the map knows it: how it is called, where it is linked, and its place in its family. */
export interface MapMode {
  readonly mode: Mode;
  readonly name: string;
  readonly slug: string;
  /** `4th mode of harmonic minor, brightness −1` */
  readonly place: string;
}

/** A mode, and what stands beside it in the panel. */
export interface MapPanelView {
  readonly here: MapMode;
  /** The church mode that it is read from. */
  readonly base: MapMode;
  /** Where routes to it begin. */
  readonly start: MapMode;
  /** What the scale that the panel links to stands on. */
  readonly root: Root;
  readonly of: (mode: Mode) => MapMode;
}

/** The panel in HTML. */
export function mapPanelHtml({ here, base, start, root, of }: MapPanelView): string {
  const { mode, name, slug, place } = here;
  const formula = mode.alterations.map((alteration, at) => glyph(at + 1, alteration)).join('');
  const links = [
    [scalePath(slug, root), scaleOn(root.name, name)],
    ...(base.mode === mode ? [] : [[comparePath([base.slug, slug]), `${MAP.compareWith} ${base.name}`]]),
    ...(start.mode === mode ? [] : [[routePath(start.slug, slug), `${MAP.routeFrom} ${start.name}`]]),
  ].map(
    ([path = '', text = '']) =>
      `<li><a href="${escapeXml(path)}"${hreflang(path)}>${escapeXml(text)}</a></li>`,
  );
  const neighbours = neighboursOf(mode).map(({ mode: other, moved }) => {
    const { name: otherName, slug: otherSlug } = of(other);
    return `<li><a href="${modePath(otherSlug)}">${escapeXml(otherName)}</a><br><span>${moveWords(moved)}</span></li>`;
  });
  return (
    `<div><div><h2><a href="${modePath(slug)}">${escapeXml(name)}</a></h2>` +
    `<p>${escapeXml(place)}.</p><p>${baseWords(mode.base, mode.alterations)}.</p>` +
    `<p class="formula-glyphs" aria-hidden="true">${formula}</p><p class="unseen">${signs(mode.formula.join(' '))}</p>` +
    `<ul class="plain-list">${links.join('')}</ul></div>` +
    `<div><h3>${MAP.neighbours} <span class="note">${MAP.neighboursLead}</span></h3><ul class="plain-list neighbours">${neighbours.join('')}</ul></div></div>`
  );
}
