/**
 * A whole score drawn: mode by mode, system by system, in whatever width there is.
 */
import { VexFlow } from 'vexflow/core';
import { systemsOf } from './play-score-layout.ts';
import type { ReadScore, ScoreBar } from './play-score-read.ts';
import { type DrawnNote, drawSystem } from './play-score-system.ts';

/** The page's music font, and what figures are set in. */
const FONTS = ['Stillroot Music', 'ui-sans-serif', 'system-ui', 'sans-serif'] as const;
/** A sign of the font, to ask whether it is there. */
const ANY_SIGN = '\uE050';

/** More bars than anyone reads on one page. */
const MOST_BARS = 240;

/** A drawn score. */
export interface DrawnScore {
  /** Each note that is struck, in order. */
  readonly notes: readonly DrawnNote[];
  readonly isWhole: boolean;
}

/** A part of a score under its own heading. */
export interface ScorePart {
  readonly heading: string;
  readonly bars: readonly ScoreBar[];
}

/** Makes the font ready; rejects where it cannot be had. */
export async function readyFont(): Promise<void> {
  const loaded = await document.fonts.load(`30px "${FONTS[0]}"`, ANY_SIGN);
  if (loaded.length === 0) throw new Error('the music font is missing');
  VexFlow.setFonts(...FONTS);
}

/** Draws a score into an element, which it empties first. The font must be ready. */
export function drawScore(
  inside: HTMLElement,
  score: ReadScore,
  width: number,
  labelOf: (heading: string) => string,
): DrawnScore {
  const bars = score.bars.slice(0, MOST_BARS);
  inside.replaceChildren();
  const notes: DrawnNote[] = [];
  const parts = partsOf(bars);
  for (const [at, { heading, bars: own }] of parts.entries()) {
    const part = inside.appendChild(document.createElement('div'));
    part.className = 'score-part';
    part.appendChild(document.createElement('p')).textContent = heading;
    for (const system of systemsOf(own, width, { isOpening: at === 0, isClosing: at === parts.length - 1 })) {
      const box = part.appendChild(document.createElement('div'));
      const drawn = drawSystem(box, score, system);
      drawn.svg.setAttribute('role', 'img');
      drawn.svg.setAttribute('aria-label', labelOf(`${heading}, ${numbersOf(system.bars)}`));
      notes.push(...drawn.notes);
    }
  }
  return { notes, isWhole: bars.length === score.bars.length };
}

function partsOf(bars: readonly ScoreBar[]): readonly ScorePart[] {
  const parts: { heading: string; bars: ScoreBar[] }[] = [];
  for (const bar of bars) {
    if (bar.heading !== undefined || parts.length === 0) parts.push({ heading: bar.heading ?? '', bars: [] });
    parts.at(-1)?.bars.push(bar);
  }
  return parts;
}

function numbersOf(bars: readonly ScoreBar[]): string {
  const [first, last] = [bars[0]?.number, bars.at(-1)?.number];
  return first === last ? `${first}` : `${first}–${last}`;
}
