/**
 * The texts of the pages of instruments. British English.
 */
import type { Clef } from '@stillroot/catalog';
import { counted, joined, numberWord, tenths } from './numbers.ts';

export const INSTRUMENTS = {
  aliases: 'Also called',
  find: 'Find an instrument',
  findHint: 'By name, number of strings or tuning: five strings low B, mandolin, DADGAD.',
  notFound: 'No instrument fits all of these words. Leave one out, or look through the whole list.',
  failed: 'The list could not be fetched; the whole of it is below.',
  notServed: 'Instruments that are not here',
  notServedLead: 'These are asked for and cannot be served, and why.',
  strings: 'Strings',
  builtWith: 'built with',
  writing: 'Written in',
  fromMemory: 'From memory, not checked against a source:',
  inTuning: 'Round',
  tuningFromMemory: 'from memory',
  roundsLead: 'From the root of its lowest open string; a tuning that you choose above goes along.',
  picture: 'Picture',
} as const;

/** How many instruments fit what was typed. */
export function foundWords(count: number, of: number): string {
  return count === of ? `All ${count} instruments.` : `${counted(count, 'instrument')} of ${of}.`;
}

/** `six strings`; `four courses, eight strings` where strings lie together. */
export function stringCountWords(courses: number, strings: number): string {
  return courses === strings
    ? counted(strings, 'string')
    : `${counted(courses, 'course')}, ${counted(strings, 'string')}`;
}

/** What is built: `610 to 670 mm`, or the one value there is. */
export function rangeWords(range: { readonly from: number; readonly to: number }, unit = ''): string {
  const { from, to } = range;
  return `${from === to ? tenths(from) : `${tenths(from)} to ${tenths(to)}`}${unit}`;
}

const CLEFS: Readonly<Record<Clef['sign'], string>> = { G: 'treble clef', F: 'bass clef', C: 'alto clef' };

/** How it is written: `treble clef with an 8 below; sounds an octave lower than written without the 8`. */
export function writingWords({ sign, octaveChange }: Clef, soundingMinusWritten: number): string {
  const eight = octaveChange === 0 ? '' : ` with an 8 ${octaveChange < 0 ? 'below' : 'above'}`;
  const octaves = Math.abs(soundingMinusWritten) / 12;
  const far = octaves === 1 ? 'an octave' : `${numberWord(octaves)} octaves`;
  const sounds =
    soundingMinusWritten === 0
      ? 'sounds as written'
      : `sounds ${far} ${soundingMinusWritten < 0 ? 'lower' : 'higher'} than written in the plain clef`;
  return `${CLEFS[sign]}${eight}; ${sounds}`;
}

const FIELDS: Readonly<Record<string, string>> = {
  fretsRange: 'the range of frets',
  frets: 'the number of frets',
  scaleLengthMm: 'the scale length',
  scaleLengthRangeMm: 'the range of scale lengths',
  clef: 'the clef',
  tunings: 'some tunings',
  aliases: 'other names',
  midiProgram: 'the sound in MIDI files',
  partialFrets: 'which frets there are',
};

/** Facts that are from memory: `the number of frets and the clef`. */
export function recalledWords(fields: readonly string[]): string {
  return joined(fields.map((field) => FIELDS[field] ?? field));
}
