/**
 * What a typed tuning may say: its notation, and the words of its strings. Where it may say two things, the
 * likelier comes first:
 * - a digit makes it scientific notation, in which commas part strings;
 * - commas part strings where one stands between every two and none elsewhere (`E, A, D, G`), and are
 *   sub-octave strokes otherwise (`E, A, D G`);
 * - a stroke (a prime, or a comma that parts nothing), or a doubled capital beside single ones (`EE AA D G`),
 *   makes it Helmholtz notation;
 * - capitals that are all doubled are courses of two strings (`GG DD AA EE`);
 * - without any mark of an octave it is letters, whose case says nothing: players write `gDGBD` and `EADGBe`;
 * - in letters run together a small b lowers the letter before it (`EbAbDb`), but is a string of its own where
 *   all letters are small (`eadgbe`); the other way round where only that gives the instrument's count.
 */
import { hasStrokes } from '../pitch/pitch-helmholtz.ts';
import { splitStrings } from './tuning.ts';

/** How open strings are written: octaves by number, by case and strokes, or not at all. */
export type TuningNotation = 'scientific' | 'helmholtz' | 'letters';

/** One thing that a text may say. */
export interface TuningWords {
  readonly notation: TuningNotation;
  /** A word a string, low to high; strings of a course are joined by slashes. */
  readonly words: readonly string[];
}

const LISTED = /^[^\s,-]+(?:[\s-]*,[\s-]*[^\s,-]+)+$/;
const DOUBLED = /^([A-G](?:b|#|♭|♯)?)\1$/;
const BESIDE_SINGLE = /^([A-G])\1/;
/** Letters run together: with a small b as a flat where it can be one, and as a string. */
const LOWERED = /[A-Ga-g][b♭#♯s]?/g;
const APART = /[A-Ga-g][♭#♯s]?/g;

/** Dashes that stand for hyphens in typeset text. */
const DASHES = /[‐‑‒–—−]/g;

/**
 * What a text may say, the likeliest first.
 * @param strings how many the instrument has, where there is one
 */
export function readingsOf(text: string, strings?: number): readonly [TuningWords, ...TuningWords[]] {
  const plain = text.trim().replaceAll(DASHES, '-');
  if (/\d/.test(plain)) {
    return [{ notation: 'scientific', words: splitStrings(plain.replaceAll(/(\d)(?=[A-Ga-g])/g, '$1 ')) }];
  }
  const spaced = plain.replaceAll(/(?<=[^\s,])(,+)(?=[^\s,])/g, '$1 ');
  const byStrokes = { notation: 'helmholtz', words: split(spaced, /[\s-]+/) } as const;
  if (!plain.includes(',')) return readingsOfWords(byStrokes.words, strings);
  if (!LISTED.test(plain)) return [byStrokes];
  return [...readingsOfWords(split(plain, /[\s,-]+/), strings), byStrokes];
}

function readingsOfWords(
  words: readonly string[],
  count: number | undefined,
): readonly [TuningWords, ...TuningWords[]] {
  const helmholtz = { notation: 'helmholtz', words } as const;
  const letters = { notation: 'letters', words } as const;
  const [alone = '', ...others] = words;
  if (words.some(hasStrokes)) return [helmholtz];
  if (others.length === 0 && alone.replaceAll(LOWERED, '') === '') return readingsOfRun(alone, count);
  if (words.every((word) => DOUBLED.test(word))) {
    return [{ notation: 'letters', words: words.map((word) => word.replace(DOUBLED, '$1/$1')) }, helmholtz];
  }
  const strings = words.flatMap((word) => word.split('/'));
  if (strings.some((string) => BESIDE_SINGLE.test(string))) return [helmholtz];
  const isMixed =
    strings.some((string) => /^[A-G]/.test(string)) && strings.some((string) => /^[a-g]/.test(string));
  return isMixed ? [letters, helmholtz] : [letters];
}

function readingsOfRun(run: string, count: number | undefined): readonly [TuningWords, ...TuningWords[]] {
  const lowered = { notation: 'letters', words: run.match(LOWERED) ?? [] } as const;
  const apart = { notation: 'letters', words: run.match(APART) ?? [] } as const;
  const hasCapitals = /[A-G]/.test(run);
  const [usual, other] = hasCapitals ? [lowered, apart] : [apart, lowered];
  const isOther = usual.words.length !== count && other.words.length === count;
  if (isOther) return [other, usual];
  const isPlain = hasCapitals || usual.words.length === count || usual.words.length === other.words.length;
  return isPlain ? [usual] : [usual, other];
}

function split(text: string, between: RegExp): readonly string[] {
  return text.split(between).filter((word) => word !== '');
}
