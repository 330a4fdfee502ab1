/**
 * Note names without an octave: a letter and an alteration, written in ASCII (`F#`, `Bbb`).
 */
import { fail, type Result, succeed } from '../problem.ts';
import { formatAccidental, toAscii } from './accidental.ts';
import { LETTERS, NATURAL_SEMITONES, pitchClassOf } from './letter.ts';

/** A spelled note. */
export interface NoteName {
  /** 0 (C) to 6 (B). */
  readonly letterIndex: number;
  /** Semitones above (+) or below (−) the natural letter. */
  readonly alteration: number;
}

/** The widest alteration that any mode on any root needs: five flats to five sharps, with room to spare. */
const WIDEST = 8;
const STRIDE = 2 * WIDEST + 1;

/**
 * Every name once, at {@link noteIndex}, so that spelling is a look-up and equal names are one string. A
 * semitone of alteration is one place.
 */
export const NOTE_NAMES: readonly string[] = LETTERS.flatMap((letter) =>
  Array.from({ length: STRIDE }, (_, at) => letter + formatAccidental(at - WIDEST)),
);

/**
 * The ASCII name of a letter and an alteration of at most eight semitones either way.
 * @example formatNote(6, -2) // 'Bbb'
 */
export function formatNote(letterIndex: number, alteration: number): string {
  return NOTE_NAMES[noteIndex(letterIndex, alteration)] as string;
}

/** Where the name of a letter and an alteration stands in {@link NOTE_NAMES}. */
export function noteIndex(letterIndex: number, alteration: number): number {
  return letterIndex * STRIDE + alteration + WIDEST;
}

/** The pitch class, 0 (C) to 11 (B), of a spelled note. */
export function pitchClassOfNote(note: NoteName): number {
  return pitchClassOf((NATURAL_SEMITONES[note.letterIndex] as number) + note.alteration);
}

/**
 * Reads a note name: a letter, then up to three flats or sharps, as ASCII or signs. `s` may stand for
 * `#`, so that no escaping is needed in an address.
 * @param field what to call the input in a problem
 * @example parseNote('Fs') // { letterIndex: 3, alteration: 1 }
 */
export function parseNote(text: string, field = 'note'): Result<NoteName> {
  const match = /^([A-Ga-g])(b{0,3}|#{0,3}|s{0,3}|x)$/.exec(toAscii(text.trim()));
  if (!match) return fail(field, text, { kind: 'note' });
  const letterIndex = LETTERS.indexOf((match[1] as string).toUpperCase() as (typeof LETTERS)[number]);
  const accidental = match[2] as string;
  const size = accidental === 'x' ? 2 : accidental.length;
  return succeed({ letterIndex, alteration: accidental.startsWith('b') ? -size : size });
}
