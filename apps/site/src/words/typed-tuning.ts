/**
 * Tunings as readers type them, with the notes in English names, which core reads; and back in their own.
 */
import { type Naming, nameNote } from './note-names.ts';
import { englishNote, notesOfRun, withoutAccidentalWords } from './note-reading.ts';

/** A word of letters with signs, and how many times a capital stands in Helmholtz notation: `EE`. */
const WORD = /\p{L}[\p{L}\p{M}]*[#♯♭𝄪𝄫]*/gu;
const DOUBLED = /^(\p{Lu})(\1+)$/u;

/** Those who write figures for strokes, `e1`; elsewhere figures are scientific octaves only. */
const HAS_FIGURES: ReadonlySet<Naming> = new Set(['german', 'dutch', 'scandinavian']);
const COUNTED = /([A-Ga-g])([b#]*)([1-5])/g;
/** No string is three octaves below the great one. */
const DEEPER = /^\p{Lu}.*[3-9]$/u;

const NUMBERS = /^\d+(?:[\s,;/-]+\d+)*$/;
/** From here on, numbers are those of MIDI notes rather than of the twelve pitch classes. */
const FIRST_MIDI = 12;

/**
 * What a typed tuning may say, with English names of notes, the likeliest first; never nothing. Letters run
 * together are likelier English, as tunings are called everywhere (`BEADGBE`), unless they can be no English notes.
 * @example englishTunings('H E A D G H E', 'german') // 'B E A D G B E', and as it stands
 * @example englishTunings('mi2-la2-re3', 'romance')  // 'E2-A2-D3', and as it stands
 * @example englishTunings('40 45 50', 'numbers')     // 'E2 A2 D3', and as it stands
 */
export function englishTunings(typed: string, naming: Naming): readonly [string, ...string[]] {
  const text = withoutAccidentalWords(typed.trim());
  const run = notesOfRun(text, naming)?.map((note) => englishNote(note, naming) ?? note);
  const isEnglish = run !== undefined && notesOfRun(text, 'english') !== undefined;
  const own = run?.join(' ') ?? (naming === 'numbers' ? fromNumbers(text) : fromWords(text, naming));
  const [first, ...others] = isEnglish ? [text, own] : [own, text];
  return [first, ...others.filter((other) => other !== first)];
}

/**
 * Open strings in English scientific notation (`B1-E2-A2`) or in capitals apart (`B E A`), in other names; a
 * text in any other notation as it stands.
 * @example tuningInOwnNames('B1-E2-A2', 'german') // 'H1-E2-A2'
 */
export function tuningInOwnNames(text: string, naming: Naming): string {
  const parts = text.split(/([\s,/]+|(?<=\d)-|(?<=[A-G][b#]*)-(?!\d))/);
  const notes = parts.map((part, at) => (at % 2 === 0 ? /^([A-G])(b*|#*)(-?\d)?$/.exec(part) : null));
  if (notes.some((note, at) => at % 2 === 0 && note === null)) return text;
  return parts
    .map((part, at) => {
      const [, letter = '', accidental = '', octave] = notes[at] ?? [];
      if (letter === '') return part;
      const signs = accidental.replaceAll('b', '♭').replaceAll('#', '♯');
      return nameNote(letter, signs, naming, octave === undefined ? undefined : Number(octave))
        .replaceAll('♭', 'b')
        .replaceAll('♯', '#');
    })
    .join('');
}

/** Word by word; what is no note stays, so that a problem speaks of that word. */
function fromWords(text: string, naming: Naming): string {
  const strings = text.split(/[\s,-]+/).filter((string) => string !== '');
  const numbered = strings.filter((string) => /\d$/.test(string));
  const isMixed = numbered.length > 0 && numbered.length < strings.length;
  const areStrokes = isMixed && !numbered.some((string) => DEEPER.test(string));
  const english = inEnglish(text, naming);
  return areStrokes && HAS_FIGURES.has(naming) ? english.replaceAll(COUNTED, strokes) : english;
}

/** `e1` for one stroke above, `E1` for one below, beside strings without a figure (as German handbooks print it; recalled). */
function strokes(_: string, letter: string, accidental: string, count: string): string {
  const isSmall = letter === letter.toLowerCase();
  const note = letter + accidental;
  return isSmall ? note + "'".repeat(Number(count)) : ','.repeat(Number(count)) + note;
}

function inEnglish(text: string, naming: Naming): string {
  return text.replaceAll(WORD, (word) => {
    const [, capital, repeats = ''] = DOUBLED.exec(word) ?? [];
    const note = englishNote(word, naming) ?? (capital && englishNote(capital, naming));
    if (note === undefined || note === '') return word;
    return repeats === '' || englishNote(word, naming) !== undefined
      ? note
      : note.charAt(0).repeat(repeats.length + 1) + note.slice(1);
  });
}

function fromNumbers(text: string): string {
  if (!NUMBERS.test(text)) return text;
  const numbers = text.match(/\d+/g) ?? [];
  const areMidi = numbers.some((number) => Number(number) >= FIRST_MIDI);
  return text.replaceAll(/\d+/g, (number) =>
    areMidi && Number(number) < FIRST_MIDI
      ? `${englishNote(number, 'numbers') ?? number}-1`
      : (englishNote(number, 'numbers') ?? number),
  );
}
