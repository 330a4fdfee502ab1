/**
 * A route as the page and its island show it: scale under scale, and between them the note that moved.
 */
import { escapeXml } from '@stillroot/notation';
import { comparePath, routePath } from '../facts/paths.ts';
import type { RouteStop } from '../facts/route.ts';
import { moveNotes, moveWords } from '../words/degrees.ts';
import { FIGURES } from '../words/interface.ts';
import { modeName } from '../words/names.ts';
import { counted } from '../words/numbers.ts';
import { ROUTES } from '../words/routes.ts';
import { NOUNS, routeOn } from '../words/sentences.ts';
import { signs } from '../words/signs.ts';
import { glyph } from './glyph.ts';
import { type NameOf, scaleLink } from './names.ts';
import { modeStrip } from './strip.ts';

/** A route in HTML. */
export function routeHtml(stops: readonly RouteStop[], nameOf: NameOf): string {
  const [first] = stops;
  const last = stops.at(-1);
  if (!first || !last) return '';
  const { root } = first.scale;
  const from = nameOf(first.scale.mode);
  const to = nameOf(last.scale.mode);
  const length = stops.length > 1 ? `${counted(stops.length - 1, ...NOUNS.step)}.` : ROUTES.sameScale;
  const pair = routeOn(modeName(from.name), modeName(to.name), signs(root.name));
  const links = [
    [routePath(to.slug, from.slug, root), ROUTES.back],
    [comparePath([from.slug, to.slug], root), ROUTES.compare],
  ].map(([path = '', text = '']) => `<a href="${escapeXml(path)}">${text}</a>`);
  return (
    `<h2 class="unseen">${pair}</h2>` +
    `<p class="where"><b>${pair}</b>: ${length}</p>` +
    `<ol class="round route">${stops.map((stop, at) => turn(stop, stops[at - 1], at, nameOf)).join('')}</ol>` +
    `<p class="screen">${stops.length > 1 ? links.join(' · ') : ''}</p>`
  );
}

function turn(
  { scale, moved }: RouteStop,
  before: RouteStop | undefined,
  at: number,
  nameOf: NameOf,
): string {
  const { mode } = scale;
  const move =
    before && moved
      ? `<ul class="moved" aria-label="${FIGURES.before}"><li>${glyph(moved.degree, mode.alterations[moved.degree - 1] ?? 0)} <span>${moveWords(moved)}: <b>${moveNotes(moved, before.scale, scale)}</b></span></li></ul>`
      : '';
  return (
    `<li class="turn">${move}<div class="turn-text"><p class="turn-degree">${at === 0 ? ROUTES.start : `${ROUTES.step} ${at}`}</p>` +
    `<h3>${scaleLink(scale, nameOf)}</h3><p class="turn-formula">${signs(mode.formula.join(' '))}</p>` +
    `<p class="turn-notes">${signs(scale.notes.join(' '))}</p></div><div class="neck-box">${modeStrip(mode, moved)}</div></li>`
  );
}
