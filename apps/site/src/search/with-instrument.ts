/**
 * A scale and the instrument it is wanted on in one text: `A Phrygian dominant seven-string drop A`.
 */

/** One way to part a text: what may name a scale, and what may name an instrument. */
export interface Parting {
  readonly scale: string;
  readonly instrument: string;
}

/** Words that join both. */
const JOINS: ReadonlySet<string> = new Set([
  'on',
  'for',
  'with',
  'auf',
  'für',
  'en',
  'para',
  'a',
  'an',
  'the',
  'my',
]);

/** Every way to part a text into a scale and an instrument after or before it, the most told of the instrument first. */
export function partings(text: string): readonly Parting[] {
  const words = text.split(/[\s,;]+/).filter((word) => word !== '');
  const ways: Parting[] = [];
  for (let count = words.length - 1; count > 0; count -= 1) {
    const last = words.length - count;
    ways.push({ scale: joined(words.slice(0, last)), instrument: joined(words.slice(last)) });
    ways.push({ scale: joined(words.slice(count)), instrument: joined(words.slice(0, count)) });
  }
  return ways.filter(({ scale, instrument }) => scale !== '' && instrument !== '');
}

/** Words without those at either end that only join; a single letter in capitals may be a root. */
function joined(words: readonly string[]): string {
  const isJoin = (word: string | undefined): boolean => word !== undefined && JOINS.has(word);
  let from = 0;
  let to = words.length;
  while (from < to && isJoin(words[from])) from += 1;
  while (to > from && isJoin(words[to - 1])) to -= 1;
  return words.slice(from, to).join(' ');
}
