/**
 * The voices of a play-along and their volumes.
 */

/** The voices, each with a volume of its own. */
export const VOICES = ['notes', 'drone', 'chords', 'clicks'] as const;

export type Voice = (typeof VOICES)[number];

/** Volumes of the voices, 0 to 1, as loudness is heard rather than as a factor. */
export type Mix = Readonly<Record<Voice, number>>;
