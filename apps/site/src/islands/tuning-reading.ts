/**
 * How a tuning typed by hand was taken, as it is told beside its field.
 */
import {
  type Instrument,
  openStringNames,
  ownTuning,
  type Tuning,
  type TuningReading,
} from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { signedPitch } from '../markup/playing.ts';
import { READING, readingWords } from '../words/choices.ts';
import { instrumentName } from '../words/names.ts';
import { tuningName } from '../words/tunings.ts';
import type { ChosenNeck } from './neck-from.ts';

/** The reading in HTML: the open strings, what they are known as, and what else the text could mean. */
export function readingHtml({ reading, instrument }: ChosenNeck, instruments: readonly Instrument[]): string {
  if (!reading) return '';
  const { tuning, notation, guessed, alternative } = reading;
  const known = knownAs(tuning, instrument, instruments);
  return [
    readingWords(openStrings(tuning), notation, guessed),
    known === '' ? '' : `${READING.isNamed} ${escapeXml(known)}.`,
    alternative ? `${READING.couldMean} ${choosing(alternative)}.` : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** The name of a tuning on its instrument, or else on the first other that has it. */
function knownAs(tuning: Tuning, own: Instrument, instruments: readonly Instrument[]): string {
  const here = ownTuning(own, tuning);
  if (here) return tuningName(own, here);
  for (const instrument of instruments) {
    const there = ownTuning(instrument, tuning);
    if (there) return `${tuningName(instrument, there)} (${instrumentName(instrument)})`;
  }
  return '';
}

function choosing({ tuning }: Pick<TuningReading, 'tuning'>): string {
  const query = new URLSearchParams({ tuning: tuning.id });
  return `<a href="?${query}" data-choose>${openStrings(tuning)}</a>`;
}

function openStrings(tuning: Tuning): string {
  return openStringNames(tuning).map(signedPitch).join(' ');
}
