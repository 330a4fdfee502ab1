/**
 * A comparison as the page and its island show it: the table, what is shared, and the neck.
 */
import { degreeIn, type Mode, type Neck, parentScale, type Scale } from '@stillroot/core';
import { escapeXml, type Labels } from '@stillroot/notation';
import type { ComparedCell, Comparison } from '../facts/comparison.ts';
import { COMPARE } from '../words/compare.ts';
import { moveNotes, movesWords, moveVerb } from '../words/degrees.ts';
import { modeName } from '../words/names.ts';
import { capitalised, joined } from '../words/numbers.ts';
import { againstFirst, placeInParent, placeOfParent } from '../words/sentences.ts';
import { signs } from '../words/signs.ts';
import { compareNeckHtml, pipsSvg } from './compare-neck.ts';
import { glyph } from './glyph.ts';
import { type ModeName, type NameOf, scaleLink, scaleName } from './names.ts';
import { neckWords } from './playing.ts';

/** The first mode of a mode's family, and the family's name. */
export type HeadOf = (mode: Mode) => { readonly head: Mode; readonly familyName: string };

/** A comparison and how it is to be shown. */
export interface ComparisonView {
  readonly comparison: Comparison;
  readonly neck: Neck;
  readonly nameOf: NameOf;
  readonly headOf: HeadOf;
  readonly labels: Labels;
  readonly leftHanded: boolean;
}

/** A comparison in HTML. */
export function comparisonHtml(view: ComparisonView): string {
  return `<div class="compare-top${view.comparison.scales.length > 2 ? ' many' : ''}">${tableHtml(view)}<div>${againstHtml(view)}${placesHtml(view)}${sharedHtml(view)}</div></div>${neckHtml(view)}`;
}

function tableHtml({ comparison: { scales, degrees }, nameOf }: ComparisonView): string {
  const heads = scales.map(
    (scale, at) => `<th scope="col">${pipsOf(scales, at)} ${scaleLink(scale, nameOf)}</th>`,
  );
  const rows = degrees.map(({ degree, cells, isShared }) => {
    const tds = cells.map((cell, at) => `<td>${cellHtml(degree, cell, at > 0)}</td>`);
    return `<tr${isShared ? ' class="shared"' : ''}><th scope="row">${degree}</th>${tds.join('')}</tr>`;
  });
  return (
    `<div class="table-box" role="region" tabindex="0" aria-label="${COMPARE.degreeByDegree}"><table class="plain compared">` +
    `<thead><tr><th scope="col">${COMPARE.degree}</th>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`
  );
}

function cellHtml(degree: number, { note, alteration, by }: ComparedCell, isAgainst: boolean): string {
  const move = !isAgainst
    ? ''
    : by === 0
      ? `<span class="unseen">${COMPARE.stays}</span>`
      : ` <span class="by">${moveVerb(by)}</span>`;
  return `${glyph(degree, alteration)}<b>${signs(note)}</b>${move}`;
}

function pipsOf(scales: readonly Scale[], at: number): string {
  return pipsSvg(scales.map((_, other) => other === at));
}

/** One line for each further scale: what moves to reach it from the first. */
function againstHtml({ comparison: { scales, against }, nameOf }: ComparisonView): string {
  const [first] = scales;
  if (!first) return '';
  const items = against.map(({ scale, moved, inCommon }) => {
    const notes = moved.map((move) => moveNotes(move, first, scale)).join(', ');
    const what = moved.length > 0 ? `${movesWords(moved)} <b>(${notes})</b>` : COMPARE.sameScale;
    return `<li>${againstFirst(nameIn(first, nameOf), nameIn(scale, nameOf), what, inCommon)}</li>`;
  });
  return `<ul class="plain-list prose against">${items.join('')}</ul>`;
}

/** Where each scale stands in its family, so that who came with a place sees it found. */
function placesHtml({ comparison: { scales }, nameOf, headOf }: ComparisonView): string {
  const rows = scales.map((scale) => {
    const { head, familyName } = headOf(scale.mode);
    const degree = degreeIn(head, scale.mode);
    const place =
      degree === 1
        ? placeOfParent(escapeXml(modeName(familyName)))
        : placeInParent(
            degree,
            nameIn(parentScale(scale, head), () => ({ name: familyName })),
          );
    return [nameIn(scale, nameOf), place] as const;
  });
  return factsHtml(rows, 'facts in-words');
}

function sharedHtml({ comparison: { scales, inAll, notInAll }, nameOf }: ComparisonView): string {
  const where = scales.length > 2 ? COMPARE.inAllOf : COMPARE.inBoth;
  const rows = [
    [capitalised(where), inAll] as const,
    ...scales.map(
      (scale, at) => [`${COMPARE.notShared} ${nameIn(scale, nameOf)}`, notInAll[at] ?? []] as const,
    ),
  ].filter(([, notes]) => notes.length > 0);
  return factsHtml(rows.map(([name, notes]) => [name, signs(notes.join(' '))] as const));
}

function factsHtml(rows: readonly (readonly [name: string, html: string])[], kind = 'facts'): string {
  return `<dl class="${kind}">${rows.map(([name, html]) => `<div><dt>${name}</dt><dd>${html}</dd></div>`).join('')}</dl>`;
}

function neckHtml({ comparison: { scales }, neck, nameOf, labels, leftHanded }: ComparisonView): string {
  const names = scales.map((scale) => scaleName(scale.root, nameOf(scale.mode).name));
  const inAll = scales.length > 2 ? COMPARE.inAllOf : COMPARE.inBoth;
  const title = `${joined(names)}, ${neckWords(neck)}`;
  const figure = compareNeckHtml({ neck, scales, names, title, labels, leftHanded, inAll });
  const lines = [
    [glyph(1, 0), COMPARE.keyRoot],
    [glyph(5, 0, true), `${inAll}${COMPARE.keyShared}`],
    ...scales.map(
      (_, at) => [pipsOf(scales, at), `${COMPARE.onlyIn} ${escapeXml(names[at] ?? '')}`] as const,
    ),
  ];
  const key = lines.map(
    ([sign, words]) => `<li><span class="glyphs">${sign}</span><span>${words}</span></li>`,
  );
  return (
    `<section aria-labelledby="compared-neck"><h2 id="compared-neck">${COMPARE.onOneNeck}</h2>` +
    `<p class="where"><b>${escapeXml(neckWords(neck))}</b></p>${figure}<ul class="key">${key.join('')}</ul></section>`
  );
}

function nameIn({ root, mode }: Scale, nameOf: (mode: Mode) => Pick<ModeName, 'name'>): string {
  return escapeXml(scaleName(root, nameOf(mode).name));
}
