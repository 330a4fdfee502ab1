/**
 * Names as they are looked up: case, spaces, hyphens, signs and words for accidentals do not count.
 */
import { toAscii } from '@stillroot/core';

/** Longer text than this is no name of anything here. */
export const LONGEST_NAME = 80;

const SHARPS_BY_WORD: ReadonlyMap<string, number> = new Map([
  ['double', 2],
  ['triple', 3],
  ['quadruple', 4],
]);

/**
 * The key of a mode's or family's name. Accidentals may be signs, ASCII or words, and `s` may stand for a
 * sharp before a digit, as in addresses.
 * @example modeKey('Dorian ♯4')       // 'dorian#4'
 * @example modeKey('dorian-sharp4')   // 'dorian#4'
 * @example modeKey('Locrian double flat 7') // 'locrianbb7'
 */
export function modeKey(name: string): string {
  const ascii = plainLetters(toAscii(name))
    .replace(
      /(?:(double|triple|quadruple)[\s-]?)?(sharp|flat)[\s-]?(?=\d)/g,
      (_, times: string | undefined, word: string) =>
        (word === 'sharp' ? '#' : 'b').repeat(SHARPS_BY_WORD.get(times ?? '') ?? 1),
    )
    .replace(/natural[\s-]?(?=\d)/g, 'nat')
    .replace(/s+(?=\d)/g, (run) => '#'.repeat(run.length));
  return withoutSeparators(ascii);
}

/**
 * The key of an instrument's name.
 * @example instrumentKey('7-String Guitar') // '7stringguitar'
 */
export function instrumentKey(name: string): string {
  return withoutSeparators(plainLetters(toAscii(name)));
}

/** Lower case, without diacritics. */
export function plainLetters(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase();
}

/** Only what separates words is dropped; any other character stays and makes the key another one. */
function withoutSeparators(text: string): string {
  return text.replace(/[\s\-_()]+/g, '');
}
