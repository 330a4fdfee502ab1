/**
 * Lines for which the hand moves: dynamic programming over the notes, where a state is a touch in a hand
 * position and keeps its cheapest arrivals. Two arrivals at one state that a player could not tell apart
 * are one, the cheaper; so the few best that are kept are enough for the few best of all.
 */
import type { Neck } from '../instrument/neck.ts';
import { type PackedCost, packShift, packStretch } from './cost.ts';
import { type HandPosition, tenthsMm } from './hand.ts';
import { barOf, insertByCost } from './ranking.ts';
import { costOfChange, type LineNote, type Solution, type Touch, touchIn } from './touch.ts';

/**
 * The cheapest ways to play a line with a hand that may move, best first, each distinct from the others in
 * a string, a fret or a finger. Between two hands at home on one fret there is no move: within one stay a
 * hand opens no wider than one position's frets.
 * @param count how many at most
 */
export function solveMoving(
  neck: Neck,
  line: readonly LineNote[],
  positions: readonly HandPosition[],
  count: number,
): readonly Solution[] {
  const homes = new Map(positions.map(({ indexSlot }) => [indexSlot, tenthsMm(neck, indexSlot)]));
  let before: readonly State[] | undefined;
  for (const note of line) {
    const states = statesOf(note, positions, homes);
    for (const state of states) arriveAt(state, before, note.holdsHand, count);
    const reached = states.filter(({ arrivals }) => arrivals.length > 0);
    if (reached.length === 0) return [];
    if (count > 1) nameLooks(reached);
    // Cheapest first, so that the search for arrivals can stop early.
    before = reached.toSorted((a, b) => leastOf(a) - leastOf(b));
  }
  return cheapest(before ?? [], count);
}

/** A way of having played a line up to a touch. */
interface Arrival {
  readonly touch: Touch;
  readonly cost: PackedCost;
  readonly previous: Arrival | undefined;
  /** What the line up to here looks like to a player, as a number that no other look has. */
  look: number;
}

interface State {
  readonly touch: Touch;
  /** Where finger 1 is at home, in tenths of a millimetre from the nut. */
  readonly homeTenthsMm: number;
  /** The cheapest first. */
  readonly arrivals: Arrival[];
}

function statesOf(
  { options }: LineNote,
  positions: readonly HandPosition[],
  homes: ReadonlyMap<number, number>,
): readonly State[] {
  const states: State[] = [];
  for (const position of positions) {
    for (const option of options) {
      const touch = touchIn(position, option);
      if (touch) states.push({ touch, homeTenthsMm: homes.get(position.indexSlot) as number, arrivals: [] });
    }
  }
  return states;
}

function leastOf({ arrivals }: State): PackedCost {
  return (arrivals[0] as Arrival).cost;
}

function arriveAt(state: State, before: readonly State[] | undefined, holdsHand: boolean, count: number) {
  const { touch, arrivals } = state;
  const own = packStretch(touch.stretchTenthsMm);
  if (before === undefined) {
    arrivals.push({ touch, cost: own, previous: undefined, look: 0 });
    return;
  }
  for (const from of before) {
    if (leastOf(from) + own >= barOf(arrivals, count)) return;
    const added = own + moveBetween(from, state, holdsHand) + costOfChange(from.touch, touch, holdsHand);
    for (const previous of from.arrivals) {
      const cost = previous.cost + added;
      if (cost >= barOf(arrivals, count)) break;
      insert(arrivals, { touch, cost, previous, look: 0 }, count);
    }
  }
}

function moveBetween(from: State, to: State, holdsHand: boolean): PackedCost {
  if (from.touch.position === to.touch.position) return 0;
  if (holdsHand || from.touch.position.indexSlot === to.touch.position.indexSlot) {
    return Number.POSITIVE_INFINITY;
  }
  return packShift(Math.abs(from.homeTenthsMm - to.homeTenthsMm));
}

/** Between equals the first found stands. Arrivals at one state look alike where those before them do. */
function insert(arrivals: Arrival[], arrival: Arrival, count: number): void {
  if (count > 1) {
    const alike = arrivals.findIndex(({ previous }) => previous?.look === arrival.previous?.look);
    if (alike >= 0) {
      if ((arrivals[alike] as Arrival).cost <= arrival.cost) return;
      arrivals.splice(alike, 1);
    }
  }
  insertByCost(arrivals, arrival, count);
}

/** Numbers the looks of all arrivals at one note. */
function nameLooks(states: readonly State[]): void {
  const looks = new Map<string, number>();
  for (const { touch, arrivals } of states) {
    for (const arrival of arrivals) {
      const key = `${arrival.previous?.look ?? 0} ${touch.string} ${touch.slot} ${touch.finger}`;
      arrival.look = looks.get(key) ?? looks.size;
      looks.set(key, arrival.look);
    }
  }
}

function cheapest(states: readonly State[], count: number): readonly Solution[] {
  const seen = new Set<number>();
  const best: Solution[] = [];
  const arrivals = states.flatMap((state) => state.arrivals).toSorted((a, b) => a.cost - b.cost);
  for (const arrival of arrivals) {
    if (best.length === count) break;
    if (count > 1 && seen.has(arrival.look)) continue;
    seen.add(arrival.look);
    best.push({ cost: arrival.cost, touches: trace(arrival) });
  }
  return best;
}

function trace(last: Arrival): readonly Touch[] {
  const touches: Touch[] = [];
  for (let arrival: Arrival | undefined = last; arrival; arrival = arrival.previous)
    touches.push(arrival.touch);
  return touches.reverse();
}
