/**
 * The hand. It lies in a position, named by the fret of finger 1, and covers as many frets as lie within
 * its comfortable reach: four with one finger a fret; three as 1-2-4 where four are too far apart (the
 * double-bass hand of Simandl's New Method, as the American School of Double Bass teaches it); seven where
 * two frets belong to each of the first three fingers (the mandolin, after the violin). One more fret below
 * and one above are had by stretching finger 1 down and the last finger up, as far as its whole reach goes:
 * so four frets that are too far apart for comfort may yet be within reach.
 * The thumb stops no string: thumb positions and a thumb over the neck are not attempted.
 */
import type { HandFrame } from '../instrument/instrument.ts';
import type { FretSlot, Neck } from '../instrument/neck.ts';

/** A size of hand. */
export interface HandSize {
  /** From the wrist to the tip of the middle finger, as ISO 7250-1 measures a hand. */
  readonly handLengthMm: number;
  /** Between the lowest and the highest fret the hand covers at once, at most. */
  readonly reachMm: number;
}

/**
 * Three sizes of hand. Lengths are percentiles of the ANSUR II survey (US Army, 2012; 1,986 women, 4,082
 * men): the 5th of the women, midway between both medians (180 and 193), and the 95th of the men. No
 * survey measures the span from index to little finger along a neck, so the reach of the middle size,
 * 120 mm, is an engineering estimate, and the others are in proportion to it.
 */
export const HAND_SIZES = {
  small: { handLengthMm: 165, reachMm: 106 },
  medium: { handLengthMm: 187, reachMm: 120 },
  large: { handLengthMm: 210, reachMm: 135 },
} as const satisfies Readonly<Record<string, HandSize>>;

export type HandSizeName = keyof typeof HAND_SIZES;

/** The reach a hand is given unless told otherwise. */
export const DEFAULT_REACH_MM: number = HAND_SIZES.medium.reachMm;

/** The smallest and the widest reach that may be asked for. */
export const REACH_RANGE_MM = { from: 40, to: 200 } as const;

/**
 * How far a hand opens before it is called a stretch: five sixths of its reach, 100 mm for the middle
 * size. An engineering estimate as well.
 */
export function comfortableReachMm(reachMm: number): number {
  return (reachMm * 5) / 6;
}

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

/** The frames a hand can lie in, the widest first; it takes the first that is comfortable. */
const FRAMES: Readonly<Record<HandFrame, readonly (readonly number[])[]>> = {
  'one-finger-per-fret': [[1, 2, 3, 4], [1, 2, 4], [1, 2], [1]],
  'two-frets-per-finger': [7, 6, 5, 4, 3, 2, 1].map((width) => [1, 1, 2, 2, 3, 3, 4].slice(0, width)),
};

/** Millimetres between two slots of a neck. */
export function spanMm(neck: Neck, fromSlot: number, toSlot: number): number {
  return (neck.slots[toSlot] as FretSlot).distanceMm - (neck.slots[fromSlot] as FretSlot).distanceMm;
}

/** Where a slot lies, in whole tenths of a millimetre from the nut. */
export function tenthsMm(neck: Neck, slot: number): number {
  return Math.round((neck.slots[slot] as FretSlot).distanceMm * 10);
}

/** The most slots that any hand on this neck can cover at once: its widest frame and a stretch each way. */
export function widestHand(neck: Neck): number {
  return (FRAMES[neck.handFrame][0] as readonly number[]).length + 2;
}

/**
 * Every way to lay the hand with finger 1 at home on a slot from `fromSlot` to `toSlot`: at rest, and with
 * every stretch that its reach allows.
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
    positions.push(...positionsAt(neck, reachMm, indexSlot));
  }
  return positions;
}

/**
 * The positions that no other contains: one that is at home on the same fret, covers all its frets with the
 * same fingers, and more. What can be played in the others can be played in these, at the same cost.
 * @param positions as {@link handPositions} gives them: those at home on one fret together
 */
export function widestPositions(positions: readonly HandPosition[]): readonly HandPosition[] {
  return positions.filter((position, at) => {
    for (let other = at - 3; other <= at + 3; other += 1) {
      const wider = positions[other];
      if (wider && wider !== position && contains(wider, position)) return false;
    }
    return true;
  });
}

/**
 * The widest positions with finger 1 at home on a slot from `fromSlot` to `toSlot`: all that a solver needs.
 * @param fromSlot at least 1: the nut is nobody's fret
 */
export function widestHands(
  neck: Neck,
  reachMm: number,
  fromSlot: number,
  toSlot: number,
): readonly HandPosition[] {
  const bySlot = widestBySlot(neck, reachMm);
  return bySlot.slice(Math.max(1, fromSlot), Math.max(0, toSlot + 1)).flat();
}

/** The last hand that lay on a neck: most questions about one neck are asked for one hand. */
const lastHands = new WeakMap<
  Neck,
  { readonly reachMm: number; readonly bySlot: readonly (readonly HandPosition[])[] }
>();

function widestBySlot(neck: Neck, reachMm: number): readonly (readonly HandPosition[])[] {
  const known = lastHands.get(neck);
  if (known?.reachMm === reachMm) return known.bySlot;
  const bySlot = neck.slots.map((_, slot) =>
    slot === 0 ? [] : widestPositions(positionsAt(neck, reachMm, slot)),
  );
  lastHands.set(neck, { reachMm, bySlot });
  return bySlot;
}

function contains(wider: HandPosition, position: HandPosition): boolean {
  if (wider.indexSlot !== position.indexSlot) return false;
  if (wider.from > position.from || wider.to < position.to) return false;
  return position.fingers.every((finger, at) => finger === wider.fingers[at + position.from - wider.from]);
}

function positionsAt(neck: Neck, reachMm: number, indexSlot: number): readonly HandPosition[] {
  const comfortableMm = comfortableReachMm(reachMm);
  const frame = FRAMES[neck.handFrame].find(
    ({ length }) => length === 1 || isWithin(neck, comfortableMm, indexSlot, indexSlot + length - 1),
  ) as readonly number[];
  // A hand that stretches up lies in the next wider frame, as far as there is one.
  const opened = FRAMES[neck.handFrame].find(({ length }) => length === frame.length + 1) ?? [...frame, 4];
  const top = indexSlot + frame.length - 1;
  const low = indexSlot - 1;
  const high = top + 1;
  const down = low >= 1 ? tenthsMm(neck, indexSlot) - tenthsMm(neck, low) : 0;
  const up = high < neck.slots.length ? tenthsMm(neck, high) - tenthsMm(neck, top) : 0;
  const rest = frame.map(() => 0);
  const positions: HandPosition[] = [
    { indexSlot, from: indexSlot, to: top, fingers: frame, stretchTenthsMm: rest },
  ];
  const stretch = (from: number, to: number): void => {
    if (from < 1 || !isWithin(neck, reachMm, from, to)) return;
    const fingers = [...(from === low ? [1] : []), ...(to === high ? opened : frame)];
    const weightedUp = Math.round(up * LITTLE_FINGER_WEIGHT);
    const stretchTenthsMm = [...(from === low ? [down] : []), ...rest, ...(to === high ? [weightedUp] : [])];
    positions.push({ indexSlot, from, to, fingers, stretchTenthsMm });
  };
  stretch(low, top);
  stretch(indexSlot, high);
  stretch(low, high);
  return positions;
}

function isWithin(neck: Neck, lengthMm: number, fromSlot: number, toSlot: number): boolean {
  return toSlot < neck.slots.length && spanMm(neck, fromSlot, toSlot) <= lengthMm;
}
