/**
 * A scale and the instrument it is wanted on in one text: `A Phrygian dominant seven-string drop A`.
 */

/** One way to part a text: what may name a scale, and what may name an instrument. */
export interface Parting {
  readonly scale: string;
  readonly instrument: string;
}

/** Words that join both; the article is a root where nothing before it says otherwise. */
const JOINS: ReadonlySet<string> = new Set(
  'on for with the my auf für mit dem der einem einer meinem meiner en para con el la un una mi'.split(' '),
);
const ARTICLE = /\b(on|for|with) an? /g;

/** Every way to part a text into a scale and an instrument after or before it, the most told of the instrument first. */
export function partings(text: string): readonly Parting[] {
  const words = text
    .replaceAll(ARTICLE, '$1 ')
    .split(/[\s,;]+/)
    .filter((word) => word !== '');
  const ways: Parting[] = [];
  for (let count = words.length - 1; count > 0; count -= 1) {
    const last = words.length - count;
    ways.push({ scale: joined(words.slice(0, last)), instrument: joined(words.slice(last)) });
    ways.push({ scale: joined(words.slice(count)), instrument: joined(words.slice(0, count)) });
  }
  return ways.filter(({ scale, instrument }) => scale !== '' && instrument !== '');
}

/** Words without those at either end that only join. */
function joined(words: readonly string[]): string {
  const says = (word: string): boolean => !JOINS.has(word);
  return words.slice(words.findIndex(says), words.findLastIndex(says) + 1).join(' ');
}
