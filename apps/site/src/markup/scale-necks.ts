/**
 * A scale on a neck: the whole neck, and one fingering with its fingers.
 */
import type { Fingering, FingeringAnswer, Neck, Scale } from '@stillroot/core';
import { drawFingering, drawFretboard, escapeXml, type Labels } from '@stillroot/notation';
import { FIGURES, STYLE_NAMES } from '../words/interface.ts';
import { capitalised } from '../words/numbers.ts';
import { signs } from '../words/signs.ts';
import { neckFigure } from './neck-figure.ts';
import { areaWords, howToPlay, nearest, neckWords, signedPitch } from './playing.ts';

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
  const figure = neckFigure(whole, { leftHanded, id: 'whole', isWhole: true });
  const where = `<p class="where"><b>${escapeXml(neckWords(neck))}</b></p>`;
  return where + figure + (answer ? fingeringHtml(view, answer) : '');
}

function fingeringHtml(view: ScaleView, answer: FingeringAnswer): string {
  const { neck, scale, name, labels, leftHanded } = view;
  const [best] = answer.fingerings;
  const heading = `<h3>${capitalised(STYLE_NAMES[answer.style])}</h3>`;
  if (!best) {
    const { alternative } = answer;
    const instead = alternative && { style: alternative.style, fret: alternative.fingering.area.from };
    return `${heading}${howToPlay(answer.reason)}${nearest(instead)}`;
  }
  const drawing = drawFingering(neck, scale, best, `${name}, ${areaWords(best.area)}`, { labels });
  const figure = neckFigure(drawing, { leftHanded, id: 'place', isWhole: false });
  const cautions = answer.cautions.map((caution) => `<p>${escapeXml(caution)}</p>`);
  return (
    `${heading}<div class="fingering">${figure}<div><p class="where">${handWords(best)}.</p>${fingerTable(neck, best)}</div></div>` +
    `<div class="cautions">${cautions.join('')}</div>`
  );
}

function handWords({ area, reachMm, cost }: Fingering): string {
  const hand = cost.travelMm === 0 ? FIGURES.stays : `${FIGURES.travels} ${Math.round(cost.travelMm)} mm`;
  return `${areaWords(area)}; ${FIGURES.opens} ${Math.round(reachMm)} mm; ${hand}`;
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
