/**
 * What a text asks for: notes, degrees, steps, or a name, each perhaps on a root.
 */
import {
  chordSymbolsIn,
  MAJOR_SEMITONES,
  type NoteName,
  parseChord,
  parseNote,
  parseRoot,
  pitchClassOf,
  type Root,
  toAscii,
} from '@stillroot/core';
import { alterationOf, describedMode } from './described.ts';
import { wordsOf } from './words-of.ts';

/** A degree that a mode must have. */
export interface AskedDegree {
  /** 1 to 7; absent where only a distance above the root was given. */
  readonly degree: number | undefined;
  /** 0 to 11 above the root. */
  readonly semitones: number;
}

/** What is asked for, and the root it is to stand on, where one was named. */
export type Asked = { readonly root: Root | undefined } & (
  | { readonly for: 'notes'; readonly notes: readonly NoteName[] }
  | { readonly for: 'degrees'; readonly degrees: readonly AskedDegree[] }
  | { readonly for: 'steps'; readonly steps: readonly number[] }
  | { readonly for: 'name'; readonly words: readonly string[] }
);

/** Longer texts ask for nothing. */
export const LONGEST_TEXT = 120;

/** `dorian in F#`, `on F#`, `from F#`, in every language. */
export const LEADS_TO_ROOT: ReadonlySet<string> = new Set([
  ...['in', 'on', 'from'],
  ...['auf', 'ab', 'von'],
  ...['en', 'sobre', 'desde', 'de'],
]);

const STEP_LETTERS: ReadonlyMap<string, number> = new Map([
  ['t', 2],
  ['s', 1],
  ['w', 2],
  ['h', 1],
]);

/**
 * Reads what was typed.
 * @example askedBy('A B C D E F G#')      // notes
 * @example askedBy('Am E7')              // the notes of chords
 * @example askedBy('1 b2 3 4 5 b6 b7')    // degrees
 * @example askedBy('1312122')             // steps
 * @example askedBy('phrygian with a major third') // the steps of what is described
 * @example askedBy('phrygian dominant')   // a name
 * @example askedBy('F# phrygian dominant') // a name on a root
 */
export function askedBy(text: string): Asked {
  const typed = text.slice(0, LONGEST_TEXT).trim();
  const words = wordsOf(typed);
  const notes = notesIn(typed, words);
  const held = notes ?? chordNotesIn(typed);
  if (held) return { for: 'notes', notes: held, root: undefined };
  const { root, rest } = withoutRoot(words);
  const steps = stepsIn(rest);
  if (steps) return { for: 'steps', steps, root };
  const degrees = degreesIn(rest);
  if (degrees) return { for: 'degrees', degrees, root };
  const described = describedMode(rest);
  if (described) return { for: 'steps', steps: described.steps, root };
  return { for: 'name', words: rest, root };
}

/** Two notes or more, apart (`a c# e`) or together in capitals (`DADGAD`). */
function notesIn(typed: string, words: readonly string[]): readonly NoteName[] | undefined {
  const together = toAscii(typed);
  const letters = /^(?:[A-G](?:b+|#+)?){3,}$/.test(together) ? together.match(/[A-G](?:b+|#+)?/g) : null;
  const notes = (letters ?? words).map((word) => parseNote(word));
  if (notes.length < 2) return undefined;
  const read = notes.flatMap((note) => (note.ok ? [note.value] : []));
  return read.length === notes.length ? read : undefined;
}

/** The notes of chords, where all the words are chords, and not each of them a note alone. */
function chordNotesIn(typed: string): readonly NoteName[] | undefined {
  const symbols = chordSymbolsIn(typed);
  const areNamed =
    symbols.every((symbol) => /^[A-G]/.test(symbol)) && symbols.some((symbol) => !parseNote(symbol).ok);
  const chords = areNamed ? symbols.map((symbol) => parseChord(symbol)) : [];
  const read = chords.flatMap((chord) => (chord.ok ? [chord.value.notes] : []));
  return areNamed && read.length === chords.length ? read.flat() : undefined;
}

/** What is left without a root before it or after it: `F# dorian`, `dorian in F#`. */
export function withoutRoot(words: readonly string[]): {
  readonly root: Root | undefined;
  readonly rest: readonly string[];
} {
  const first = rootIn(words[0]);
  const last = rootIn(words.at(-1));
  if (words.length < 2 || !(first ?? last)) return { root: undefined, rest: words };
  if (first) return { root: first, rest: words.slice(1) };
  const rest = words.slice(0, -1);
  return {
    root: last,
    rest: rest.length > 1 && LEADS_TO_ROOT.has(rest.at(-1) ?? '') ? rest.slice(0, -1) : rest,
  };
}

/** A word that can be nothing but a root. */
export function rootIn(word: string | undefined): Root | undefined {
  const root = word !== undefined && /^[a-g][b#]?$/.test(word) ? parseRoot(word) : undefined;
  return root?.ok ? root.value : undefined;
}

/** Seven steps, as digits or as letters for tone and semitone, whole and half. */
function stepsIn(words: readonly string[]): readonly number[] | undefined {
  const signs = words.length === 1 ? [...(words[0] ?? '')] : words;
  if (signs.length !== 7) return undefined;
  const steps = signs.map((sign) => STEP_LETTERS.get(sign) ?? (/^[1-6]$/.test(sign) ? Number(sign) : 0));
  const isOctave = steps.every((step) => step > 0) && steps.reduce((sum, step) => sum + step, 0) === 12;
  return isOctave ? steps : undefined;
}

/**
 * Degrees with their alterations, none twice, apart or together (`1b2345b6b7`); a ninth, eleventh and
 * thirteenth are the second, fourth and sixth. Numbers from 0 upwards are semitones.
 */
function degreesIn(words: readonly string[]): readonly AskedDegree[] | undefined {
  const isTogether = words.length === 1 && /^(?:[b#]*[1-7]){2,}$/.test(words[0] ?? '');
  const signs = isTogether ? ((words[0] ?? '').match(/[b#]*[1-7]/g) ?? []) : words;
  if (signs[0] === '0' && signs.length > 1 && signs.every((sign) => /^(?:\d|1[01])$/.test(sign))) {
    return signs.map((sign) => ({ degree: undefined, semitones: Number(sign) }));
  }
  const digits = signs.map((sign) => sign.replace(/\D/g, ''));
  if (new Set(digits).size < digits.length) return undefined;
  const degrees = signs.map(degreeIn).filter((degree) => degree !== undefined);
  const isOne = signs.length === 1 && /[b#]|nat/.test(signs[0] ?? '');
  return degrees.length === signs.length && (signs.length > 1 || isOne) ? degrees : undefined;
}

function degreeIn(sign: string): AskedDegree | undefined {
  const [, accidental, digits = ''] = /^(nat|b{1,5}|#{1,5})?([1-7]|9|11|13)$/.exec(sign) ?? [];
  if (digits === '') return undefined;
  const degree = ((Number(digits) - 1) % 7) + 1;
  return { degree, semitones: pitchClassOf((MAJOR_SEMITONES[degree - 1] ?? 0) + alterationOf(accidental)) };
}
