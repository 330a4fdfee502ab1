/**
 * Where and how something is played, in words.
 */
import type { FretRange, Neck, Style } from '@stillroot/core';
import { openStringNames } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { CHOOSER, FIGURES, STYLE_NAMES } from '../words/interface.ts';
import { capitalised } from '../words/numbers.ts';
import { signs } from '../words/signs.ts';

/** The neck that is drawn: `Six-string guitar, Drop D (D2 A2 D3 G3 B3 E4), capo at fret 2`. */
export function neckWords({ instrument, tuning, capoFret }: Neck): string {
  const strings = openStringNames(tuning).map(signedPitch).join(' ');
  const isNamed = instrument.tunings.some(({ id }) => id === tuning.id);
  const named = isNamed ? `${tuning.name} (${strings})` : strings;
  const capo = capoFret > 0 ? `, ${CHOOSER.capoShort} ${capoFret}` : '';
  return `${capitalised(instrument.name)}, ${named}${capo}`;
}

/** A pitch with proper signs: `E♭1`. */
export function signedPitch(name: string): string {
  const [, note = name, octave = ''] = /^(.*?)(-?\d+)$/.exec(name) ?? [];
  return signs(note) + octave;
}

/** `Frets 4 to 8`, or `Open strings to fret 4`. */
export function areaWords({ from, to }: FretRange): string {
  return from === 0 ? `Open strings to fret ${to}` : `Frets ${from} to ${to}`;
}

/** Why something cannot be played. */
export function howToPlay(reason: string | undefined): string {
  return reason === undefined ? '' : `<p class="reason">${FIGURES.cannot} ${escapeXml(signs(reason))}.</p>`;
}

/** The nearest thing that can be played, as a link that chooses it. */
export function nearest(alternative: { readonly style: Style; readonly fret: number } | undefined): string {
  if (alternative === undefined) return '';
  const { style, fret } = alternative;
  const words = `${STYLE_NAMES[style]}, from ${fret === 0 ? 'the open strings' : `fret ${fret}`}`;
  return `<p class="reason">${FIGURES.insteadOf} <a href="?style=${style}&amp;fret=${fret}" data-choose>${words}</a>.</p>`;
}
