/**
 * The 21 roots (seven letters, each flat, natural or sharp) and the 17 of them in everyday use.
 */
import { fail, type Result, succeed } from '../problem.ts';
import { LETTERS } from './letter.ts';
import { formatNote, type NoteName, parseNote, pitchClassOfNote } from './note.ts';

/** A root: a spelled note of at most one accidental. */
export interface Root extends NoteName {
  /** 0 to 20: letter by letter from C, flat before natural before sharp. */
  readonly index: number;
  /** ASCII name: `Bb`. */
  readonly name: string;
  /** The name in an address: `b-flat`. */
  readonly slug: string;
  /** 0 (C) to 11 (B). */
  readonly pitchClass: number;
}

/** All 21 roots. */
export const ROOTS: readonly Root[] = LETTERS.flatMap((letter, letterIndex) =>
  [-1, 0, 1].map((alteration, at) => ({
    index: letterIndex * 3 + at,
    letterIndex,
    alteration,
    name: formatNote(letterIndex, alteration),
    slug: letter.toLowerCase() + ['-flat', '', '-sharp'][at],
    pitchClass: pitchClassOfNote({ letterIndex, alteration }),
  })),
);

/** The 17 everyday roots: those that are not another natural in disguise (no C♭, E♯, F♭, B♯). */
export const EVERYDAY_ROOTS: readonly Root[] = ROOTS.filter(
  (root) => root.alteration === 0 || ![0, 4, 5, 11].includes(root.pitchClass),
);

/** The roots that sound alike, by pitch class. */
export const ROOTS_BY_PITCH_CLASS: readonly (readonly Root[])[] = Array.from(
  { length: 12 },
  (_, pitchClass) => ROOTS.filter((root) => root.pitchClass === pitchClass),
);

/** By ASCII name and by address form. A natural's address is its name in lower case. */
const ROOTS_BY_TEXT: ReadonlyMap<string, Root> = new Map(
  ROOTS.flatMap((root) => [
    [root.name, root],
    [root.slug, root],
  ]),
);

/** The root of that exact ASCII name or address form, or undefined: `Bb`, `b-flat`. */
export function rootNamed(name: string): Root | undefined {
  return ROOTS_BY_TEXT.get(name);
}

/**
 * Reads a root: `A`, `Bb`, `F#`, `Fs`, or the address form `f-sharp`.
 * @example parseRoot('Fs') // F#
 */
export function parseRoot(text: string, field = 'root'): Result<Root> {
  const known = rootNamed(text) ?? rootNamed(text.trim().toLowerCase());
  if (known) return succeed(known);
  const note = parseNote(text, field);
  if (note.ok && Math.abs(note.value.alteration) <= 1) {
    return succeed(ROOTS[note.value.letterIndex * 3 + note.value.alteration + 1] as Root);
  }
  return fail(field, text, { kind: 'root' });
}
