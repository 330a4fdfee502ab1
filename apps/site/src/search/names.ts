/**
 * Finding things by name, as far as it can be told what was meant: word by word, in any order, words begun
 * or written together, and slips of typing forgiven.
 */
import { slipsBetween, slipsToBeginning } from './slips.ts';
import { wordsOf } from './words-of.ts';

/** Something that has names, made ready to be searched. */
export interface Named<T> {
  readonly value: T;
  /** The displayed one first. */
  readonly names: readonly ReadyName[];
  /** Between equally good fits the higher comes first. */
  readonly preference: number;
}

/** A name in words. */
interface ReadyName {
  readonly text: string;
  readonly words: readonly string[];
  /** The words without anything between them: `superlocrian`. */
  readonly joined: string;
}

/** Something found, and the name by which it was. */
export interface Found<T> {
  readonly value: T;
  readonly name: string;
  /** How far off it is; 0 for the displayed name itself. */
  readonly off: number;
}

/** How much is forgiven: no slips, a few, or more where that finds nothing. */
export type Looseness = 'none' | 'few' | 'more';

/** How far off a fit is that is not the very name: a word begun, a word left over, an alias. */
const BEGUN = 1;
const PER_WORD_LEFT = 0.25;
const ALIAS = 0.2;
/** A slip is farther off than anything else that can be said of a word. */
const SLIP = 4;

/** How many slips are forgiven in a word of so many letters. */
type Forgiving = (letters: number) => number;

const FORGIVING: Readonly<Record<Looseness, Forgiving>> = {
  none: () => 0,
  few: (letters) => (letters < 4 ? 0 : letters < 7 ? 1 : 2),
  more: (letters) => (letters < 3 ? 0 : letters < 5 ? 1 : letters < 7 ? 2 : 3),
};

/** How far a word typed is from a word of a name; infinite where it does not fit. */
type WordMeasure = (typed: string, word: string) => number;

/** Fewer letters than this begin too many names to be words written together. */
const SHORTEST_JOINED = 4;

/** Makes something ready to be searched by its names, the displayed one first. */
export function named<T>(value: T, names: readonly string[], preference = 0): Named<T> {
  const ready = names.map((text) => {
    const words = wordsOf(text);
    return { text, words, joined: words.join('') };
  });
  return { value, names: ready, preference };
}

/**
 * What fits, best first, then by preference, then in the order given.
 * @param typed in words as {@link wordsOf} gives them
 */
export function findByName<T>(
  typed: readonly string[],
  among: readonly Named<T>[],
  looseness: Looseness = 'few',
): readonly Found<T>[] {
  if (typed.length === 0) return [];
  const offOfWord = wordMeasure(FORGIVING[looseness]);
  return among
    .flatMap(({ value, names, preference }) => {
      const best = bestOf(typed, names, offOfWord, FORGIVING[looseness]);
      return best ? [{ value, name: best.name, off: best.off, rank: best.off - preference * ALIAS }] : [];
    })
    .toSorted((a, b) => a.rank - b.rank);
}

function bestOf(
  typed: readonly string[],
  names: readonly ReadyName[],
  offOfWord: WordMeasure,
  forgiving: Forgiving,
): { readonly name: string; readonly off: number } | undefined {
  const joined = typed.join('');
  const offs = names.map((name, at) => {
    const alias = at === 0 ? 0 : ALIAS;
    if (joined === name.joined) return alias;
    return Math.min(offByWords(typed, name.words, offOfWord), offAsOneWord(joined, name, forgiving)) + alias;
  });
  const off = Math.min(...offs);
  const name = names[offs.indexOf(off)];
  return name && Number.isFinite(off) ? { name: name.text, off } : undefined;
}

/** Every word typed takes the nearest word that is left of the name. */
function offByWords(typed: readonly string[], words: readonly string[], offOfWord: WordMeasure): number {
  const left = [...words];
  let off = 0;
  for (const word of typed) {
    const offs = left.map((one) => offOfWord(word, one));
    const best = Math.min(...offs);
    if (!Number.isFinite(best)) return best;
    off += best;
    left.splice(offs.indexOf(best), 1);
  }
  return off + left.length * PER_WORD_LEFT;
}

/** Measures words, each pair once: many names share their words. */
function wordMeasure(forgiving: Forgiving): WordMeasure {
  const known = new Map<string, number>();
  return (typed, word) => {
    const key = `${typed} ${word}`;
    const off = known.get(key) ?? measureWord(typed, word, forgiving);
    known.set(key, off);
    return off;
  };
}

function measureWord(typed: string, word: string, forgiving: Forgiving): number {
  if (typed === word) return 0;
  if (word.startsWith(typed)) return BEGUN;
  const most = slipsForgiven(typed, forgiving);
  if (most === 0) return Number.POSITIVE_INFINITY;
  const slips = slipsBetween(typed, word, most);
  if (slips <= most) return SLIP * slips;
  const begun = slipsToBeginning(typed, word, most);
  return begun <= most ? SLIP * begun + BEGUN : Number.POSITIVE_INFINITY;
}

/** For words written together or apart: `superlocrian`, `phrygiandominant`. */
function offAsOneWord(joined: string, name: ReadyName, forgiving: Forgiving): number {
  if (joined.length < SHORTEST_JOINED) return Number.POSITIVE_INFINITY;
  if (name.joined.startsWith(joined)) return BEGUN + PER_WORD_LEFT;
  const most = slipsForgiven(joined, forgiving);
  const slips = most > 0 ? slipsBetween(joined, name.joined, most) : most + 1;
  return slips <= most ? SLIP * slips + PER_WORD_LEFT : Number.POSITIVE_INFINITY;
}

/** A degree is no slip of another: `#4` and `b4` are two things. */
function slipsForgiven(word: string, forgiving: Forgiving): number {
  return /\d/.test(word) ? 0 : forgiving(word.length);
}
