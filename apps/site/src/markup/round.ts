/**
 * A round as the page shows it: seven necks over one root, and before each the notes that moved.
 */
import {
  DEFAULT_REACH_MM,
  degreeIn,
  type Mode,
  movedDegrees,
  type Neck,
  type Round,
  type RoundMode,
  type Scale,
  spell,
} from '@stillroot/core';
import { drawFingering, escapeXml, type Labels } from '@stillroot/notation';
import { baseModeOf } from '../facts/base-mode.ts';
import type { Against } from '../islands/choices.ts';
import { COSTS, roundBeginsHigher } from '../words/choices.ts';
import { moveNotes, moveWords } from '../words/degrees.ts';
import { FIGURES } from '../words/interface.ts';
import { areaWords, neckInWords } from '../words/necks.ts';
import { PLAY } from '../words/play.ts';
import { reasonWords } from '../words/reasons.ts';
import { modeAt } from '../words/sentences.ts';
import { signs } from '../words/signs.ts';
import { glyph } from './glyph.ts';
import { keyHtml } from './key.ts';
import { type NameOf, scaleLink, scaleName } from './names.ts';
import { neckFigure } from './neck-figure.ts';
import { careful, howToPlay, nearest, neckWords } from './playing.ts';

/** A round and how it is to be shown. */
export interface RoundView {
  readonly round: Round;
  readonly neck: Neck;
  /** The mode on the family's first degree. */
  readonly head: Mode;
  readonly nameOf: NameOf;
  readonly labels: Labels;
  readonly leftHanded: boolean;
  /** What the arrows are drawn against; the mode above where absent. */
  readonly against?: Against;
  /** The fret from which its one area was asked for; anywhere where absent. */
  readonly fromFret?: number;
  /** The reach of the hand that plays; the usual one where absent. */
  readonly reachMm?: number;
  /** The level of the heading of each mode. */
  readonly headingLevel: 2 | 3;
  /** Whether the page plays the round, and any mode of it alone. */
  readonly isPlayed: boolean;
}

/** A round as HTML. */
export function roundHtml(view: RoundView): string {
  const { round, neck } = view;
  const reachMm = Math.max(0, ...round.modes.map(({ fingering }) => fingering?.reachMm ?? 0));
  const place = round.area ? `${areaWords(round.area)}; ${FIGURES.opens} ${Math.round(reachMm)} mm` : '';
  const where = [`<b>${escapeXml(neckWords(neck))}</b>`, place].filter((part) => part !== '').join('. ');
  return (
    `<p class="where">${where}.</p>${howToPlay(round.reason)}${higher(view)}${nearest(round.alternative)}` +
    `<ol class="round">${round.modes.map((_, at) => turn(view, at)).join('')}</ol>` +
    `<div class="round-foot">${keyHtml()}${careful(round.cautions)}</div>`
  );
}

/** Says where the area begins above the fret that was asked for; these styles take the next above it. */
function higher({ round: { area, style }, fromFret = 0, reachMm = DEFAULT_REACH_MM }: RoundView): string {
  const takesNext = style === 'position' || style === 'three-per-string';
  const isHigher = takesNext && fromFret > 0 && area !== undefined && area.from > fromFret;
  return isHigher ? `<p class="reason">${roundBeginsHigher(fromFret, reachMm)}</p>` : '';
}

function turn(view: RoundView, at: number): string {
  const { round, head, nameOf, headingLevel } = view;
  const { scale } = round.modes[at] as RoundMode;
  const degree = degreeIn(head, scale.mode);
  const heading = `<h${headingLevel}>${scaleLink(scale, nameOf)}</h${headingLevel}>`;
  return (
    `<li class="turn">${moved(view, at)}` +
    `<div class="turn-text"><p class="turn-degree">${modeAt(degree)}</p>${heading}` +
    `<p class="turn-formula">${signs(scale.mode.formula.join(' '))}</p>` +
    `<p class="turn-notes">${signs(scale.notes.join(' '))}</p>${playButton(view, at)}</div>${picture(view, at)}</li>`
  );
}

/** A button that plays this mode alone; its number counts the modes that are played. */
function playButton({ round, nameOf, isPlayed }: RoundView, at: number): string {
  const { scale, fingering } = round.modes[at] as RoundMode;
  if (!isPlayed || !fingering) return '';
  const turn = round.modes.slice(0, at + 1).filter((one) => one.fingering).length;
  const name = scaleName(scale.root, nameOf(scale.mode).name);
  return `<button type="button" class="turn-play screen" data-turn="${turn}" aria-label="${PLAY.play}: ${name}">${PLAY.play}</button>`;
}

function picture(view: RoundView, at: number): string {
  const { round, neck, nameOf, labels, leftHanded } = view;
  const { scale, fingering, reason } = round.modes[at] as RoundMode;
  if (!fingering || !round.area)
    return reason ? `<p class="reason">${FIGURES.leftOut} ${escapeXml(reasonWords(reason))}.</p>` : '';
  const before = comparedWith(view, at);
  const title = `${scaleName(scale.root, nameOf(scale.mode).name)}, ${areaWords(round.area)}`;
  const drawing = drawFingering(neck, scale, fingering, title, {
    labels,
    area: round.area,
    ...(before && { before }),
  });
  const described = { ...drawing, description: neckInWords(drawing, scale, fingering) };
  return neckFigure(described, { leftHanded, id: `turn${at + 1}`, isWhole: false });
}

/** The scale that a mode's arrows are drawn against; undefined where it is compared with nothing. */
function comparedWith({ round, against = 'above' }: RoundView, at: number): Scale | undefined {
  const { scale } = round.modes[at] as RoundMode;
  if (against === 'base') return spell(baseModeOf(scale.mode), scale.root);
  if (at === 0) return undefined;
  return round.modes[against === 'first' ? 0 : at - 1]?.scale;
}

function moved(view: RoundView, at: number): string {
  const { round, nameOf, against = 'above' } = view;
  const { scale } = round.modes[at] as RoundMode;
  const before = comparedWith(view, at);
  if (!before) return '';
  const items = movedDegrees(before.mode.semitones, scale.mode.semitones).map(
    (move) =>
      `<li>${glyph(move.degree, scale.mode.alterations[move.degree - 1] ?? 0)} <span>${moveWords(move)}: <b>${moveNotes(move, before, scale)}</b></span></li>`,
  );
  const other = before.mode === scale.mode ? COSTS.ownBase : `${COSTS.against} ${scaleLink(before, nameOf)}`;
  const named = against === 'above' ? '' : `<li class="against">${other}</li>`;
  return `<ul class="moved" aria-label="${FIGURES.before}">${named}${items.join('')}</ul>`;
}
