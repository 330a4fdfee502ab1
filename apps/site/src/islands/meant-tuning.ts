/**
 * From the words for a tuning, in whatever names its reader uses, to those in which it is kept in the address:
 * the id of a tuning, or open strings in English names.
 */
import { type Instrument, ownTuning, readTuning, tuningNamed } from '@stillroot/core';
import type { Naming } from '../words/note-names.ts';
import { englishTunings } from '../words/typed-tuning.ts';

/** What a text means, and what else it could. */
export interface MeantTuning {
  /** An id or open strings; what cannot be read is kept. */
  readonly tuning: string;
  /** Open strings; absent where the text can mean nothing else. */
  readonly other?: string;
}

/**
 * What somebody typed who names notes so. Where it can be read in two namings, one that gives a tuning which
 * this instrument has comes first, then one that gives a tuning of another.
 * @example typedTuning('H E A D G H E', guitar, [guitar], 'german') // 'B E A D G B E'
 * @example typedTuning('Drop-D', guitar, [guitar], 'english')       // 'drop-d'
 */
export function typedTuning(
  text: string,
  instrument: Instrument,
  instruments: readonly Instrument[],
  naming: Naming,
): MeantTuning {
  const known = idIn(text, instrument);
  if (known !== undefined) return { tuning: known };
  const ways = englishTunings(text, naming);
  const readable = ways.flatMap((way) => {
    const read = readTuning(way, { instrument });
    return read.ok ? [{ way, tuning: read.value.tuning }] : [];
  });
  const best =
    readable.find(({ way }) => isTuningOf(instrument, way)) ??
    readable.find(({ way }) => instruments.some((one) => isTuningOf(one, way))) ??
    readable[0];
  // With octaves the problem is told of one string, which is then the one that is no note in own names either.
  if (!best) return { tuning: named([text, ...ways], instrument) ?? (/\d/.test(text) ? ways[0] : text) };
  const other = readable.find(({ tuning }) => tuning.id !== best.tuning.id);
  return { tuning: best.way, ...(other && { other: other.way }) };
}

/**
 * What stands in an address, where English names come first; a form that was sent without a script, and a hand
 * that wrote the address, may have left others there, or the name of a tuning.
 */
export function addressedTuning(text: string, instrument: Instrument, naming: Naming): string {
  const known = text === '' ? '' : idIn(text, instrument);
  if (known !== undefined || readTuning(text, { instrument }).ok) return known ?? text;
  const ways = englishTunings(text, naming);
  const readable = ways.find((way) => readTuning(way, { instrument }).ok);
  return readable ?? named([text, ...ways], instrument) ?? text;
}

/** Whether an instrument has such a tuning; octaves that are not told are its own. */
function isTuningOf(instrument: Instrument, openStrings: string): boolean {
  const read = readTuning(openStrings, { instrument });
  return read.ok && ownTuning(instrument, read.value.tuning) !== undefined;
}

function idIn(text: string, { tunings }: Instrument): string | undefined {
  return tunings.find(({ id }) => id === text.trim())?.id;
}

function named(texts: readonly string[], instrument: Instrument): string | undefined {
  for (const text of texts) {
    const tuning = tuningNamed(instrument, text);
    if (tuning) return tuning.id;
  }
  return undefined;
}
