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
  leastPrice,
  NOTHING,
  type Price,
  priceOf,
  sum,
  type Way,
} from './exhaustive.ts';
import { handPositions } from './hand.ts';
import { createSolver, type LineNote, type Solution } from './solve.ts';

const CASES = 10_000;
/** Notes are left out of a line where more paths than this would lead through it. */
const MOST_PATHS = 100_000;

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
    const line = notes.map(({ options, held }) => ({
      options: options.map((option) => {
        const isOpen = option.isOpen === 0;
        const slot = isOpen ? 0 : Math.min(frets, Math.max(1, lowest - 1 + (option.above % (homeCount + 3))));
        return { string: (option.string % opens.length) + 1, slot, isOpen };
      }),
      holdsHand: held === 0,
    }));
    const board = { scaleLengthMm, frets, frame, reachMm, homes };
    return { board, neck, line: thin(board, line) };
  });

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

const solve = ({ board, neck, line }: Case): Solution | undefined => {
  const [from = 1, to = 0] = [board.homes[0], board.homes.at(-1)];
  return createSolver(neck, handPositions(neck, board.reachMm, from, to)).solve(line);
};

function asPrice(solution: Solution | undefined): Price | undefined {
  if (solution === undefined) return undefined;
  const { travelMm, shifts, stretchMm, stringChanges } = unpackCost(solution.cost);
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
  test(`finds the least of all paths in ${CASES} random small cases, and hands out a line that costs it`, () => {
    const seen = { unplayable: 0, moving: 0, stretching: 0, changing: 0 };
    fc.assert(
      fc.property(fc.noBias(cases), (one) => {
        const least = leastPrice(one.board, one.line);
        const solution = solve(one);
        expect(asPrice(solution)).toEqual(least);
        if (solution) expect(priceOfTouches(one, solution)).toEqual(least);
        seen.unplayable += Number(least === undefined);
        seen.moving += Number(least !== undefined && least[0] > 0);
        seen.stretching += Number(least !== undefined && least[2] > 0);
        seen.changing += Number(least !== undefined && least[3] > 0);
      }),
      { numRuns: CASES },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(CASES / 50);
  }, 30_000);
});
