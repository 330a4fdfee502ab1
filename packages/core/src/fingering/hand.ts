/**
 * The hand. It lies in a position, named by the fret of finger 1, and covers as many frets as its reach
 * allows: four with one finger a fret, a fifth and a sixth by stretching finger 1 down and finger 4 up;
 * three as 1-2-4 where four frets are too far apart (the double-bass hand of Simandl's New Method, as the
 * American School of Double Bass teaches it); up to eight where two frets belong to each finger (the
 * mandolin, after the violin). The thumb is not used.
 */
import type { FretSlot, Neck } from '../instrument/neck.ts';

/** The reach a hand is given unless told otherwise: an engineering estimate, not a measured limit. */
export const DEFAULT_REACH_MM = 120;

/** The smallest and the widest reach that may be asked for. */
export const REACH_RANGE_MM = { from: 40, to: 200 } as const;

/** Beyond this a stretch is called wide and a caution goes with it: an engineering estimate as well. */
export const COMFORTABLE_REACH_MM = 100;

/** A hand laid on the neck: which frets it covers and with which finger. */
export interface HandPosition {
  /** The slot where finger 1 lies without stretching. */
  readonly indexSlot: number;
  /** The lowest and the highest slot covered. */
  readonly from: number;
  readonly to: number;
  /** The finger on each slot from `from` upwards. */
  readonly fingers: readonly number[];
  /** The stretch that finger makes there, in tenths of a millimetre, finger 4's counted as the cost says. */
  readonly stretchTenthsMm: readonly number[];
}

const LITTLE_FINGER_WEIGHT = 1.5;

/** One finger a fret, by the number of frets that are within reach. */
const ONE_FINGER_PER_FRET: readonly (readonly number[])[] = [[1, 2, 3, 4], [1, 2, 4], [1, 2], [1]];

/** Two frets a finger, cut to what is within reach. */
const TWO_FRETS_PER_FINGER: readonly number[] = [1, 1, 2, 2, 3, 3, 4, 4];

/** Millimetres between two slots of a neck. */
export function spanMm(neck: Neck, fromSlot: number, toSlot: number): number {
  return (neck.slots[toSlot] as FretSlot).distanceMm - (neck.slots[fromSlot] as FretSlot).distanceMm;
}

/** Where a slot lies, in whole tenths of a millimetre from the nut. */
export function tenthsMm(neck: Neck, slot: number): number {
  return Math.round((neck.slots[slot] as FretSlot).distanceMm * 10);
}

/** The most slots that any hand on this neck can cover at once. */
export function widestHand(neck: Neck): number {
  return neck.handFrame === 'two-frets-per-finger' ? 8 : 6;
}

/**
 * Every way to lay the hand with finger 1 at home on a slot from `fromSlot` to `toSlot`.
 * @param fromSlot at least 1: the nut is nobody's fret
 */
export function handPositions(
  neck: Neck,
  reachMm: number,
  fromSlot: number,
  toSlot: number,
): readonly HandPosition[] {
  const last = Math.min(toSlot, neck.slots.length - 1);
  const positions: HandPosition[] = [];
  for (let indexSlot = Math.max(1, fromSlot); indexSlot <= last; indexSlot += 1) {
    if (neck.handFrame === 'two-frets-per-finger') positions.push(widePosition(neck, reachMm, indexSlot));
    else positions.push(...closePositions(neck, reachMm, indexSlot));
  }
  return positions;
}

function widePosition(neck: Neck, reachMm: number, indexSlot: number): HandPosition {
  let width = TWO_FRETS_PER_FINGER.length;
  while (width > 1 && !isWithinReach(neck, reachMm, indexSlot, indexSlot + width - 1)) width -= 1;
  const fingers = TWO_FRETS_PER_FINGER.slice(0, width);
  return {
    indexSlot,
    from: indexSlot,
    to: indexSlot + width - 1,
    fingers,
    stretchTenthsMm: fingers.map(() => 0),
  };
}

function closePositions(neck: Neck, reachMm: number, indexSlot: number): readonly HandPosition[] {
  const natural = ONE_FINGER_PER_FRET.find(
    ({ length }) => length === 1 || isWithinReach(neck, reachMm, indexSlot, indexSlot + length - 1),
  ) as readonly number[];
  const rest = natural.map(() => 0);
  const positions: HandPosition[] = [
    {
      indexSlot,
      from: indexSlot,
      to: indexSlot + natural.length - 1,
      fingers: natural,
      stretchTenthsMm: rest,
    },
  ];
  if (natural.length < 4) return positions;
  const low = indexSlot - 1;
  const high = indexSlot + 4;
  const down = low >= 1 ? tenthsMm(neck, indexSlot) - tenthsMm(neck, low) : 0;
  const up = high < neck.slots.length ? tenthsMm(neck, high) - tenthsMm(neck, high - 1) : 0;
  const weightedUp = Math.round(up * LITTLE_FINGER_WEIGHT);
  const stretched = (from: number, to: number): void => {
    if (from < 1 || !isWithinReach(neck, reachMm, from, to)) return;
    const fingers = [...(from === low ? [1] : []), ...natural, ...(to === high ? [4] : [])];
    const stretchTenthsMm = [...(from === low ? [down] : []), ...rest, ...(to === high ? [weightedUp] : [])];
    positions.push({ indexSlot, from, to, fingers, stretchTenthsMm });
  };
  stretched(low, high - 1);
  stretched(indexSlot, high);
  stretched(low, high);
  return positions;
}

function isWithinReach(neck: Neck, reachMm: number, fromSlot: number, toSlot: number): boolean {
  return toSlot < neck.slots.length && spanMm(neck, fromSlot, toSlot) <= reachMm;
}
