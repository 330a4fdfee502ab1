/**
 * Touches: the ways to play one note, and what it costs to go from one to the next under a hand that stays.
 */
import { type PackedCost, packShift, STRING_CHANGE } from './cost.ts';
import type { HandPosition } from './hand.ts';

/** A place where a note could be played. */
export interface Option {
  /** String number, 1 at the highest-sounding side. */
  readonly string: number;
  readonly slot: number;
  readonly isOpen: boolean;
}

/** A note to be played. */
export interface LineNote {
  /** Places that differ from one another. */
  readonly options: readonly Option[];
  /** Whether the hand must stay where it was for the note before, and no finger slide. */
  readonly holdsHand: boolean;
}

/** How a note is played. */
export interface Touch extends Option {
  /** 0 for an open string, else 1 to 4. */
  readonly finger: number;
  readonly position: HandPosition;
  /** How far the finger reaches beyond its own frets, in tenths of a millimetre, as the cost counts it. */
  readonly stretchTenthsMm: number;
}

/** A line and what it costs to play it so. */
export interface Solution {
  readonly cost: PackedCost;
  readonly touches: readonly Touch[];
}

/** How an option is played in a position, or undefined where the hand does not cover it. */
export function touchIn(position: HandPosition, option: Option): Touch | undefined {
  const { string, slot, isOpen } = option;
  if (isOpen) return { string, slot, isOpen, position, finger: 0, stretchTenthsMm: 0 };
  if (slot < position.from || slot > position.to) return undefined;
  const at = slot - position.from;
  const finger = position.fingers[at] as number;
  return { string, slot, isOpen, position, finger, stretchTenthsMm: position.stretchTenthsMm[at] as number };
}

/**
 * What the fingers pay for going from one touch to the next: for a change of string, or for a finger that
 * slides along its string to reach beyond its own frets; infinite where it may not slide.
 */
export function costOfChange(from: Touch, to: Touch, holdsHand: boolean): PackedCost {
  if (from.string !== to.string) return awkwardnessOf(from, to) * STRING_CHANGE;
  if (from.finger !== to.finger || from.slot === to.slot || from.position !== to.position) return 0;
  if (from.stretchTenthsMm === 0 && to.stretchTenthsMm === 0) return 0;
  return holdsHand ? Number.POSITIVE_INFINITY : packShift(0);
}

/** Whether two lines look alike to a player: string, fret and finger of every note. */
export function isAlike(a: readonly Touch[], b: readonly Touch[]): boolean {
  return a.every((touch, at) => {
    const other = b[at] as Touch;
    return touch.string === other.string && touch.slot === other.slot && touch.finger === other.finger;
  });
}

/** One for a change that skips a string, one for going back a string, one for rolling a finger from string to string. */
function awkwardnessOf(from: Touch, to: Touch): number {
  const skips = Math.abs(from.string - to.string) > 1;
  const goesBack = to.string > from.string;
  const rolls = from.finger === to.finger && from.finger !== 0;
  return Number(skips) + Number(goesBack) + Number(rolls);
}
