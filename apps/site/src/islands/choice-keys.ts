/**
 * The names of choices in an address: all that the first script of a page knows of them.
 */

/** The names of choices in an address, in the order in which they stand there: first those of the neck. */
export const CHOICE_KEYS = [
  'instrument',
  'tuning',
  'transpose',
  'capo',
  'capoStrings',
  'frets',
  'scaleLength',
  'labels',
  'hand',
  'style',
  'answer',
  'fret',
  'open',
  'handSize',
  'reach',
  'order',
  'sharing',
  'compare',
  'names',
  'accidentals',
] as const;

/** The name of a choice. */
export type ChoiceKey = (typeof CHOICE_KEYS)[number];

/** Whether a query chooses anything. */
export function choosesAnything(query: URLSearchParams): boolean {
  return CHOICE_KEYS.some((key) => query.has(key));
}
