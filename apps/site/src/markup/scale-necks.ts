/**
 * A scale on a neck: the whole neck, and one fingering with its fingers.
 */
import {
  type AreaShift,
  cautionsFor,
  DEFAULT_REACH_MM,
  type Fingering,
  type FingeringAnswer,
  type Neck,
  type Scale,
} from '@stillroot/core';
import { drawFingering, drawFretboard, escapeXml, type Labels } from '@stillroot/notation';
import {
  answerWords,
  beginsHigher,
  beyondWords,
  COSTS,
  chainWords,
  costWords,
  positionWords,
  shiftWords,
} from '../words/choices.ts';
import { FIGURES, STYLE_NAMES } from '../words/interface.ts';
import { areaWords, neckInWords } from '../words/necks.ts';
import { capitalised } from '../words/numbers.ts';
import { signs } from '../words/signs.ts';
import { neckFigure } from './neck-figure.ts';
import { careful, howToPlay, nearest, neckWords, signedPitch } from './playing.ts';

/** A scale on a neck and how it is to be shown. */
export interface ScaleView {
  readonly neck: Neck;
  readonly scale: Scale;
  /** The scale's name, with signs. */
  readonly name: string;
  readonly labels: Labels;
  readonly leftHanded: boolean;
  /** Absent where only the whole neck is shown. */
  readonly answer?: FingeringAnswer;
  /** The reach of the hand that plays; the usual one where absent. */
  readonly reachMm?: number;
  /** The fret from which it was asked for; anywhere where absent. */
  readonly fromFret?: number;
  /** Which of its fingerings, from 1; absent on a page that was built, which has only the best. */
  readonly at?: number;
  /** The level of the heading above the fingering; 3 where absent. */
  readonly headingLevel?: 2 | 3;
}

/** The necks of a scale as HTML. */
export function scaleNecksHtml(view: ScaleView): string {
  const { neck, scale, name, labels, leftHanded, answer } = view;
  const whole = drawFretboard(
    neck,
    scale,
    `${name}, ${neckWords(neck)}`,
    labels === 'fingers' ? 'degrees' : labels,
  );
  const figure = neckFigure(
    { ...whole, description: neckInWords(whole, scale) },
    { leftHanded, id: 'whole', isWhole: true },
  );
  const where = `<p class="where"><b>${escapeXml(neckWords(neck))}</b></p>`;
  return where + figure + (answer ? fingeringHtml(view, answer) : '');
}

function fingeringHtml(view: ScaleView, answer: FingeringAnswer): string {
  const level = view.headingLevel ?? 3;
  const heading = `<h${level}>${capitalised(STYLE_NAMES[answer.style])}</h${level}>`;
  const { fingerings, alternative, beyondReach = [] } = answer;
  if (fingerings.length === 0) {
    const instead = alternative && { style: alternative.style, fret: alternative.fingering.area.from };
    const beyond = beyondReach.map((one) => `<li>${beyondWords(one)}</li>`).join('');
    return `${heading}${howToPlay(answer.reason)}${beyond && `<ul class="reason">${beyond}</ul>`}${nearest(instead)}${careful(answer.cautions)}`;
  }
  if (answer.shifts)
    return `${heading}${chainHtml(view, fingerings, answer.shifts)}${careful(answer.cautions)}`;
  const at = Math.min(view.at ?? 1, fingerings.length);
  const shown = fingerings[at - 1] as Fingering;
  const cautions = cautionsFor(shown.reachMm, view.reachMm ?? DEFAULT_REACH_MM);
  const { fromFret = shown.area.from, reachMm = DEFAULT_REACH_MM } = view;
  const isHigher = answer.style === 'position' && fromFret > 0 && shown.area.from > fromFret;
  const higher = isHigher ? `<p class="reason">${beginsHigher(fromFret, reachMm)}</p>` : '';
  return (
    `${heading}${higher}<div class="fingering">${placeHtml(view, shown, 'place')}<div><p class="where">${handWords(shown)}.</p>` +
    `${stepsHtml(view.at, fingerings.length)}${fingerTable(view.neck, shown)}</div></div>${careful(cautions)}`
  );
}

/** A fingering drawn in its area. */
function placeHtml(
  { neck, scale, name, labels, leftHanded }: ScaleView,
  fingering: Fingering,
  id: string,
): string {
  const { area } = fingering;
  const drawing = drawFingering(neck, scale, fingering, `${name}, ${areaWords(area)}`, { labels });
  const described = { ...drawing, description: neckInWords(drawing, scale, fingering) };
  return neckFigure(described, { leftHanded, id, isWhole: false });
}

/** Across the neck: area by area, with the shifts between them in words. */
function chainHtml(view: ScaleView, fingerings: readonly Fingering[], shifts: readonly AreaShift[]): string {
  const areas = fingerings.map((fingering, at) => {
    const shift = shifts[at];
    const after = shift ? `<p class="shift">${shiftWords(shift)}</p>` : '';
    return `<li>${placeHtml(view, fingering, at === 0 ? 'place' : `place${at + 1}`)}<p class="where">${handWords(fingering)}.</p>${after}</li>`;
  });
  return `<p class="where">${chainWords(fingerings.length)}</p><ol class="chain">${areas.join('')}</ol>`;
}

/** The way through the few best fingerings; a page that was built knows only the best of them. */
function stepsHtml(at: number | undefined, count: number): string {
  if (at === undefined) return `<p class="steps" data-js hidden>${choosing(2, COSTS.another)}</p>`;
  const here = Math.min(at, count);
  const steps = [
    answerWords(here, count),
    ...(at > count ? [COSTS.noMore] : []),
    ...(here > 1 ? [choosing(here - 1, COSTS.previous)] : []),
    ...(here < count ? [choosing(here + 1, COSTS.next)] : []),
  ];
  return `<p class="steps">${steps.join(' ')}</p>`;
}

function choosing(answer: number, text: string): string {
  return `<a href="?answer=${answer}" data-choose rel="nofollow">${text}</a>`;
}

function handWords({ area, reachMm, cost, positions }: Fingering): string {
  return `${areaWords(area)}, ${positionWords(positions)}; ${FIGURES.opens} ${Math.round(reachMm)} mm; ${costWords(cost)}`;
}

/** String by string, from string 1 as tablature has it: frets and fingers. */
function fingerTable(neck: Neck, { notes }: Fingering): string {
  const rows = neck.strings.flatMap(({ number }) => {
    const here = notes.filter(({ string }) => string === number);
    if (here.length === 0) return [];
    const cells = [
      here.map(({ fret }) => (fret === 0 ? FIGURES.openString : fret)).join(' '),
      here.map(({ finger }) => (finger === 0 ? '–' : finger)).join(' '),
      here.map(({ note }) => signs(note)).join(' '),
    ];
    return `<tr><th scope="row">${number} <span>${openName(neck, number)}</span></th>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`;
  });
  const heads = [FIGURES.string, FIGURES.frets, FIGURES.fingers, FIGURES.notes];
  return `<table class="plain"><thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function openName({ tuning }: Neck, number: number): string {
  const pitch = tuning.courses[tuning.courses.length - number]?.[0];
  return pitch ? signedPitch(pitch.name) : '';
}
