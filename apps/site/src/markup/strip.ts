/**
 * A mode as a strip: its degrees on the twelve semitones of an octave, its steps underneath.
 */
import type { Mode, MovedDegree } from '@stillroot/core';
import { toneOf } from '@stillroot/notation';
import { stripWords } from '../words/sentences.ts';
import { glyphMark } from './glyph.ts';

const SEMITONE = 31;
const LEFT = 20;
const MIDDLE = 19;
const HEIGHT = 52;

/**
 * The strip of a mode as SVG.
 * @param moved the degree that has just moved, whose old place is drawn as a ring with an arrow
 */
export function modeStrip(mode: Mode, moved?: MovedDegree): string {
  const width = LEFT * 2 + 12 * SEMITONE;
  const x = (semitone: number): number => LEFT + semitone * SEMITONE;
  const ticks = Array.from({ length: 13 }, (_, semitone) => `M${x(semitone)} ${MIDDLE - 5}v10`).join('');
  const ends = [...mode.semitones, 12];
  const marks = ends.map((semitone, at) => {
    const degree = (at % 7) + 1;
    const alteration = mode.alterations[degree - 1] ?? 0;
    const place = ` transform="translate(${x(semitone)} ${MIDDLE})"`;
    return glyphMark(degree, alteration, degree === 1 ? 'root' : toneOf(alteration), place);
  });
  const steps = mode.steps.map((step, at) => {
    const middle = x((ends[at] ?? 0) + step / 2);
    return `<text class="number" x="${middle}" y="${HEIGHT - 5}">${step}</text>`;
  });
  return (
    `<svg class="neck strip" viewBox="0 0 ${width} ${HEIGHT}" width="${width}" height="${HEIGHT}" role="img" aria-label="${stripWords(mode.semitones, mode.steps)}">` +
    `<path class="fret" d="M${LEFT} ${MIDDLE}H${x(12)}${ticks}"/>${moved ? arrow(mode, moved) : ''}${marks.join('')}${steps.join('')}</svg>`
  );
}

/** From the ring where a degree lay to the mark where it lies now. */
function arrow({ semitones }: Mode, { degree, by }: MovedDegree): string {
  const to = LEFT + (semitones[degree - 1] ?? 0) * SEMITONE;
  const from = to - by * SEMITONE;
  const way = Math.sign(by);
  const tip = to - way * 16;
  return (
    `<circle class="gone" cx="${from}" cy="${MIDDLE}" r="9"/><path class="move" d="M${from + way * 9} ${MIDDLE}H${tip - way * 4}"/>` +
    `<path class="tip" d="M${tip} ${MIDDLE}l${-way * 6}-4v8z"/>`
  );
}
