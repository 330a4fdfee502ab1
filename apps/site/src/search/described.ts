/**
 * Modes as they are remembered: a church mode and what is different about it, in words.
 */
import { CHURCH_MODES, MAJOR_SEMITONES, type Mode, UNIVERSE } from '@stillroot/core';
import { placeOf } from './ordinals.ts';
import { wordsOf } from './words-of.ts';

const FILLERS: ReadonlySet<string> = new Set([
  'with',
  'a',
  'an',
  'the',
  'and',
  'but',
  'its',
  'scale',
  'mode',
]);

/** Qualities of intervals, as alterations against the major scale. */
const QUALITIES = new Map<string, (degree: number) => number>([
  ['major', () => 0],
  ['maj', () => 0],
  ['perfect', () => 0],
  ['minor', () => -1],
  ['min', () => -1],
  ['augmented', () => 1],
  ['aug', () => 1],
  ['diminished', diminished],
  ['dim', diminished],
]);

/** Changes against the church mode itself. */
const MOVES: ReadonlyMap<string, number> = new Map([
  ['raised', 1],
  ['sharpened', 1],
  ['lowered', -1],
  ['flattened', -1],
]);

const SIGN = /^(?:nat|b+|#+)[2-7]$/;

/**
 * The mode that a description means; undefined where it is none, or no mode.
 * @example describedMode(wordsOf('phrygian with a major third')) // Phrygian dominant
 * @example describedMode(wordsOf('dorian with a raised 4th'))    // Dorian #4
 */
export function describedMode(words: readonly string[]): Mode | undefined {
  const [first = '', ...told] = wordsOf(words.map(inDigits).join(' ')).filter((word) => !FILLERS.has(word));
  const church = CHURCH_MODES.find(({ name }) => name.toLowerCase() === first);
  // A church mode and signs alone is a name.
  const isName = words.length === told.length + 1 && told.every((word) => SIGN.test(word));
  if (!church || told.length === 0 || isName) return undefined;
  const semitones = [...church.semitones];
  for (let at = 0; at < told.length; at += 1) {
    const word = told[at] as string;
    const isPair = QUALITIES.has(word) || MOVES.has(word);
    const sign = isPair ? (told[at + 1] ?? '') : word;
    const [, accidental, digit] = /^(nat|b+|#+)?([2-7])$/.exec(sign) ?? [];
    if (digit === undefined || (isPair && accidental !== undefined)) return undefined;
    const degree = Number(digit);
    const own = semitones[degree - 1] as number;
    const plain = MAJOR_SEMITONES[degree - 1] as number;
    const move = MOVES.get(word);
    const alteration = QUALITIES.get(word)?.(degree) ?? alterationOf(accidental);
    semitones[degree - 1] = move === undefined ? plain + alteration : own + move;
    at += Number(isPair);
  }
  const steps = semitones.map((semitone, at) => (semitones[at + 1] ?? 12) - semitone);
  return steps.every((step) => step > 0) ? UNIVERSE.modesById.get(steps.join('')) : undefined;
}

/** A fourth or fifth is diminished by one semitone, what can be minor by two. */
function diminished(degree: number): number {
  return degree === 4 || degree === 5 ? -1 : -2;
}

/** What an accidental before a digit does to the degree of the major scale. */
export function alterationOf(accidental = 'nat'): number {
  if (accidental === 'nat') return 0;
  return accidental.startsWith('b') ? -accidental.length : accidental.length;
}

/** `third` and `3rd` are `3`, `nat3rd` is `nat3`. */
function inDigits(word: string): string {
  return String(placeOf(word) ?? word.replace(/(\d)(?:nd|rd|th)$/, '$1'));
}
