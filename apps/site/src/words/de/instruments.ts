/**
 * Die Texte der Seiten über Instrumente. German.
 */
import type * as English from '../en/instruments.ts';
import type { SameShape } from '../languages.ts';
import { counted, joined, numberWord, tenths } from './numbers.ts';

export const INSTRUMENTS: SameShape<typeof English.INSTRUMENTS> = {
  aliases: 'Andere Namen, meist englisch:',
  find: 'Ein Instrument finden',
  findHint:
    'Nach Name, Zahl der Saiten oder Stimmung: Mandoline, Siebensaiter, fünf Saiten tiefes H, DADGAD.',
  notFound: 'Kein Instrument passt zu allen diesen Wörtern. Lass eines weg oder sieh die ganze Liste durch.',
  failed: 'Die Liste konnte nicht geladen werden; unten steht sie ganz.',
  notServed: 'Instrumente, die es hier nicht gibt',
  notServedLead: 'Nach diesen wird oft gefragt. Warum sie hier fehlen:',
  strings: 'Saiten',
  builtWith: 'gebaut mit',
  writing: 'Notiert im',
  fromMemory: 'Aus dem Gedächtnis, nicht an einer Quelle geprüft:',
  inTuning: 'Runde',
  tuningFromMemory: 'aus dem Gedächtnis',
  roundsLead: 'Auf dem Ton seiner tiefsten leeren Saite; eine Stimmung, die du oben wählst, geht mit.',
  picture: 'Bild',
};

export const foundWords: typeof English.foundWords = (count, of) =>
  count === of ? `Alle ${count} Instrumente.` : `${counted(count, 'Instrument', 'Instrumente')} von ${of}.`;

export const stringCountWords: typeof English.stringCountWords = (courses, strings) =>
  courses === strings
    ? counted(strings, 'Saite', 'Saiten')
    : `${counted(courses, 'Chor', 'Chöre')}, ${counted(strings, 'Saite', 'Saiten')}`;

export const rangeWords: typeof English.rangeWords = ({ from, to }, unit = '') =>
  `${from === to ? tenths(from) : `${tenths(from)} bis ${tenths(to)}`}${unit}`;

const CLEFS = { G: 'Violinschlüssel', F: 'Bassschlüssel', C: 'Altschlüssel' } as const;

export const writingWords: typeof English.writingWords = ({ sign, octaveChange }, soundingMinusWritten) => {
  const eight = octaveChange === 0 ? '' : ` mit einer 8 ${octaveChange < 0 ? 'darunter' : 'darüber'}`;
  const octaves = Math.abs(soundingMinusWritten) / 12;
  const far = octaves === 1 ? 'eine Oktave' : `${numberWord(octaves)} Oktaven`;
  const sounds =
    soundingMinusWritten === 0
      ? 'klingt wie notiert'
      : `klingt ${far} ${soundingMinusWritten < 0 ? 'tiefer' : 'höher'} als im Schlüssel ohne 8 geschrieben`;
  return `${CLEFS[sign]}${eight}; ${sounds}`;
};

const FIELDS: Readonly<Record<string, string>> = {
  fretsRange: 'die möglichen Zahlen der Bünde',
  frets: 'die Zahl der Bünde',
  scaleLengthMm: 'die Mensur',
  scaleLengthRangeMm: 'die möglichen Mensuren',
  clef: 'der Schlüssel',
  tunings: 'einige Stimmungen',
  aliases: 'andere Namen',
  midiProgram: 'der Klang in MIDI-Dateien',
  partialFrets: 'welche Bünde es gibt',
};

export const recalledWords: typeof English.recalledWords = (fields) =>
  joined(fields.map((field) => FIELDS[field] ?? field));
