/**
 * A family as a picture of the size that previews of links have: its seven modes on the semitones of an
 * octave, from bright to dark, each with its degrees' shapes. Paper, ink and tones are those of the pages.
 */
import type { FamilyEntry } from '@stillroot/catalog';
import type { Mode } from '@stillroot/core';
import { GLYPH_DEFINITIONS, toneOf } from '@stillroot/notation';

const WIDTH = 1200;
const HEIGHT = 630;
const LEFT = 132;
const TOP = 75;
const SEMITONE = (WIDTH - 2 * LEFT) / 12;
const ROW = (HEIGHT - 2 * TOP) / 6;
/** A glyph is this much of its size on pages. */
const SCALE = 1.8;

const STYLE = `.mark{stroke:#1e1a15;stroke-width:1.6;fill:#fffdf8}.root{fill:#1e1a15}.lowered{stroke:#0072b2;fill:#e2eff7}.raised{stroke:#d55e00;fill:#fbe8db}.fret{stroke:#a99f8f;stroke-width:3;fill:none}`;

/** The picture as SVG, without any text. */
export function familyPicture({ modes }: FamilyEntry): string {
  const rows = modes
    .map(({ mode }) => mode)
    .toSorted((a, b) => b.brightness - a.brightness)
    .map((mode, at) => row(mode, TOP + at * ROW));
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}">` +
    `<style>${STYLE}</style><defs>${GLYPH_DEFINITIONS}</defs><path fill="#faf7f0" d="M0 0h${WIDTH}v${HEIGHT}H0z"/>${rows.join('')}</svg>`
  );
}

function row(mode: Mode, y: number): string {
  const x = (semitone: number): number => LEFT + semitone * SEMITONE;
  const ticks = Array.from({ length: 13 }, (_, semitone) => `M${x(semitone)} ${y - 9}v18`).join('');
  const marks = [...mode.semitones, 12].map((semitone, at) => {
    const degree = (at % 7) + 1;
    const tone = degree === 1 ? 'root' : toneOf(mode.alterations[degree - 1] ?? 0);
    return `<g class="mark ${tone}" transform="translate(${x(semitone)} ${y})scale(${SCALE})"><use href="#degree-${degree}"/></g>`;
  });
  return `<path class="fret" d="M${LEFT} ${y}H${x(12)}${ticks}"/>${marks.join('')}`;
}
