/**
 * The names of the play-along's choices in an address. They stay there whatever else is chosen, and links
 * carry them along.
 */

/** In the order in which they stand there. */
export const PLAY_KEYS = [
  'tempo',
  'step',
  'top',
  'every',
  'pattern',
  'value',
  'meter',
  'countIn',
  'repeats',
  'rest',
  'seed',
  'backing',
  'metronome',
  'loop',
  'turn',
  'mix',
] as const;

/** The choices of the play-along in a query. */
export function playQuery(query: URLSearchParams): URLSearchParams {
  return new URLSearchParams([...query].filter(([key]) => PLAY_KEYS.some((one) => one === key)));
}
