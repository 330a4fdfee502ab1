/**
 * Zahlen und Aufzählungen. German.
 */
import type * as English from '../en/numbers.ts';
import { measuresWith } from '../measures.ts';

const NUMBERS = ['keine', 'eine', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun', 'zehn'];
const FIRSTS = ['nullte', 'erste', 'zweite', 'dritte', 'vierte', 'fünfte', 'sechste', 'siebte'];

/** Up to ten in words, beyond that in figures. */
export const numberWord: typeof English.numberWord = (count) => NUMBERS[count] ?? String(count);

/** `erste` to `siebte`, as after an article in the nominative. */
export const ordinalWord: typeof English.ordinalWord = (place) => FIRSTS[place] ?? ordinal(place);

/** `4.` */
export const ordinal: typeof English.ordinal = (place) => `${place}.`;

/** `a`, `a und b`, `a, b und c`. */
export const joined: typeof English.joined = (items) =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} und ${items.at(-1)}`;

/** A count with its noun: `1 Modus`, `7 Modi`. */
export const counted: typeof English.counted = (count, noun, plural = noun) =>
  `${count} ${count === 1 ? noun : plural}`;

/** A text with its first letter in upper case. */
export const capitalised: typeof English.capitalised = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** A whole number with a proper minus sign. */
export const withMinus: typeof English.withMinus = (value) => String(value).replace('-', '−');

/** Numbers and lengths to a tenth, as German writes them. */
export const { tenths, lengthWords } = measuresWith(',');
