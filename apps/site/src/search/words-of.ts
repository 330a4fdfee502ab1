/**
 * Names and whatever is typed, in words as they are compared.
 */
import { toAscii } from '@stillroot/core';

const TIMES: ReadonlyMap<string, number> = new Map([
  ['double', 2],
  ['triple', 3],
  ['quadruple', 4],
]);

/**
 * A text in words: lower case, without diacritics, accidentals in ASCII however they were written.
 * @example wordsOf('Dorian ♯4')             // ['dorian', '#4']
 * @example wordsOf('Locrian double flat 7') // ['locrian', 'bb7']
 */
export function wordsOf(text: string): readonly string[] {
  return toAscii(text)
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(
      /(?:\b(double|triple|quadruple)[\s-]*|\b)(sharp|flat)[\s-]*(?=\d)/g,
      (_, times: string | undefined, word: string) =>
        (word === 'sharp' ? '#' : 'b').repeat(TIMES.get(times ?? '') ?? 1),
    )
    .replace(/\bnatural[\s-]*(?=\d)/g, 'nat')
    .split(/[^\p{L}\p{N}#]+/u)
    .filter((word) => word !== '');
}
