/**
 * Helmholtz pitch notation: the letter's case and its strokes tell the octave, `C,, C, C c c' c''`, with
 * middle C at `c'` (Helmholtz, On the Sensations of Tone, 1863, English by Ellis, 1875). Also taken: strokes
 * before the letter (`,C`), repeated capitals for sub-octave strokes (the English way: `CC`), and small
 * raised or lowered figures that count strokes (`c²`, `C₁`).
 */
import { fail, type Result, succeed } from '../problem.ts';
import { formatAccidental, toAscii } from './accidental.ts';
import { LETTERS } from './letter.ts';
import { parseNote } from './note.ts';
import { type Pitch, pitchOf } from './pitch.ts';

/** The octave of capitals without strokes, in which C is two octaves below middle C. */
const GREAT_OCTAVE = 2;
const SMALL_OCTAVE = 3;

/** What is typed or typeset for strokes, and what it stands for. A comma may be one, or may part two words. */
const STROKES: ReadonlyMap<string, string> = new Map([
  ...[...'’ʹ′´`'].map((sign) => [sign, "'"] as const),
  ...[...'"”ʺ″'].map((sign) => [sign, "''"] as const),
  ['‴', "'''"],
  ['⁗', "''''"],
  ...[...'¹²³⁴⁵⁶'].map((figure, at) => [figure, "'".repeat(at + 1)] as const),
  ...[...'͵‚ˏ'].map((sign) => [sign, ','] as const),
  ...[...'₁₂₃'].map((figure, at) => [figure, ','.repeat(at + 1)] as const),
]);

const ACCIDENTAL = '(?:b{0,3}|#{0,3}|s{0,3}|x)';
const GREAT = new RegExp(`^(,*)([A-G])(\\2*)(${ACCIDENTAL})(,*)$`);
const SMALL = new RegExp(`^([a-g]${ACCIDENTAL})('*)$`);

/** Whether a text holds a stroke that can be nothing else: any but a comma. */
export function hasStrokes(text: string): boolean {
  return [...text].some((sign) => sign === "'" || STROKES.has(sign));
}

/**
 * Reads a pitch in Helmholtz notation, sounding between MIDI 0 and 127.
 * @example parseHelmholtz("e'") // E4, midi 64
 * @example parseHelmholtz('E,') // E1, midi 28
 */
export function parseHelmholtz(text: string, field = 'pitch'): Result<Pitch> {
  const plain = toAscii([...text.trim()].map((sign) => STROKES.get(sign) ?? sign).join(''));
  const found = readGreat(plain) ?? readSmall(plain);
  const note = found && parseNote(found.note, field);
  const pitch = note?.ok && found ? pitchOf(note.value, found.octave) : undefined;
  if (pitch) return succeed(pitch);
  return fail(field, text, { kind: 'helmholtz-pitch' });
}

/**
 * A pitch in Helmholtz notation, in ASCII.
 * @example formatHelmholtz(e4) // "e'"
 */
export function formatHelmholtz({ letterIndex, alteration, octave }: Pitch): string {
  const letter = LETTERS[letterIndex] as string;
  const accidental = formatAccidental(alteration);
  return octave <= GREAT_OCTAVE
    ? letter + accidental + ','.repeat(GREAT_OCTAVE - octave)
    : letter.toLowerCase() + accidental + "'".repeat(octave - SMALL_OCTAVE);
}

function readGreat(plain: string): { readonly note: string; readonly octave: number } | undefined {
  const [, before = '', letter, repeats = '', accidental = '', after = ''] = GREAT.exec(plain) ?? [];
  if (letter === undefined) return undefined;
  const used = [before, repeats, after].filter((strokes) => strokes !== '');
  if (used.length > 1) return undefined;
  return { note: letter + accidental, octave: GREAT_OCTAVE - (used[0]?.length ?? 0) };
}

function readSmall(plain: string): { readonly note: string; readonly octave: number } | undefined {
  const [, note, primes = ''] = SMALL.exec(plain) ?? [];
  return note === undefined ? undefined : { note, octave: SMALL_OCTAVE + primes.length };
}
