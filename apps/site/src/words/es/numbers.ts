/**
 * Números y enumeraciones. Spanish.
 */
import type * as English from '../en/numbers.ts';
import { measuresWith } from '../measures.ts';

const NUMBERS = [
  'ninguna',
  'una',
  'dos',
  'tres',
  'cuatro',
  'cinco',
  'seis',
  'siete',
  'ocho',
  'nueve',
  'diez',
];
const FIRSTS = ['cero', 'primer', 'segundo', 'tercer', 'cuarto', 'quinto', 'sexto', 'séptimo'];

/** Up to ten in words, beyond that in figures; feminine, as notes are. */
export const numberWord: typeof English.numberWord = (count) => NUMBERS[count] ?? String(count);

/** `primer` to `séptimo`, as before a masculine noun. */
export const ordinalWord: typeof English.ordinalWord = (place) => FIRSTS[place] ?? ordinal(place);

/** `4.º` */
export const ordinal: typeof English.ordinal = (place) => `${place}.º`;

/** `a`, `a y b`, `a, b y c`; `e` before the sound of an i. */
export const joined: typeof English.joined = (items) => {
  if (items.length < 2) return items.join('');
  const last = items.at(-1) ?? '';
  const and = /^h?[ií](?![aeo])/i.test(last) ? 'e' : 'y';
  return `${items.slice(0, -1).join(', ')} ${and} ${last}`;
};

/** A count with its noun: `1 modo`, `7 modos`. */
export const counted: typeof English.counted = (count, noun, plural = noun) =>
  `${count} ${count === 1 ? noun : plural}`;

/** A text with its first letter in upper case. */
export const capitalised: typeof English.capitalised = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** A whole number with a proper minus sign. */
export const withMinus: typeof English.withMinus = (value) => String(value).replace('-', '−');

/** Numbers and lengths to a tenth, as Spanish writes them. */
export const { tenths, lengthWords } = measuresWith(',');
