/**
 * A round as the page shows it: seven necks over one root, and before each the notes that moved.
 */
import { degreeIn, type Mode, type Neck, type Round, type RoundMode } from '@stillroot/core';
import { drawFingering, escapeXml, type Labels } from '@stillroot/notation';
import { moveNotes, moveWords } from '../words/degrees.ts';
import { FIGURES } from '../words/interface.ts';
import { ordinalWord } from '../words/numbers.ts';
import { signs } from '../words/signs.ts';
import { glyph } from './glyph.ts';
import { keyHtml } from './key.ts';
import { type NameOf, scaleLink, scaleName } from './names.ts';
import { neckFigure } from './neck-figure.ts';
import { areaWords, howToPlay, nearest, neckWords } from './playing.ts';

/** A round and how it is to be shown. */
export interface RoundView {
  readonly round: Round;
  readonly neck: Neck;
  /** The mode on the family's first degree. */
  readonly head: Mode;
  readonly nameOf: NameOf;
  readonly labels: Labels;
  readonly leftHanded: boolean;
  /** The level of the heading of each mode. */
  readonly headingLevel: 2 | 3;
}

/** A round as HTML. */
export function roundHtml(view: RoundView): string {
  const { round, neck } = view;
  const reachMm = Math.max(0, ...round.modes.map(({ fingering }) => fingering?.reachMm ?? 0));
  const place = round.area ? `${areaWords(round.area)}; ${FIGURES.opens} ${Math.round(reachMm)} mm` : '';
  const where = [`<b>${escapeXml(neckWords(neck))}</b>`, place].filter((part) => part !== '').join('. ');
  const cautions = round.cautions.map((caution) => `<p>${escapeXml(caution)}</p>`).join('');
  return (
    `<p class="where">${where}.</p>${howToPlay(round.reason)}${nearest(round.alternative)}` +
    `<ol class="round">${round.modes.map((_, at) => turn(view, at)).join('')}</ol>` +
    `<div class="round-foot">${keyHtml()}<div class="cautions">${cautions}</div></div>`
  );
}

function turn(view: RoundView, at: number): string {
  const { round, head, nameOf, headingLevel } = view;
  const one = round.modes[at] as RoundMode;
  const { scale } = one;
  const degree = degreeIn(head, scale.mode);
  const heading = `<h${headingLevel}>${scaleLink(scale, nameOf)}</h${headingLevel}>`;
  return (
    `<li class="turn">${moved(round.modes[at - 1], one)}` +
    `<div class="turn-text"><p class="turn-degree">${ordinalWord(degree)} mode</p>${heading}` +
    `<p class="turn-formula">${signs(scale.mode.formula.join(' '))}</p>` +
    `<p class="turn-notes">${signs(scale.notes.join(' '))}</p></div>${picture(view, at)}</li>`
  );
}

function picture({ round, neck, nameOf, labels, leftHanded }: RoundView, at: number): string {
  const { scale, fingering, reason } = round.modes[at] as RoundMode;
  if (!fingering || !round.area)
    return reason ? `<p class="reason">${FIGURES.leftOut} ${escapeXml(signs(reason))}.</p>` : '';
  const before = round.modes[at - 1]?.scale;
  const title = `${scaleName(scale.root, nameOf(scale.mode).name)}, ${areaWords(round.area)}`;
  const drawing = drawFingering(neck, scale, fingering, title, {
    labels,
    area: round.area,
    ...(before && { before }),
  });
  return neckFigure(drawing, { leftHanded, id: `turn${at + 1}`, isWhole: false });
}

function moved(before: RoundMode | undefined, { scale, moved: moves }: RoundMode): string {
  if (!before) return '';
  const items = moves.map(
    (move) =>
      `<li>${glyph(move.degree, scale.mode.alterations[move.degree - 1] ?? 0)} <span>${moveWords(move)}: <b>${moveNotes(move, before.scale, scale)}</b></span></li>`,
  );
  return `<ul class="moved" aria-label="${FIGURES.before}">${items.join('')}</ul>`;
}
