/**
 * What a text may say in English note names, which all else in the search reads: first as its reader names
 * notes, then as it stands.
 *
 * Names of notes are ordinary words as well (in Spanish `la`, `mi`; in German `des`). A word is taken for a note
 * where all the words are notes, and else only where a root can stand: at either end, after a word that leads
 * to a root, and before `Dur`, `Moll`, `mayor` or `menor`.
 */
import type { Naming } from '../words/note-names.ts';
import { englishNote, notesOfRun, withoutAccidentalWords } from '../words/note-reading.ts';
import { LEADS_TO_ROOT } from './asked.ts';
import { placedIn } from './placed.ts';
import { wordsOf } from './words-of.ts';

/** One thing that a text may say. */
export interface Reading {
  /** With English names of notes. */
  readonly text: string;
  /** What to type for the English B, where a B was taken for B flat. */
  readonly withEnglishB?: string;
  /** Whether notes in other names were read in it. */
  readonly isOwn?: boolean;
}

/** A German B is the English B flat, and H the English B. */
const B_IS_FLAT: ReadonlySet<Naming> = new Set(['german', 'scandinavian']);

/** Before these stands a root. */
const QUALITIES: ReadonlySet<string> = new Set(['dur', 'moll', 'mayor', 'menor', 'major', 'minor']);

/** Notes that are articles and the like before anything that is not a quality. */
const ARTICLES: ReadonlySet<string> = new Set(['la', 'mi']);

/** Words at the beginning that say nothing. */
const OPENINGS = /^(?:(?:el|la|los|las|un|una|mi|de|der|die|das|ein|eine|von)\s+)+/i;

/** Words that say nothing anywhere: `C-Dur-Tonleiter`, `la escala de mi menor`. */
const FILLERS = fillers('tonleiter|skala|escala');
/** Without a place, `Modus` says nothing either. */
const MODE_FILLERS = fillers('modus|modo');

/** Before these a B is English, as names of tunings are: `Drop B`. */
const TUNING_WORDS: ReadonlySet<string> = new Set(['drop', 'low', 'high', 'open']);

const BETWEEN_WORDS = /([\s,;()–-]+)/;

/** Whole and half steps as German has them: `G G H G G G H`. */
const STEPS_IN_GERMAN = /^(?=(?:[^h]*h){2}[^h]*$)[gh](?:[\s,-]*[gh]){6}$/i;

/**
 * What a text may say, the likeliest first.
 * @example readingsOf('Fis dorisch', 'german') // 'F# dorisch', 'Fis dorisch'
 * @example readingsOf('fa# dórico', 'romance') // 'F# dórico', 'fa# dórico'
 * @example readingsOf('C sharp minor', 'english') // 'C# minor', 'C sharp minor'
 */
export function readingsOf(typed: string, naming: Naming): readonly Reading[] {
  const text = withoutAccidentalWords(typed);
  if (naming === 'english' || naming === 'numbers') return eachOnce([{ text }, { text: typed }]);
  const isPlace = placedIn(text) !== undefined;
  const plain = (isPlace ? text : text.replace(MODE_FILLERS, '')).replace(FILLERS, '').trim();
  const own =
    B_IS_FLAT.has(naming) && STEPS_IN_GERMAN.test(plain) ? inSteps(plain) : ownReading(plain, naming);
  return eachOnce([own, { text }, { text: typed }, { text: plain }, { text: plain.replace(OPENINGS, '') }]);
}

/** The readings that say something, each text once. */
function eachOnce(readings: readonly (Reading | undefined)[]): readonly Reading[] {
  const byText = new Map<string, Reading>();
  for (const one of readings) if (one && one.text !== '' && !byText.has(one.text)) byText.set(one.text, one);
  return [...byText.values()];
}

/** The text with its notes in English; undefined where it has none, or where they are no other. */
function ownReading(text: string, naming: Naming): Reading | undefined {
  const run = notesOfRun(text, naming);
  // Letters run together are a tuning by its international name, `DGBE`, unless they can be nothing English.
  if (run) return notesOfRun(text, 'english') ? undefined : inEnglish(run.join(' '), naming, () => true);
  const plain = withoutArticle(text, naming);
  const words = wordsApart(plain);
  if (words.length < 2) return undefined;
  const areAll = words.every((word) => noteOf(word, naming) !== undefined);
  return inEnglish(plain, naming, (at) => areAll || isRootAt(at, words));
}

function inEnglish(text: string, naming: Naming, isMeant: (at: number) => boolean): Reading | undefined {
  const parts = text.split(BETWEEN_WORDS);
  let at = -1;
  let hasFlatB = false;
  const others: string[] = [];
  const read = parts.map((part, place) => {
    if (place % 2 === 1 || part === '') {
      others.push(part);
      return part;
    }
    at += 1;
    const note = isMeant(at) ? noteOf(part, naming) : undefined;
    const isFlatB = note !== undefined && /^b$/i.test(part) && B_IS_FLAT.has(naming);
    hasFlatB ||= isFlatB;
    others.push(isFlatB ? 'H' : part);
    return note ?? part;
  });
  const english = read.join('');
  if (english.toLowerCase() === text.toLowerCase()) return undefined;
  return { text: english, isOwn: true, ...(hasFlatB ? { withEnglishB: others.join('') } : {}) };
}

/** A note by its own name, or by an English letter with a sign. */
function noteOf(word: string, naming: Naming): string | undefined {
  const own = englishNote(word, naming) ?? (/.[#b♯♭]$/.test(word) ? englishNote(word, 'english') : undefined);
  return own && own.charAt(0).toUpperCase() + own.slice(1);
}

/** Whether the word at this place stands where a root can, and is none of the words that only look like one. */
function isRootAt(at: number, words: readonly string[]): boolean {
  const [word = '', before, after] = [words[at], words[at - 1], words[at + 1]];
  // A root has no octave; `b7` is a degree.
  if (/\d$/.test(word)) return false;
  const isArticle = (word === 'la' && before === 'de') || (word === 'des' && /^mod/.test(before ?? ''));
  if (after !== undefined && QUALITIES.has(after)) return !isArticle;
  if (before === undefined) return true;
  if (after === undefined) return word !== 'b' || !TUNING_WORDS.has(before);
  const isLed = LEADS_TO_ROOT.has(before);
  return isLed && !isArticle && (!ARTICLES.has(word) || LEADS_TO_ROOT.has(after));
}

/** Without an article before a name whose root is told at its end: `la menor armónica desde re`. */
function withoutArticle(text: string, naming: Naming): string {
  const words = wordsApart(text);
  const isTold = LEADS_TO_ROOT.has(words.at(-2) ?? '') && noteOf(words.at(-1) ?? '', naming) !== undefined;
  return isTold && words.length > 3 ? text.replace(OPENINGS, '') : text;
}

/** Words as {@link wordsOf} has them, one for each part of the text. */
function wordsApart(text: string): readonly string[] {
  return text
    .split(BETWEEN_WORDS)
    .filter((part, place) => place % 2 === 0 && part !== '')
    .map((part) => wordsOf(part).join(''));
}

function inSteps(text: string): Reading {
  return { text: text.toLowerCase().replaceAll('g', 'w') };
}

/** One of these words, with an article before it and a preposition after it. */
function fillers(words: string): RegExp {
  return new RegExp(
    String.raw`[\s-]*(?<!\p{L})(?:(?:la|el|die|der)\s+)?(?:${words})(?!\p{L})(?:\s+(?:de|von)(?!\p{L}))?`,
    'giu',
  );
}
