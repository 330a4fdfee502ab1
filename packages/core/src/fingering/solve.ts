/**
 * The solver: which string, fret, finger and hand position for each note of a line, so that the cost is
 * least. Dynamic programming over the notes: the least cost of arriving at a way to play a note depends
 * only on the ways to play the note before, so the minimum it finds is the minimum of all.
 */
import type { Neck } from '../instrument/neck.ts';
import { type PackedCost, packShift, packStretch, STRING_CHANGE } from './cost.ts';
import { type HandPosition, tenthsMm } from './hand.ts';

/** A place where a note could be played. */
export interface Option {
  /** String number, 1 at the highest-sounding side. */
  readonly string: number;
  readonly slot: number;
  readonly isOpen: boolean;
}

/** A note to be played. */
export interface LineNote {
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

/** A line with the least cost. */
export interface Solution {
  readonly cost: PackedCost;
  readonly touches: readonly Touch[];
}

/** Finds the cheapest way to play a line, or undefined where there is none. */
export interface Solver {
  /** Without moving the hand. */
  readonly stay: (line: readonly LineNote[]) => Solution | undefined;
  /** Moving it where it must be moved. */
  readonly solve: (line: readonly LineNote[]) => Solution | undefined;
}

/**
 * A solver for a hand that may lie in any of `positions`. It remembers how each list of options can be
 * played, so lines that share their options are solved together cheaply. Between equals the first found
 * stands: low positions before high ones.
 */
export function createSolver(neck: Neck, positions: readonly HandPosition[]): Solver {
  const known = new Map<readonly Option[], readonly (readonly Touch[])[]>();
  const touchesByPosition = ({ options }: LineNote): readonly (readonly Touch[])[] => {
    let touches = known.get(options);
    if (touches === undefined) {
      touches = positions.map((position) => touchesIn(position, options));
      known.set(options, touches);
    }
    return touches;
  };
  const stay = (line: readonly LineNote[]) =>
    solveStaying(line, line.map(touchesByPosition), positions.length);
  // Travel is compared first, so a line that can be played without any is never better played with some.
  const solve = (line: readonly LineNote[]) =>
    stay(line) ?? solveMoving(neck, line, line.map(touchesByPosition), positions);
  return { stay, solve };
}

interface Arrival {
  readonly touch: Touch;
  readonly cost: PackedCost;
  readonly previous: Arrival | undefined;
}

function touchesIn(position: HandPosition, options: readonly Option[]): readonly Touch[] {
  const touches: Touch[] = [];
  for (const { string, slot, isOpen } of options) {
    if (isOpen) {
      touches.push({ string, slot, isOpen, position, finger: 0, stretchTenthsMm: 0 });
    } else if (slot >= position.from && slot <= position.to) {
      const finger = position.fingers[slot - position.from] as number;
      const stretchTenthsMm = position.stretchTenthsMm[slot - position.from] as number;
      touches.push({ string, slot, isOpen, position, finger, stretchTenthsMm });
    }
  }
  return touches;
}

/** The cheapest line that never moves the hand. */
function solveStaying(
  line: readonly LineNote[],
  layers: readonly (readonly (readonly Touch[])[])[],
  positionCount: number,
): Solution | undefined {
  let best: Arrival | undefined;
  for (let at = 0; at < positionCount; at += 1) {
    let arrivals: readonly Arrival[] | undefined;
    for (let step = 0; step < layers.length; step += 1) {
      const touches = layers[step]?.[at] as readonly Touch[];
      arrivals = arrive(arrivals, touches, (line[step] as LineNote).holdsHand);
      if (arrivals.length === 0) break;
    }
    for (const arrival of arrivals ?? []) if (!best || arrival.cost < best.cost) best = arrival;
  }
  return best && trace(best);
}

function solveMoving(
  neck: Neck,
  line: readonly LineNote[],
  layers: readonly (readonly (readonly Touch[])[])[],
  positions: readonly HandPosition[],
): Solution | undefined {
  const travel = positions.map((from) => positions.map((to) => moveBetween(neck, from, to)));
  let before: readonly (readonly Arrival[])[] | undefined;
  for (const [step, layer] of layers.entries()) {
    const { holdsHand } = line[step] as LineNote;
    const arrivals: readonly Arrival[][] = positions.map(() => []);
    for (const [at, touches] of layer.entries()) {
      if (before === undefined) {
        arrivals[at]?.push(...arrive(undefined, touches, holdsHand));
        continue;
      }
      const costs = travel[at] as readonly number[];
      for (const touch of touches) {
        let best: Arrival | undefined;
        for (let from = 0; from < before.length; from += 1) {
          const move = costs[from] as number;
          if (move === Number.POSITIVE_INFINITY || (holdsHand && from !== at)) continue;
          for (const arrival of before[from] as readonly Arrival[]) {
            const cost = arrival.cost + move + costOfChange(arrival.touch, touch, holdsHand);
            if (cost < (best?.cost ?? Number.POSITIVE_INFINITY)) best = { touch, cost, previous: arrival };
          }
        }
        if (best) arrivals[at]?.push({ ...best, cost: best.cost + packStretch(touch.stretchTenthsMm) });
      }
    }
    before = arrivals;
  }
  const [first, ...others] = (before ?? []).flat();
  return (
    first && trace(others.reduce((least, arrival) => (arrival.cost < least.cost ? arrival : least), first))
  );
}

/** The cheapest arrival at each touch from arrivals in the same hand position; at a line's start, the touches themselves. */
function arrive(
  before: readonly Arrival[] | undefined,
  touches: readonly Touch[],
  holdsHand: boolean,
): readonly Arrival[] {
  const arrivals: Arrival[] = [];
  for (const touch of touches) {
    const own = packStretch(touch.stretchTenthsMm);
    if (before === undefined) {
      arrivals.push({ touch, cost: own, previous: undefined });
      continue;
    }
    let least = Number.POSITIVE_INFINITY;
    let previous: Arrival | undefined;
    for (const arrival of before) {
      const cost = arrival.cost + costOfChange(arrival.touch, touch, holdsHand);
      if (cost < least) {
        least = cost;
        previous = arrival;
      }
    }
    if (previous) arrivals.push({ touch, cost: least + own, previous });
  }
  return arrivals;
}

function trace(last: Arrival): Solution {
  const touches: Touch[] = [];
  for (let arrival: Arrival | undefined = last; arrival; arrival = arrival.previous)
    touches.push(arrival.touch);
  return { cost: last.cost, touches: touches.reverse() };
}

/**
 * What a move from one hand to another costs. Infinite between two hands at home on one fret: within one
 * stay a hand opens no wider than one position's frets.
 */
function moveBetween(neck: Neck, from: HandPosition, to: HandPosition): PackedCost {
  if (from === to) return 0;
  return from.indexSlot === to.indexSlot ? Number.POSITIVE_INFINITY : shiftBetween(neck, from, to);
}

function shiftBetween(neck: Neck, from: HandPosition, to: HandPosition): PackedCost {
  return packShift(Math.abs(tenthsMm(neck, from.indexSlot) - tenthsMm(neck, to.indexSlot)));
}

/** What the fingers pay for a change of string, or for one that slides along its string to reach beyond its own frets. */
function costOfChange(from: Touch, to: Touch, holdsHand: boolean): PackedCost {
  if (from.string !== to.string) return awkwardnessOf(from, to) * STRING_CHANGE;
  if (from.finger !== to.finger || from.slot === to.slot || from.position !== to.position) return 0;
  if (from.stretchTenthsMm === 0 && to.stretchTenthsMm === 0) return 0;
  return holdsHand ? Number.POSITIVE_INFINITY : packShift(0);
}

/** One for a change that skips a string, one for going back a string, one for rolling a finger from string to string. */
function awkwardnessOf(from: Touch, to: Touch): number {
  const skips = Math.abs(from.string - to.string) > 1;
  const goesBack = to.string > from.string;
  const rolls = from.finger === to.finger && from.finger !== 0;
  return Number(skips) + Number(goesBack) + Number(rolls);
}
