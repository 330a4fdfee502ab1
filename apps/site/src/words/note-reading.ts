/**
 * Notes as readers type them, in English names: the other way round of `note-names.ts`, with the same sources.
 * Besides the names themselves, a letter or a syllable may have a sign (`H♭`, `fa#`) or a word for one
 * (`si bemol`, `C sharp`).
 */
import { asciiAccidentals, type Naming, nameNote } from './note-names.ts';

/** As many flats or sharps as core reads. */
const MOST_ACCIDENTALS = 3;
const LETTERS = [...'CDEFGAB'];
const SIGNS = ['', '♯', '𝄪', '𝄪♯'] as const;

/** Names of the pitch classes, where numbers do not say how they are spelled. */
const BY_NUMBER = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'] as const;
const HIGHEST_MIDI = 127;

/** English names by the names of each naming, in small letters and ASCII. */
const NAMES: Readonly<Record<Exclude<Naming, 'numbers'>, ReadonlyMap<string, string>>> = {
  english: namesOf('english'),
  german: withSigns(namesOf('german'), 'cdefgah'),
  romance: namesOf('romance'),
  dutch: withSigns(namesOf('dutch'), 'cdefgab'),
  // Danish and Norwegian write one s (common practice, no source), as German does.
  scandinavian: withSigns(new Map([...namesOf('german'), ...namesOf('scandinavian')]), 'cdefgah'),
};

/** Letters run together, each note with a capital but in do re mi. */
const RUNS = {
  english: runOf('english'),
  german: runOf('german'),
  romance: runOf('romance'),
  dutch: runOf('dutch'),
  scandinavian: runOf('scandinavian'),
};

const ACCIDENTAL_WORDS: ReadonlyMap<string, string> = new Map([
  ['sharp', '#'],
  ['flat', 'b'],
  ['sostenido', '#'],
  ['bemol', 'b'],
]);

const IN_WORDS =
  /(?<![\p{L}\p{N}])([a-h]|do|re|mi|fa|sol|la|si)[\s-]+(?:(double|doble)[\s-]+)?(sharp|flat|sostenido|bemol)(?![\p{L}\p{N}])/giu;

/** What follows a word for an accidental that belongs to a degree: `a sharp 4`, `a flat seventh`. */
const OF_A_DEGREE = /^[\s-]*(?:\d|second|third|fourth|fifth|sixth|seventh|ninth|eleventh|thirteenth)/i;

/**
 * A note in its English name, in ASCII; a small letter stays small.
 * @returns undefined where the text is no note of that naming
 * @example englishNote('Fis', 'german')   // 'F#'
 * @example englishNote('B', 'german')     // 'Bb'
 * @example englishNote('sib3', 'romance') // 'Bb3'
 * @example englishNote('64', 'numbers')   // 'E4'
 */
export function englishNote(text: string, naming: Naming): string | undefined {
  if (naming === 'numbers') return byNumber(text);
  const [, name = '', octave = ''] = /^(\D+?)(-?\d+)?$/.exec(plain(text)) ?? [];
  const found = NAMES[naming].get(name.toLowerCase());
  if (found === undefined) return undefined;
  // The case of a letter tells the octave in Helmholtz notation; syllables are written small anyway.
  const isSmall = naming !== 'romance' && name.charAt(0) === name.charAt(0).toLowerCase();
  return (isSmall ? found.charAt(0).toLowerCase() + found.slice(1) : found) + octave;
}

/**
 * Notes run together, apart: `HEADGHE`, `MiLaReSolSiMi`.
 * @returns undefined where the text is no run of three notes or more of that naming
 * @example notesOfRun('DADFisAD', 'german') // ['D', 'A', 'D', 'Fis', 'A', 'D']
 */
export function notesOfRun(text: string, naming: Naming): readonly string[] | undefined {
  if (naming === 'numbers') return undefined;
  const { whole, each } = RUNS[naming];
  return whole.test(text) ? (text.match(each) ?? []) : undefined;
}

/**
 * A text in which notes with words for their accidentals have signs instead.
 * @example withoutAccidentalWords('C sharp minor')    // 'C# minor'
 * @example withoutAccidentalWords('si bemol mayor')   // 'sib mayor'
 * @example withoutAccidentalWords('with a sharp 4th') // unchanged: the degree is sharp
 */
export function withoutAccidentalWords(text: string): string {
  return text.replace(
    IN_WORDS,
    (whole, note: string, double: string | undefined, word: string, at: number) => {
      if (OF_A_DEGREE.test(text.slice(at + whole.length))) return whole;
      const sign = ACCIDENTAL_WORDS.get(word.toLowerCase()) ?? '';
      return note + (double === undefined ? sign : sign + sign);
    },
  );
}

function namesOf(naming: Naming): Map<string, string> {
  return new Map(
    LETTERS.flatMap((letter) =>
      SIGNS.flatMap((sharps, count) => {
        const flats = sharps.replaceAll('♯', '♭').replaceAll('𝄪', '𝄫');
        return [
          [asciiAccidentals(nameNote(letter, sharps, naming)).toLowerCase(), letter + '#'.repeat(count)],
          [asciiAccidentals(nameNote(letter, flats, naming)).toLowerCase(), letter + 'b'.repeat(count)],
        ] as const;
      }),
    ),
  );
}

/** Names and letters with signs, such as `H#`; a B that has one is the English B. */
function withSigns(names: ReadonlyMap<string, string>, letters: string): ReadonlyMap<string, string> {
  const signed = [...letters].flatMap((letter) =>
    Array.from({ length: MOST_ACCIDENTALS }, (_, at) => at + 1).flatMap((count) => {
      const english = letter === 'h' ? 'B' : letter.toUpperCase();
      return ['#', 'b'].map((sign) => [letter + sign.repeat(count), english + sign.repeat(count)] as const);
    }),
  );
  return new Map([...signed, ...names]);
}

function byNumber(text: string): string | undefined {
  const number = /^\d{1,3}$/.test(text.trim()) ? Number(text) : undefined;
  if (number === undefined || number > HIGHEST_MIDI) return undefined;
  const name = BY_NUMBER[number % 12] ?? '';
  return number < 12 ? name : `${name}${Math.floor(number / 12) - 1}`;
}

function runOf(naming: Exclude<Naming, 'numbers'>): { readonly whole: RegExp; readonly each: RegExp } {
  const names = [...NAMES[naming].keys()]
    .toSorted((a, b) => b.length - a.length)
    .map((name) => name.charAt(0).toUpperCase() + name.slice(1));
  const one = `(?:${names.join('|')})`;
  const flags = naming === 'romance' ? 'i' : '';
  return { whole: new RegExp(`^${one}{3,}$`, flags), each: new RegExp(one, `g${flags}`) };
}

/** Without diacritics (`ré`), and with accidentals in ASCII. */
function plain(text: string): string {
  return asciiAccidentals(text.trim())
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .replace(/(?<=[a-z])x(?=-?\d*$)/i, '##');
}
