/**
 * Searching instruments and tunings by anything that players say of them.
 */
import { distance } from 'fastest-levenshtein';
import { CATALOGUE } from './catalogue.ts';
import type { InstrumentEntry, TuningEntry } from './entries.ts';
import { type InstrumentSayings, sayingsOf, type TuningSayings } from './instrument-index.ts';
import { type Term, termsOf } from './instrument-terms.ts';
import { instrumentKey, LONGEST_NAME } from './name-key.ts';

/** What is searched for. */
export interface InstrumentSearch {
  /** Words in any order: names, kinds, numbers of strings, tunings, open strings. All fit where it is blank. */
  readonly text?: string;
  /** At most so many; 20 where absent. */
  readonly limit?: number;
}

/** An instrument that fits. */
export interface FoundInstrument {
  readonly instrument: InstrumentEntry;
  /** Those that the text speaks of, the nearest first; none where it speaks of the instrument alone. */
  readonly tunings: readonly TuningEntry[];
}

/** How far terms are from what is said: those that fit nothing, then how loosely the others fit. */
interface Fit {
  readonly missing: number;
  readonly looseness: number;
}

/** What is said of a kind or a tuning is farther off than what is said of the instrument itself. */
const LESS_OWN = 0.5;

/** What fits exactly; a beginning is 1 off, a slip 2 or more. */
const EXACT = 0;
const BEGINNING = 1;
const SLIP = 2;

/** A whole name comes before any choice of words. */
const WHOLE_NAME = -4;
const WHOLE_TUNING = -0.25;

/** Gathered with the first search, since a server that starts has no time for it. */
let gathered: readonly InstrumentSayings[] | undefined;

/**
 * The instruments that fit, best first, then in the catalogue's order. A slip in a word is forgiven. Where
 * nothing fits every word, what fits the most of them is found, if that is half of them at least.
 * @example searchInstruments({ text: 'five string bass, low B' })[0]?.instrument.id // 'bass-5'
 * @example searchInstruments({ text: 'DADGAD' })[0]?.tunings[0]?.id // 'dadgad'
 */
export function searchInstruments({ text = '', limit = 20 }: InstrumentSearch): readonly FoundInstrument[] {
  const most = Math.max(0, limit);
  if (text.trim() === '') {
    return CATALOGUE.instruments.slice(0, most).map((instrument) => ({ instrument, tunings: [] }));
  }
  const terms = termsOf(text);
  const key = instrumentKey(text.slice(0, LONGEST_NAME));
  gathered ??= CATALOGUE.instruments.map(sayingsOf);
  const candidates = gathered.map((sayings) => ({ sayings, ...weigh(terms, key, sayings) }));
  const fewestMissing = Math.min(...candidates.map(({ fit }) => fit.missing));
  if (terms.length === 0 || fewestMissing * 2 > terms.length) return [];
  return candidates
    .filter(({ fit }) => fit.missing === fewestMissing)
    .toSorted((a, b) => a.fit.looseness - b.fit.looseness)
    .slice(0, most)
    .map(({ sayings, tunings }) => ({
      instrument: sayings.instrument,
      tunings: tunings
        .filter(({ fit }) => fit.missing === fewestMissing)
        .toSorted((a, b) => a.fit.looseness - b.fit.looseness)
        .map(({ tuning }) => tuning),
    }));
}

/** How an instrument fits, alone or with its nearest tuning, and how each tuning spoken of does. */
function weigh(terms: readonly Term[], key: string, sayings: InstrumentSayings) {
  const ofInstrument = terms.map((term) => offOfInstrument(term, sayings));
  const bonus = sayings.keys.has(key) ? WHOLE_NAME : 0;
  const tunings = sayings.tunings.flatMap((tuning) => {
    const ofTuning = terms.map((term) => offOfTuning(term, tuning));
    if (ofTuning.every((off) => off === undefined)) return [];
    const offs = ofTuning.map((off, at) => nearer(ofInstrument[at], off));
    const ownBonus = tuning.keys.has(key) || tuning.letters.includes(key) ? WHOLE_TUNING : 0;
    return [{ tuning: tuning.tuning, fit: fitOf(offs, bonus + ownBonus) }];
  });
  const fits = [fitOf(ofInstrument, bonus), ...tunings.map(({ fit }) => fit)];
  const [fit = fitOf(ofInstrument, bonus)] = fits.toSorted(
    (a, b) => a.missing - b.missing || a.looseness - b.looseness,
  );
  return { fit, tunings };
}

function fitOf(offs: readonly (number | undefined)[], bonus: number): Fit {
  const found = offs.filter((off) => off !== undefined);
  return { missing: offs.length - found.length, looseness: found.reduce((sum, off) => sum + off, bonus) };
}

function nearer(own: number | undefined, lessOwn: number | undefined): number | undefined {
  if (lessOwn === undefined) return own;
  return Math.min(own ?? Number.POSITIVE_INFINITY, lessOwn + LESS_OWN);
}

function offOfInstrument(term: Term, sayings: InstrumentSayings): number | undefined {
  const { words, kindWords, strings, courses } = sayings;
  if (term.says === 'word') return nearer(offOfWord(term.word, words), offOfWord(term.word, kindWords));
  if (term.says === 'notes') return words.includes(term.letters) ? EXACT : undefined;
  const [first, second] = term.of === 'strings' ? [strings, courses] : [courses, strings];
  if (term.count === first) return term.of === 'courses' && first === second ? BEGINNING : EXACT;
  return term.of === 'strings' && term.count === second ? BEGINNING : undefined;
}

function offOfTuning(term: Term, { words, letters }: TuningSayings): number | undefined {
  if (term.says === 'count') return undefined;
  if (term.says === 'word') return offOfWord(term.word, words);
  if (letters.includes(term.letters) || words.includes(term.letters)) return EXACT;
  return letters.some((one) => beginsWith(one, term.letters)) ? BEGINNING : undefined;
}

/** A note does not end before its sharp. */
function beginsWith(letters: string, beginning: string): boolean {
  return letters.startsWith(beginning) && letters[beginning.length] !== '#';
}

function offOfWord(word: string, words: readonly string[]): number | undefined {
  if (words.includes(word)) return EXACT;
  // One letter begins too much; and a note is no slip of another.
  if (word.length < 2 || word.includes('-')) return undefined;
  if (words.some((one) => one.startsWith(word))) return BEGINNING;
  const edits = Math.min(...words.map((one) => slipsBetween(word, one)));
  const forgiven = word.length < 4 ? 0 : word.length < 7 ? 1 : 2;
  return edits <= forgiven ? SLIP + edits : undefined;
}

/** Edits, where two letters that changed places are one. */
function slipsBetween(a: string, b: string): number {
  const edits = distance(a, b);
  return edits === 2 && a.length === b.length && lettersOf(a) === lettersOf(b) ? 1 : edits;
}

function lettersOf(word: string): string {
  return [...word].toSorted().join('');
}
