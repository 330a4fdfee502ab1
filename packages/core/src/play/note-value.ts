/**
 * Note values in ticks, the whole-numbered time in which everything that is played is reckoned.
 */

/**
 * Ticks of a quarter note: 480 = 2⁵ · 3 · 5, so that every value here is a whole number of ticks, and
 * quintuplets would be too.
 */
export const TICKS_PER_QUARTER = 480;

/** The note values that are not altered, longest first, each half the one before it. */
const PLAIN_VALUES = ['whole', 'half', 'quarter', 'eighth', 'sixteenth', 'thirty-second'] as const;

type PlainValue = (typeof PLAIN_VALUES)[number];

/** How long a note lasts: plain, half as long again (dotted), or three in the time of two (a triplet). */
export type NoteValue = PlainValue | `dotted-${PlainValue}` | `${PlainValue}-triplet`;

/** Every note value. */
export const NOTE_VALUES: readonly NoteValue[] = [
  ...PLAIN_VALUES,
  ...PLAIN_VALUES.map((value) => `dotted-${value}` as const),
  ...PLAIN_VALUES.map((value) => `${value}-triplet` as const),
];

const TICKS: ReadonlyMap<NoteValue, number> = new Map(
  PLAIN_VALUES.flatMap((value, at) => {
    const ticks = (4 * TICKS_PER_QUARTER) / 2 ** at;
    return [
      [value, ticks],
      [`dotted-${value}`, (ticks * 3) / 2],
      [`${value}-triplet`, (ticks * 2) / 3],
    ] as const;
  }),
);

/**
 * Ticks of a note value.
 * @example ticksOf('dotted-eighth') // 360
 */
export function ticksOf(value: NoteValue): number {
  return TICKS.get(value) as number;
}

/** Whether three of a value go in the time of two. */
export function isTriplet(value: NoteValue): boolean {
  return value.endsWith('-triplet');
}
