/**
 * Slugs: names as they stand in addresses.
 */
import { toAscii } from '@stillroot/core';
import { plainLetters } from './name-key.ts';

const SHARP_WORDS = ['', 'sharp', 'doublesharp', 'triplesharp', 'quadruplesharp'] as const;

/**
 * Lower case, words joined by hyphens; flats and naturals stay ASCII, sharps become words, since `#` has
 * a meaning of its own in an address.
 * @example slugOf('Dorian #4')      // 'dorian-sharp4'
 * @example slugOf('Locrian b4 bb7') // 'locrian-b4-bb7'
 */
export function slugOf(name: string): string {
  return plainLetters(toAscii(name))
    .replace(/#{1,4}/g, (run) => SHARP_WORDS[run.length] ?? run)
    .replace(/[/'’]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
