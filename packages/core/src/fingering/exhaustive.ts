/**
 * The cheapest ways to play a line, found by following every path: an account of the documented cost of its
 * own, for the tests of the solver. It shares no arithmetic with it.
 */
import type { HandFrame } from '../instrument/instrument.ts';
import type { LineNote, Option } from './touch.ts';

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
  return board.homes.flatMap((home) => handsAt(board, home));
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

/** A line as a player sees it, and the least it can cost to play it so. */
export interface Look {
  readonly look: string;
  readonly price: Price;
}

/**
 * The `count` cheapest lines that a player can tell apart, over every path. A path that already costs more
 * than the last of them is not followed to its end: prices only grow.
 */
export function leastPrices(board: Board, line: readonly LineNote[], count: number): readonly Look[] {
  const hands = everyHand(board);
  const ways = line.map((note) => everyWay(note, hands));
  const best = new Map<string, Price>();
  let bar: Price | undefined;
  const follow = (at: number, before: Way | undefined, paid: Price, look: string): void => {
    if (bar && compare(paid, bar) > 0) return;
    if (at === line.length) {
      const known = best.get(look);
      if (known === undefined || compare(paid, known) < 0) best.set(look, paid);
      if (best.size >= count) bar = [...best.values()].toSorted(compare)[count - 1];
      return;
    }
    for (const way of ways[at] ?? []) {
      const price = priceOf(board, before, way, line[at]?.holdsHand ?? false);
      const { string, slot } = way.option;
      if (price) follow(at + 1, way, sum(paid, price), `${look} ${string}:${slot}(${way.finger})`);
    }
  };
  follow(0, undefined, NOTHING, '');
  return [...best]
    .map(([look, price]) => ({ look: look.trim(), price }))
    .toSorted((a, b) => compare(a.price, b.price))
    .slice(0, count);
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

/** Seven frets where each of the first three fingers has two; four where each has one. Narrower hands lose from the top. */
const FULL: Readonly<Record<HandFrame, readonly number[]>> = {
  'one-finger-per-fret': [1, 2, 3, 4],
  'two-frets-per-finger': [1, 1, 2, 2, 3, 3, 4],
};

/** The fingers of a hand that covers so many frets: three with one finger a fret are 1-2-4. */
function fingersOf(frame: HandFrame, width: number): readonly number[] {
  if (frame === 'one-finger-per-fret' && width === 3) return [1, 2, 4];
  const full = FULL[frame];
  return width > full.length ? [...full, 4] : full.slice(0, width);
}

/** At rest within five sixths of the reach; stretched by one fret down, up or both within all of it. */
function handsAt(board: Board, home: number): readonly Hand[] {
  const widths = FULL[board.frame].map((_, at) => at + 1).toReversed();
  const comfort = { ...board, reachMm: (board.reachMm / 6) * 5 };
  const width = widths.find((frets) => frets === 1 || isReached(comfort, home, home + frets - 1)) ?? 1;
  const top = home + width - 1;
  const down = tenths(board, home) - tenths(board, home - 1);
  const up = Math.round(1.5 * (tenths(board, top + 1) - tenths(board, top)));
  const hand = (low: number, high: number): Hand => {
    const fingers = fingersOf(board.frame, high - home + 1);
    const covers = new Map(
      fingers.map((finger, at) => [home + at, { finger, stretch: home + at > top ? up : 0 }]),
    );
    if (low < home) covers.set(low, { finger: 1, stretch: down });
    return { home, covers };
  };
  const stretched = [
    [home - 1, top],
    [home, top + 1],
    [home - 1, top + 1],
  ] as const;
  return [
    hand(home, top),
    ...stretched
      .filter(([low, high]) => low >= 1 && isReached(board, low, high))
      .map(([low, high]) => hand(low, high)),
  ];
}
