/**
 * Places from first to seventh, however they are written.
 */

/** Beginnings of words for places, in English, German and Spanish, as {@link wordsOf} writes words. */
const STEMS: readonly (readonly string[])[] = [
  ['first', 'erst', 'primer'],
  ['second', 'zweit', 'segund'],
  ['third', 'dritt', 'tercer'],
  ['fourth', 'viert', 'cuart'],
  ['fifth', 'funft', 'quint'],
  ['sixth', 'sechst', 'sext'],
  ['seventh', 'siebt', 'septim'],
];

const ENDINGS = ['', 'e', 'er', 'en', 'es', 'em', 'o', 'a'];

const ROMAN = ['i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii'];

const PLACES: ReadonlyMap<string, number> = new Map([
  ...STEMS.flatMap((stems, at) =>
    stems.flatMap((stem) => ENDINGS.map((ending) => [`${stem}${ending}`, at + 1] as const)),
  ),
  ...ROMAN.map((word, at) => [word, at + 1] as const),
]);

/**
 * The place, 1 to 7, that a word tells; undefined where it tells none.
 * @example placeOf('4th')     // 4
 * @example placeOf('vierter') // 4
 * @example placeOf('iv')      // 4
 */
export function placeOf(word = ''): number | undefined {
  const [, digit] = /^([1-7])(?:st|nd|rd|th|[oaºª])?$/.exec(word) ?? [];
  return digit === undefined ? PLACES.get(word) : Number(digit);
}
