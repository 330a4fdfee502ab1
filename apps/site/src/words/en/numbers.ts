/**
 * Numbers and lists in words.
 */
import { measuresWith } from '../measures.ts';

const NUMBERS = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
] as const;
const FIRSTS = ['zeroth', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh'] as const;

/** Up to ten in words, beyond that in figures. */
export function numberWord(count: number): string {
  return NUMBERS[count] ?? String(count);
}

/** `first` to `seventh`. */
export function ordinalWord(place: number): string {
  return FIRSTS[place] ?? ordinal(place);
}

/** `1st`, `2nd`, `3rd`, `4th` ... */
export function ordinal(place: number): string {
  const teens = place % 100 > 10 && place % 100 < 14;
  const ending = teens ? 'th' : (['th', 'st', 'nd', 'rd'][place % 10] ?? 'th');
  return `${place}${ending}`;
}

/** `a`, `a and b`, `a, b and c`. */
export function joined(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** A count with its noun: `1 mode`, `7 modes`, `66 families`. */
export function counted(count: number, noun: string, plural = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : plural}`;
}

/** A text with its first letter in upper case. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A whole number with a proper minus sign. */
export function withMinus(value: number): string {
  return String(value).replace('-', '−');
}

/** Numbers and lengths to a tenth, as English writes them. */
export const { tenths, lengthWords } = measuresWith('.');
