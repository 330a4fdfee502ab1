/**
 * How a tuning typed by hand was taken, as it is told beside its field.
 */
import {
  type Instrument,
  openStringNames,
  ownTuning,
  readTuning,
  type Tuning,
  type TuningReading,
} from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { signedPitch } from '../markup/playing.ts';
import { READING, readingWords } from '../words/choices.ts';
import { instrumentName } from '../words/names.ts';
import { type Naming, renameNotes } from '../words/note-names.ts';
import { tuningName } from '../words/tunings.ts';
import type { ChosenNeck } from './neck-from.ts';

/** How notes are named: on the page, and by its reader. */
export interface Names {
  readonly shown: Naming;
  readonly own: Naming;
}

/**
 * The reading in HTML: the open strings, what they are known as, and what else the text could mean.
 * @param other open strings that were typed alike, in English names
 */
export function readingHtml(
  { reading, instrument }: ChosenNeck,
  instruments: readonly Instrument[],
  names: Names,
  other: string | undefined,
): string {
  if (!reading) return '';
  const { tuning, notation, guessed } = reading;
  const known = knownAs(tuning, instrument, instruments);
  const read = other === undefined ? undefined : readTuning(other, { instrument });
  const alternative = read?.ok ? read.value : reading.alternative;
  return [
    readingWords(inBothNames(tuning, names), notation, guessed),
    known === '' ? '' : `${READING.isNamed} ${escapeXml(known)}.`,
    alternative ? `${READING.couldMean} ${choosing(alternative, names)}.` : '',
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

function choosing({ tuning }: Pick<TuningReading, 'tuning'>, { own }: Names): string {
  const query = new URLSearchParams({ tuning: tuning.id });
  return `<a href="?${query}" data-choose>${openStrings(tuning, own)}</a>`;
}

/** In the reader's own names, and in English where the rest of the page has those. */
function inBothNames(tuning: Tuning, { shown, own }: Names): string {
  const [owns, english] = [openStrings(tuning, own), openStrings(tuning, 'english')];
  return shown === 'english' && owns !== english ? `${owns} (${READING.inEnglish} ${english})` : owns;
}

function openStrings(tuning: Tuning, naming: Naming): string {
  return renameNotes(openStringNames(tuning).map(signedPitch).join(' '), naming, 'all');
}
