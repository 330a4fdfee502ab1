/**
 * Finding instruments by any of the words that players use for them: names, kinds, numbers of strings,
 * tunings, open strings. A slip in a longer word is forgiven.
 */
import type { PlainInstrument } from '@stillroot/catalog/plain';
import { toAscii } from '@stillroot/core';
import { kindName } from '../words/choices.ts';
import { instrumentAliases, instrumentName } from '../words/names.ts';
import type { Naming } from '../words/note-names.ts';
import { numberWord } from '../words/numbers.ts';
import { tuningName } from '../words/tunings.ts';
import { readingsOf } from './readings.ts';
import { slipsToBeginning } from './slips.ts';

/** Words that say nothing by themselves. */
const SILENT = new Set(
  (
    'string strings stringed course courses tuning tuned in with and the an of on ' +
    'saite saiten saitig saitige saitiger saitiges saiter mit und der die das ' +
    'cuerda cuerdas orden ordenes con de'
  ).split(' '),
);
/** Words beside the outermost note of a tuning: `low B`, `tiefes B`, `B grave`. */
const OUTER: ReadonlyMap<string, 'low' | 'high'> = new Map([
  ...['low', 'tief', 'tiefe', 'tiefes', 'tiefem', 'grave'].map((word) => [word, 'low'] as const),
  ...['high', 'hoch', 'hohe', 'hohes', 'hohem', 'agudo', 'aguda'].map((word) => [word, 'high'] as const),
]);
const MOST_STRINGS = 14;
const NUMBER_WORDS: ReadonlyMap<string, number> = new Map(
  Array.from({ length: MOST_STRINGS }, (_, at) => [plain(numberWord(at + 1)), at + 1]),
);

/** What is said of an instrument. */
interface Sayings {
  readonly words: ReadonlySet<string>;
  readonly counts: ReadonlySet<number>;
}

const gathered = new WeakMap<PlainInstrument, Sayings>();

/**
 * The ids of the instruments that every word of a text fits; all of them where it has no words.
 * @param naming how its reader names notes; what then fits nothing is read in English names
 * @example findInstruments('five strings low B', instruments) // ['bass-5', ...]
 */
export function findInstruments(
  text: string,
  instruments: readonly PlainInstrument[],
  naming: Naming = 'english',
): readonly string[] {
  if (text.trim() === '') return instruments.map(({ id }) => id);
  const found = readingsOf(text, naming).map((reading) => {
    const asked = termsOf(reading.text);
    return instruments.filter((instrument) => fits(asked, sayingsOf(instrument))).map(({ id }) => id);
  });
  return found.find((ids) => ids.length > 0) ?? [];
}

function fits(asked: readonly string[], { words, counts }: Sayings): boolean {
  return asked.every((term) => {
    const count = NUMBER_WORDS.get(term) ?? Number(term);
    if (Number.isInteger(count)) return counts.has(count);
    // Another note is another tuning, and no slip.
    if (term.includes('-')) return words.has(term);
    const most = term.length >= 5 && !/^(?:[a-g][#b]?)+$/.test(term) ? 1 : 0;
    return [...words].some((word) => word.startsWith(term) || slipsToBeginning(term, word, most) <= most);
  });
}

/** The words of a text; `low B` is one word, in whichever order, and letters of open strings are put together. */
function termsOf(text: string): readonly string[] {
  const words = wordsOf(text);
  return words.flatMap((word, at) => {
    const [before = '', after = ''] = [words[at - 1], words[at + 1]];
    if (OUTER.has(word) && (isNote(before) || isNote(after))) return [];
    const outer = OUTER.get(before) ?? OUTER.get(after);
    if (outer && isNote(word)) return [`${outer}-${word}`];
    const isRun = isNote(word) && (isNote(before) || isNote(after));
    if (isRun) return isNote(before) ? [] : [lettersFrom(words, at)];
    return SILENT.has(word) ? [] : [word];
  });
}

function lettersFrom(words: readonly string[], at: number): string {
  const end = words.findIndex((word, place) => place > at && !isNote(word));
  return words.slice(at, end < 0 ? words.length : end).join('');
}

function sayingsOf(instrument: PlainInstrument): Sayings {
  const known = gathered.get(instrument);
  if (known) return known;
  const { id, name, aliases, kind, tunings } = instrument;
  const notesOf = (courses: readonly string[]): string[] =>
    courses.map((course) => plain(course.replace(/\/.*$/, '').replace(/-?\d+$/, '')));
  const words = new Set([
    ...[id, name, instrumentName(instrument), kindName(kind)].flatMap(wordsOf),
    ...[...aliases, ...instrumentAliases(instrument)].flatMap(wordsOf),
    ...tunings.flatMap((tuning) => [tuning.name, tuningName(instrument, tuning), tuning.id].flatMap(wordsOf)),
    ...tunings.flatMap(({ courses }) => {
      const notes = notesOf(courses);
      return [notes.join(''), `low-${notes[0]}`, `high-${notes.at(-1)}`];
    }),
  ]);
  const courses = tunings[0]?.courses ?? [];
  const sayings = {
    words,
    counts: new Set([courses.length, courses.flatMap((one) => one.split('/')).length]),
  };
  gathered.set(instrument, sayings);
  return sayings;
}

function wordsOf(text: string): readonly string[] {
  return plain(text)
    .replace(/(\d)(?=[a-z])/g, '$1 ')
    .split(/[^a-z0-9#]+/)
    .filter((word) => word !== '');
}

/** Small letters without marks. */
function plain(text: string): string {
  return toAscii(text).toLowerCase().normalize('NFD').replaceAll(/\p{M}/gu, '');
}

function isNote(word: string | undefined): boolean {
  return word !== undefined && /^[a-g][#b]?$/.test(word);
}
