/**
 * What a fingering costs. Nothing may be out of reach: that is a bar, not a price. Among what a hand can
 * play, costs are compared in this order: least hand travel, then least stretch, then the fewest awkward
 * string changes. Lengths are compared in whole tenths of a millimetre, so that no sum depends on the
 * order in which it was added up.
 */

/** A cost, broken down. */
export interface Cost {
  /** How far finger 1's natural place moves along the neck, in all, in millimetres. */
  readonly travelMm: number;
  /**
   * How far fingers reach beyond their own frets, in all, in millimetres; a finger that slides along its
   * string to do so counts the slide as well. Finger 4's reach counts one and
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
const TRAVEL_UNIT = 2 ** 24;

/** One awkward string change. */
export const STRING_CHANGE: PackedCost = 1;

/** A stretch, packed. */
export function packStretch(tenthsMm: number): PackedCost {
  return tenthsMm * STRETCH_UNIT;
}

/** A move of the hand, packed. */
export function packTravel(tenthsMm: number): PackedCost {
  return tenthsMm * TRAVEL_UNIT;
}

/** A packed cost taken apart. */
export function unpackCost(packed: PackedCost): Cost {
  const travel = Math.floor(packed / TRAVEL_UNIT);
  const rest = packed - travel * TRAVEL_UNIT;
  const stretch = Math.floor(rest / STRETCH_UNIT);
  return { travelMm: travel / 10, stretchMm: stretch / 10, stringChanges: rest - stretch * STRETCH_UNIT };
}
