/**
 * What a fingering costs. Nothing may be out of reach: that is a bar, not a price. Among what a hand can
 * play, costs are compared in this order: least hand travel, in the fewest shifts, then least stretch, then
 * the fewest awkward string changes. Lengths are compared in whole tenths of a millimetre, so that no sum depends on the
 * order in which it was added up.
 */

/** A cost, broken down. */
export interface Cost {
  /** Notes that no finger reaches. Always none: nothing out of reach is handed out as a fingering. */
  readonly outOfReach: 0;
  /** How far finger 1's natural place moves along the neck, in all, in millimetres. */
  readonly travelMm: number;
  /**
   * How often it moves, one long shift being easier to land than several short ones; a finger that slides
   * along its string to reach beyond its own fret counts as one more.
   */
  readonly shifts: number;
  /**
   * How far fingers reach beyond their own frets, in all, in millimetres. Finger 4's reach counts one and
   * a half times, so that two whole tones are taken 1-2-4 (common practice, no source).
   */
  readonly stretchMm: number;
  /**
   * Awkward string changes: one for each string change that skips a string, one for each that goes back
   * towards the lower side, one for each in which a finger rolls from string to string.
   */
  readonly stringChanges: number;
}

/** A cost as one whole number that sorts as costs are compared. */
export type PackedCost = number;

const STRETCH_UNIT = 2 ** 7;
const SHIFT_UNIT = 2 ** 24;
const TRAVEL_UNIT = 2 ** 31;

/** One awkward string change. */
export const STRING_CHANGE: PackedCost = 1;

/** A stretch, packed. */
export function packStretch(tenthsMm: number): PackedCost {
  return tenthsMm * STRETCH_UNIT;
}

/** A shift of the hand, packed. */
export function packShift(tenthsMm: number): PackedCost {
  return tenthsMm * TRAVEL_UNIT + SHIFT_UNIT;
}

/** A packed cost taken apart. */
export function unpackCost(packed: PackedCost): Cost {
  const travel = Math.floor(packed / TRAVEL_UNIT);
  const afterTravel = packed - travel * TRAVEL_UNIT;
  const shifts = Math.floor(afterTravel / SHIFT_UNIT);
  const afterShifts = afterTravel - shifts * SHIFT_UNIT;
  const stretch = Math.floor(afterShifts / STRETCH_UNIT);
  const stringChanges = afterShifts - stretch * STRETCH_UNIT;
  return { outOfReach: 0, travelMm: travel / 10, shifts, stretchMm: stretch / 10, stringChanges };
}
