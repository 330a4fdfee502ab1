/**
 * Where and how something is played, in words.
 */
import type { Caution, Neck, Reason, Style } from '@stillroot/core';
import { openStringNames } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { fretCountWords, onStrings, scaleLengthWords } from '../words/choices.ts';
import { CHOOSER, FIGURES, STYLE_NAMES } from '../words/interface.ts';
import { fretWords } from '../words/measures.ts';
import { instrumentName } from '../words/names.ts';
import { styleFrom } from '../words/necks.ts';
import { capitalised } from '../words/numbers.ts';
import { cautionWords, reasonWords } from '../words/reasons.ts';
import { signs } from '../words/signs.ts';
import { tuningName } from '../words/tunings.ts';

/** The neck that is drawn: `Six-string guitar, Drop D (D2 A2 D3 G3 B3 E4), capo at fret 2`. */
export function neckWords(neck: Neck): string {
  const { instrument, tuning, capoFret, capoStrings } = neck;
  const strings = openStringNames(tuning).map(signedPitch).join(' ');
  const isNamed = instrument.tunings.some(({ id }) => id === tuning.id);
  const named = isNamed ? `${tuningName(instrument, tuning)} (${strings})` : strings;
  const isPartial = capoStrings.length > 0 && capoStrings.length < neck.strings.length;
  const on = isPartial ? ` ${onStrings(capoStrings)}` : '';
  const capo = capoFret > 0 ? `, ${CHOOSER.capoShort} ${fretWords(capoFret)}${on}` : '';
  return `${capitalised(instrumentName(instrument))}, ${named}${capo}${builtWords(neck)}`;
}

/** Where a neck is not built as its instrument usually is: its lengths and its frets. */
function builtWords({ instrument, strings, slots }: Neck): string {
  const [treble, bass] = [strings[0], strings.at(-1)].map((string) => string?.scaleLengthMm ?? 0);
  const lengths = [...new Set([bass, treble])] as readonly number[];
  const isOwnLength = lengths.length === 1 && lengths[0] === instrument.scaleLengthMm;
  const frets = slots.at(-1)?.fret ?? 0;
  return (
    (isOwnLength ? '' : `, ${scaleLengthWords(lengths)}`) +
    (frets === instrument.frets || instrument.partialFrets ? '' : `, ${fretCountWords(frets)}`)
  );
}

/** A pitch with proper signs: `E♭1`. */
export function signedPitch(name: string): string {
  const [, note = name, octave = ''] = /^(.*?)(-?\d+)$/.exec(name) ?? [];
  return signs(note) + octave;
}

/** Why something cannot be played. */
export function howToPlay(reason: Reason | undefined): string {
  return reason === undefined
    ? ''
    : `<p class="reason">${FIGURES.cannot} ${escapeXml(reasonWords(reason))}.</p>`;
}

/** What to take care of. */
export function careful(cautions: readonly Caution[]): string {
  const words = cautions.map((caution) => `<p>${escapeXml(cautionWords(caution))}</p>`);
  return `<div class="cautions">${words.join('')}</div>`;
}

/** The nearest thing that can be played, as a link that chooses it. */
export function nearest(alternative: { readonly style: Style; readonly fret: number } | undefined): string {
  if (alternative === undefined) return '';
  const { style, fret } = alternative;
  const words = styleFrom(STYLE_NAMES[style], fret);
  return `<p class="reason">${FIGURES.insteadOf} <a href="?style=${style}&amp;fret=${fret}" data-choose>${words}</a>.</p>`;
}
