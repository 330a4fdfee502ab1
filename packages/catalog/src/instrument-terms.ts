/**
 * What a player says of an instrument or a tuning, taken apart: numbers of strings, open strings, words.
 * Names in the catalogue and what somebody types go through the same mill.
 */
import { toAscii } from '@stillroot/core';
import { LONGEST_NAME, plainLetters } from './name-key.ts';

/** One thing that is said. */
export type Term =
  /** `5-string`, `five courses`; a number alone speaks of strings. */
  | { readonly says: 'count'; readonly count: number; readonly of: 'strings' | 'courses' }
  /** `BEADG`, `d a d g a d`, `E2-A2-D3`: open strings from the lowest-sounding side, without octaves. */
  | { readonly says: 'notes'; readonly letters: string }
  /** Lower case; `low B`, `drop D` and `open G` are one word, `low-b`. */
  | { readonly says: 'word'; readonly word: string };

const NUMBER_WORDS: readonly string[] =
  'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** Words that stand before a note and are nothing without it. */
const BEFORE_NOTES = new Set(['low', 'high', 'drop', 'open']);

/** Words that tell no instrument from another. */
const SILENT = new Set(
  'a an the with and in of on for as to tuned tuning tunings string strings course courses'.split(' '),
);

const NOTE = /^[a-g][#b]?$/;
const NOTE_AND_OCTAVE = /^[a-g][#b]?\d?$/;
const NOTES_AND_OCTAVES = /^(?:[a-g][#b]?\d?){3,}$/;

/** The terms of a text in the order of its words; text longer than a name is cut first. */
export function termsOf(text: string): readonly Term[] {
  const parts = plainLetters(toAscii(text.slice(0, LONGEST_NAME)))
    .replace(/['’]/g, '')
    .replace(/\b([a-g])[\s-]?(sharp|flat)\b/g, (_, letter, sign) => letter + (sign === 'sharp' ? '#' : 'b'))
    .replace(/(\d)(?=str|cour)/g, '$1 ')
    .split(/[():;]/);
  return parts.flatMap((part) => termsOfWords(part.split(/[^\p{L}\p{N}#]+/u).filter((word) => word !== '')));
}

/** A word without the ending of a plural. */
export function singular(word: string): string {
  return word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}

function termsOfWords(words: readonly string[]): readonly Term[] {
  const terms: Term[] = [];
  for (let at = 0; at < words.length; ) {
    const { term, taken } = nextTerm(words, at);
    if (term !== undefined) terms.push(term);
    at += taken;
  }
  return terms;
}

/** The term that begins at a word, and how many words it takes. */
function nextTerm(words: readonly string[], at: number): { readonly term?: Term; readonly taken: number } {
  const word = words[at] ?? '';
  const next = words[at + 1] ?? '';

  const count = NUMBER_WORDS.includes(word) ? NUMBER_WORDS.indexOf(word) : Number(word);
  if (Number.isInteger(count)) {
    const isOfCourses = isBeginningOf('courses', next);
    const isUnit = isOfCourses || isBeginningOf('strings', next) || isBeginningOf('stringed', next);
    return { term: { says: 'count', count, of: isOfCourses ? 'courses' : 'strings' }, taken: isUnit ? 2 : 1 };
  }

  const end = words.findIndex((one, other) => other >= at && !NOTE_AND_OCTAVE.test(one));
  const run = words.slice(at, end < 0 ? words.length : end);
  if (run.length >= 3) return { term: notes(run.join('')), taken: run.length };
  if (NOTES_AND_OCTAVES.test(word)) return { term: notes(word), taken: 1 };
  if (BEFORE_NOTES.has(word) && NOTE.test(next)) {
    return { term: { says: 'word', word: `${word}-${next}` }, taken: 2 };
  }
  return SILENT.has(word) ? { taken: 1 } : { term: { says: 'word', word: singular(word) }, taken: 1 };
}

/** Two letters at least: somebody may still be typing. */
function isBeginningOf(whole: string, word: string): boolean {
  return word.length >= 2 && whole.startsWith(word);
}

function notes(text: string): Term {
  return { says: 'notes', letters: text.replace(/\d/g, '') };
}
