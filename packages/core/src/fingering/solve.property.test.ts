import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf } from '../given.ts';
import type { Instrument } from '../instrument/instrument.ts';
import type { Neck } from '../instrument/neck.ts';
import { formatMidi } from '../pitch/pitch.ts';
import { unpackCost } from './cost.ts';
import {
  type Board,
  everyHand,
  everyWay,
  type Look,
  leastPrices,
  NOTHING,
  type Price,
  priceOf,
  sum,
  type Way,
} from './exhaustive.ts';
import { widestHands } from './hand.ts';
import { solve } from './solve.ts';
import type { LineNote, Option, Solution } from './touch.ts';

const CASES = 20_000;
/** How many of the best are compared. */
const BEST = 5;
/** Notes are left out of a line where more paths than this would lead through it. */
const MOST_PATHS = 4_000;

interface Case {
  readonly board: Board;
  readonly neck: Neck;
  readonly line: readonly LineNote[];
}

const cases: fc.Arbitrary<Case> = fc
  .record({
    opens: fc.array(fc.integer({ min: 28, max: 67 }), { minLength: 1, maxLength: 4, size: 'max' }),
    scaleLengthMm: fc.integer({ min: 3300, max: 9000 }).map((tenths) => tenths / 10),
    frets: fc.integer({ min: 9, max: 24 }),
    frame: fc.constantFrom('one-finger-per-fret' as const, 'two-frets-per-finger' as const),
    reachMm: fc.integer({ min: 60, max: 180 }),
    lowest: fc.integer({ min: 1, max: 16 }),
    homeCount: fc.integer({ min: 2, max: 12 }),
    notes: fc.array(
      fc.record({
        options: fc.array(fc.record({ string: fc.nat(3), above: fc.nat(999), isOpen: fc.nat(5) }), {
          minLength: 1,
          maxLength: 3,
          size: 'max',
        }),
        held: fc.nat(9),
      }),
      { minLength: 1, maxLength: 6, size: 'max' },
    ),
  })
  .map(({ opens, scaleLengthMm, frets, frame, reachMm, lowest, homeCount, notes }) => {
    const highest = Math.min(frets, lowest + homeCount - 1);
    const homes = Array.from({ length: Math.max(0, highest - lowest + 1) }, (_, at) => lowest + at);
    const instrument: Instrument = { ...INSTRUMENTS.guitar, scaleLengthMm, frets, handFrame: frame };
    const neck = neckOf(instrument, {}, opens.map((midi) => formatMidi(midi)).join('-'));
    const line = notes.map(({ options, held }) => {
      const places = options.map((option) => {
        const isOpen = option.isOpen === 0;
        const slot = isOpen ? 0 : Math.min(frets, Math.max(1, lowest - 1 + (option.above % (homeCount + 3))));
        return { string: (option.string % opens.length) + 1, slot, isOpen };
      });
      return { options: distinct(places), holdsHand: held === 0 };
    });
    const board = { scaleLengthMm, frets, frame, reachMm, homes };
    return { board, neck, line: thin(board, line) };
  });

function distinct(places: readonly Option[]): readonly Option[] {
  return [...new Map(places.map((place) => [`${place.string} ${place.slot}`, place])).values()];
}

function thin(board: Board, line: readonly LineNote[]): readonly LineNote[] {
  const hands = everyHand(board);
  let paths = 1;
  return line.filter((note) => {
    const ways = Math.max(1, everyWay(note, hands).length);
    if (paths * ways > MOST_PATHS) return false;
    paths *= ways;
    return true;
  });
}

const solved = ({ board, neck, line }: Case): readonly Solution[] => {
  const [from = 1, to = 0] = [board.homes[0], board.homes.at(-1)];
  return solve(neck, line, widestHands(neck, board.reachMm, from, to), BEST);
};

function lookOf({ touches }: Solution): string {
  return touches.map(({ string, slot, finger }) => `${string}:${slot}(${finger})`).join(' ');
}

function asPrice({ cost }: Solution): Price {
  const { travelMm, shifts, stretchMm, stringChanges } = unpackCost(cost);
  return [Math.round(travelMm * 10), shifts, Math.round(stretchMm * 10), stringChanges];
}

/** What the solver handed out, priced step by step; undefined where a step cannot be played. */
function priceOfTouches({ board, line }: Case, { touches }: Solution): Price | undefined {
  const hands = everyHand(board);
  let before: Way | undefined;
  let paid: Price = NOTHING;
  for (const [at, note] of line.entries()) {
    const touch = touches[at];
    const way = everyWay(note, hands).find(
      ({ option, hand, finger }) =>
        option.string === touch?.string &&
        option.slot === touch.slot &&
        finger === touch.finger &&
        hand.home === touch.position.indexSlot &&
        [...hand.covers.keys()].toSorted((a, b) => a - b).join() === slotsOf(touch.position).join(),
    );
    const price = way && priceOf(board, before, way, note.holdsHand);
    if (price === undefined) return undefined;
    paid = sum(paid, price);
    before = way;
  }
  return paid;
}

function slotsOf({ from, to }: { readonly from: number; readonly to: number }): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, at) => from + at);
}

describe('the solver', () => {
  test(`finds the ${BEST} best of all paths in ${CASES} random small cases, and hands out lines that cost that`, () => {
    const seen = { unplayable: 0, moving: 0, stretching: 0, changing: 0, several: 0 };
    fc.assert(
      fc.property(fc.noBias(cases), (one) => {
        const least = leastPrices(one.board, one.line, BEST);
        const solutions = solved(one);
        expect(solutions.map(asPrice)).toEqual(least.map(({ price }) => price));
        expect(new Set(solutions.map(lookOf)).size).toBe(solutions.length);
        for (const solution of solutions) expect(priceOfTouches(one, solution)).toEqual(asPrice(solution));
        expectSameLooks(solutions, least);
        const [best] = least;
        seen.unplayable += Number(best === undefined);
        seen.moving += Number(best !== undefined && best.price[0] > 0);
        seen.stretching += Number(best !== undefined && best.price[2] > 0);
        seen.changing += Number(best !== undefined && best.price[3] > 0);
        seen.several += Number(least.length === BEST);
      }),
      { numRuns: CASES },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(CASES / 50);
  }, 60_000);

  test('finds the best alone where no more is asked', () => {
    fc.assert(
      fc.property(fc.noBias(cases), (one) => {
        const [from = 1, to = 0] = [one.board.homes[0], one.board.homes.at(-1)];
        const positions = widestHands(one.neck, one.board.reachMm, from, to);
        const alone = solve(one.neck, one.line, positions);
        expect(alone.map(({ cost }) => cost)).toEqual(
          solved(one)
            .slice(0, 1)
            .map(({ cost }) => cost),
        );
      }),
      { numRuns: CASES / 10 },
    );
  });
});

/** Which of several that cost the same are handed out is free, but nothing cheaper may be left out for them. */
function expectSameLooks(solutions: readonly Solution[], least: readonly Look[]): void {
  const last = least.at(-1);
  const cheaper = least.filter(({ price }) => String(price) !== String(last?.price));
  const looks = solutions.map(lookOf);
  for (const { look } of cheaper) expect(looks).toContain(look);
}
