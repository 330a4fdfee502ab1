/**
 * The cheapest way to play a line, found by following every path: an account of the documented cost of its
 * own, for the tests of the solver. It shares no arithmetic with it.
 */
import type { HandFrame } from '../instrument/instrument.ts';
import type { LineNote, Option } from './solve.ts';

/** A neck and a hand, in numbers. */
export interface Board {
  readonly scaleLengthMm: number;
  readonly frets: number;
  readonly frame: HandFrame;
  readonly reachMm: number;
  /** The frets on which finger 1 may be at home. */
  readonly homes: readonly number[];
}

/** A hand laid down: where finger 1 is at home, and on each fret it covers the finger and its stretch. */
export interface Hand {
  readonly home: number;
  readonly covers: ReadonlyMap<number, { readonly finger: number; readonly stretch: number }>;
}

/** One way to play one note. */
export interface Way {
  readonly option: Option;
  readonly hand: Hand;
  readonly finger: number;
  readonly stretch: number;
}

/** Travel in tenths of a millimetre, shifts, stretch in tenths, and awkward string changes. */
export type Price = readonly [travel: number, shifts: number, stretch: number, changes: number];

/** Whole tenths of a millimetre from the nut to a fret. */
export function tenths({ scaleLengthMm }: Board, fret: number): number {
  return Math.round(10 * (scaleLengthMm - scaleLengthMm / 2 ** (fret / 12)));
}

/** Every hand that can be laid on a board. */
export function everyHand(board: Board): readonly Hand[] {
  return board.homes.flatMap((home) =>
    board.frame === 'two-frets-per-finger' ? [pairedHand(board, home)] : plainHands(board, home),
  );
}

/** Every way to play a note. */
export function everyWay({ options }: LineNote, hands: readonly Hand[]): readonly Way[] {
  return hands.flatMap((hand) =>
    options.flatMap((option): readonly Way[] => {
      if (option.isOpen) return [{ option, hand, finger: 0, stretch: 0 }];
      const cover = hand.covers.get(option.slot);
      return cover ? [{ option, hand, ...cover }] : [];
    }),
  );
}

/** What it costs to play one way after another, or undefined where the hand cannot. */
export function priceOf(board: Board, from: Way | undefined, to: Way, isHeld: boolean): Price | undefined {
  if (from === undefined) return [0, 0, to.stretch, 0];
  const isSameHand = from.hand === to.hand;
  if (!isSameHand && (isHeld || from.hand.home === to.hand.home)) return undefined;
  const travel = Math.abs(tenths(board, from.hand.home) - tenths(board, to.hand.home));
  const shifts = isSameHand ? 0 : 1;
  const [a, b] = [from.option, to.option];
  if (a.string !== b.string) {
    const isSkip = a.string - b.string > 1 || b.string - a.string > 1;
    const isRoll = from.finger === to.finger && from.finger > 0;
    return [travel, shifts, to.stretch, [isSkip, b.string > a.string, isRoll].filter(Boolean).length];
  }
  const isSlide = isSameHand && from.finger === to.finger && a.slot !== b.slot;
  if (!isSlide || from.stretch + to.stretch === 0) return [travel, shifts, to.stretch, 0];
  if (isHeld) return undefined;
  return [travel, shifts + 1, to.stretch, 0];
}

/**
 * The least price of a line over every path, or undefined where none can be played. A path that already
 * costs as much as the best is not followed to its end: prices only grow.
 */
export function leastPrice(board: Board, line: readonly LineNote[]): Price | undefined {
  const hands = everyHand(board);
  const ways = line.map((note) => everyWay(note, hands));
  let best: Price | undefined;
  const follow = (at: number, before: Way | undefined, paid: Price): void => {
    if (best && compare(paid, best) >= 0) return;
    if (at === line.length) {
      best = paid;
      return;
    }
    for (const way of ways[at] ?? []) {
      const price = priceOf(board, before, way, line[at]?.holdsHand ?? false);
      if (price) follow(at + 1, way, sum(paid, price));
    }
  };
  follow(0, undefined, NOTHING);
  return best;
}

function compare(a: Price, b: Price): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2] || a[3] - b[3];
}

/** What costs nothing. */
export const NOTHING: Price = [0, 0, 0, 0];

/** Two prices paid together. */
export function sum(a: Price, b: Price): Price {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]];
}

function isReached({ scaleLengthMm, frets, reachMm }: Board, low: number, high: number): boolean {
  return high <= frets && scaleLengthMm * (2 ** (-low / 12) - 2 ** (-high / 12)) <= reachMm;
}

function pairedHand(board: Board, home: number): Hand {
  const covers = new Map<number, { finger: number; stretch: number }>();
  for (let at = 0; at < 8 && (at === 0 || isReached(board, home, home + at)); at += 1)
    covers.set(home + at, { finger: 1 + Math.floor(at / 2), stretch: 0 });
  return { home, covers };
}

function plainHands(board: Board, home: number): readonly Hand[] {
  const widths = [4, 3, 2, 1];
  const width = widths.find((frets) => frets === 1 || isReached(board, home, home + frets - 1)) ?? 1;
  const fingers = { 4: [1, 2, 3, 4], 3: [1, 2, 4], 2: [1, 2], 1: [1] }[width] ?? [];
  const rest = fingers.map((finger, at) => [home + at, { finger, stretch: 0 }] as const);
  const hands: Hand[] = [{ home, covers: new Map(rest) }];
  if (width < 4) return hands;
  const down = { finger: 1, stretch: tenths(board, home) - tenths(board, home - 1) };
  const up = { finger: 4, stretch: Math.round(1.5 * (tenths(board, home + 4) - tenths(board, home + 3))) };
  for (const [low, high] of [
    [home - 1, home + 3],
    [home, home + 4],
    [home - 1, home + 4],
  ] as const) {
    if (low < 1 || !isReached(board, low, high)) continue;
    const covers = new Map<number, { finger: number; stretch: number }>(rest);
    if (low < home) covers.set(low, down);
    if (high > home + 3) covers.set(high, up);
    hands.push({ home, covers });
  }
  return hands;
}
