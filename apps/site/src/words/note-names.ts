/**
 * The names of notes in several languages. German, Dutch and Swedish names up to double accidentals as the
 * note-name tables of the LilyPond notation manual ("Note names in other languages": deutsch, nederlands,
 * svenska) give them, which also have do re mi; Danish and Norwegian use H and B alike, with one s or two
 * (common practice, no source). Longer alterations repeat the ending (common practice, no source). Numbers
 * are pitch classes with C = 0 (Forte, The Structure of Atonal Music, 1973) and, for a note in an octave, the
 * MIDI note number with middle C = 60 (MIDI 1.0).
 */

/** The ways to name notes. */
export type Naming = 'english' | 'german' | 'romance' | 'dutch' | 'scandinavian' | 'numbers';

/** What stands for the letters C to B. */
const SYLLABLES = ['do', 're', 'mi', 'fa', 'sol', 'la', 'si'] as const;
const LETTERS = 'CDEFGAB';
const SEMITONES = [0, 2, 4, 5, 7, 9, 11] as const;
const SIZES: ReadonlyMap<string, number> = new Map([
  ['♭', -1],
  ['♯', 1],
  ['𝄫', -2],
  ['𝄪', 2],
]);

/** Endings for a flat and a sharp; the vowel of the flat is dropped after E and A. */
const ENDINGS = {
  german: { flat: 'es', sharp: 'is', hasH: true, doubleAFlat: 'Asas' },
  dutch: { flat: 'es', sharp: 'is', hasH: false, doubleAFlat: 'Ases' },
  scandinavian: { flat: 'ess', sharp: 'iss', hasH: true, doubleAFlat: 'Assess' },
} as const;

/**
 * A note by another name.
 * @param letter A to G
 * @param accidentals signs: `♭`, `𝄪♯`; empty for none
 * @param octave scientific; absent for a note in any octave
 * @example nameNote('B', '♭', 'german')    // 'B'
 * @example nameNote('F', '♯', 'romance')   // 'fa♯'
 * @example nameNote('E', '', 'numbers', 4) // '64'
 */
export function nameNote(letter: string, accidentals: string, naming: Naming, octave?: number): string {
  const at = LETTERS.indexOf(letter);
  const alteration = [...accidentals].reduce((sum, sign) => sum + (SIZES.get(sign) ?? 0), 0);
  const register = octave === undefined ? '' : String(octave);
  switch (naming) {
    case 'english':
      return letter + accidentals + register;
    case 'romance':
      return (SYLLABLES[at] ?? letter) + accidentals + register;
    case 'numbers': {
      const semitones = (SEMITONES[at] ?? 0) + alteration;
      return String(octave === undefined ? (semitones + 24) % 12 : semitones + 12 * (octave + 1));
    }
    default:
      return withEnding(letter, alteration, ENDINGS[naming]) + register;
  }
}

/**
 * Which words of a text are taken for notes: every one that can be; only those in an octave (`E2`), so that
 * `Drop D` keeps its name; or those and a note with which the text begins (`A Dorian`).
 */
export type NotesIn = 'all' | 'pitches' | 'leading';

const NOTE =
  /(?<![\p{L}\p{N}♭♯𝄫𝄪])(?:([A-G])([♭♯𝄫𝄪]*)(-?\d)?|([a-g])([♭♯𝄫𝄪]*)(?=-Moll))(?![\p{L}\p{N}♭♯𝄫𝄪])/gu;

/**
 * A text with its notes by other names.
 * @example renameNotes('A Dorian ♯4', 'romance', 'leading') // 'la Dorian ♯4'
 */
export function renameNotes(text: string, naming: Naming, which: NotesIn): string {
  if (naming === 'english') return text;
  return text.replace(
    NOTE,
    (
      whole: string,
      letter: string | undefined,
      accidentals: string,
      octave: string | undefined,
      small: string,
      smallAccidentals: string,
      at: number,
    ) => {
      // German writes the root of a minor key small.
      if (letter === undefined) return nameNote(small.toUpperCase(), smallAccidentals, naming).toLowerCase();
      const isMeant = which === 'all' || octave !== undefined || (which === 'leading' && at === 0);
      return isMeant
        ? nameNote(letter, accidentals, naming, octave === undefined ? undefined : Number(octave))
        : whole;
    },
  );
}

/**
 * A text with ASCII for the signs of accidentals.
 * @example asciiAccidentals('B♭ Dorian ♮6') // 'Bb Dorian nat6'
 */
export function asciiAccidentals(text: string): string {
  return text
    .replaceAll('𝄫', 'bb')
    .replaceAll('𝄪', '##')
    .replaceAll('♭', 'b')
    .replaceAll('♯', '#')
    .replaceAll('♮', 'nat');
}

function withEnding(
  letter: string,
  alteration: number,
  { flat, sharp, hasH, doubleAFlat }: (typeof ENDINGS)[keyof typeof ENDINGS],
): string {
  const stem = hasH && letter === 'B' ? 'H' : letter;
  if (alteration >= 0) return stem + sharp.repeat(alteration);
  if (stem === 'H' && alteration === -1) return 'B';
  const rest = flat.repeat(-alteration - 1);
  if (letter === 'A' && alteration <= -2) return doubleAFlat + flat.repeat(-alteration - 2);
  return stem + (letter === 'E' || letter === 'A' ? flat.slice(1) : flat) + rest;
}
