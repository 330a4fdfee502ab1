/**
 * Lines played without moving the hand. For each position on its own, dynamic programming over the notes:
 * the cheapest ways to arrive at a touch depend only on those to the touches of the note before. It is run
 * for every position of every area, so costs live in one table that is used again and again.
 */
import { type PackedCost, packStretch } from './cost.ts';
import type { HandPosition } from './hand.ts';
import { barOf, keepBest } from './ranking.ts';
import { costOfChange, type LineNote, type Solution, type Touch, touchIn } from './touch.ts';

/**
 * The cheapest ways to play a line without moving the hand, best first, each distinct from the others in a
 * string, a fret or a finger.
 * @param positions as `widestHands` gives them: others could only play the same
 * @param count how many at most
 */
export function solveStaying(
  line: readonly LineNote[],
  positions: readonly HandPosition[],
  count: number,
): readonly Solution[] {
  const best: Solution[] = [];
  for (const position of positions) {
    const touches = touchesIn(position, line);
    if (touches) climb(line, touches, count, best);
  }
  return best;
}

/** The touches of every note, or undefined where one has none. */
function touchesIn(
  position: HandPosition,
  line: readonly LineNote[],
): readonly (readonly Touch[])[] | undefined {
  // Most positions cannot play the line at all: look before anything is made.
  for (const { options } of line) {
    let isCovered = false;
    for (const { isOpen, slot } of options)
      isCovered ||= isOpen || (slot >= position.from && slot <= position.to);
    if (!isCovered) return undefined;
  }
  return line.map(({ options }) => {
    const touches: Touch[] = [];
    for (const option of options) {
      const touch = touchIn(position, option);
      if (touch) touches.push(touch);
    }
    return touches;
  });
}

/**
 * For each touch, in the order of the line, the `count` least costs of arriving there and from which entry
 * of the note before. Grows where a line needs more.
 */
let costs = new Float64Array(1 << 10);
let previous = new Int32Array(1 << 10);

function climb(
  line: readonly LineNote[],
  layers: readonly (readonly Touch[])[],
  count: number,
  best: Solution[],
): void {
  const entries = layers.reduce((sum, touches) => sum + touches.length, 0) * count;
  if (entries > costs.length) {
    costs = new Float64Array(entries * 2);
    previous = new Int32Array(entries * 2);
  }
  costs.fill(Number.POSITIVE_INFINITY, 0, entries);
  let before = 0;
  let first = 0;
  const bar = barOf(best, count);
  for (const [step, touches] of layers.entries()) {
    const { holdsHand } = line[step] as LineNote;
    const from = layers[step - 1];
    let least = Number.POSITIVE_INFINITY;
    for (const [at, touch] of touches.entries()) {
      const entry = first + at * count;
      const own = packStretch(touch.stretchTenthsMm);
      if (from === undefined) costs[entry] = own;
      else arriveAt(entry, touch, own, from, before, holdsHand, count);
      least = Math.min(least, costs[entry] as number);
    }
    if (least >= bar) return;
    before = first;
    first += touches.length * count;
  }
  const last = layers.at(-1) ?? [];
  for (let entry = before; entry < before + last.length * count; entry += 1) {
    const cost = costs[entry] as PackedCost;
    if (cost < barOf(best, count)) keepBest(best, { cost, touches: trace(layers, entry, count) }, count);
  }
}

function arriveAt(
  entry: number,
  touch: Touch,
  own: PackedCost,
  from: readonly Touch[],
  before: number,
  holdsHand: boolean,
  count: number,
): void {
  const worst = entry + count - 1;
  for (const [at, touchBefore] of from.entries()) {
    const added = own + costOfChange(touchBefore, touch, holdsHand);
    for (let source = before + at * count; source < before + (at + 1) * count; source += 1) {
      const cost = (costs[source] as number) + added;
      if (cost >= (costs[worst] as number)) break;
      let place = worst;
      for (; place > entry && (costs[place - 1] as number) > cost; place -= 1) {
        costs[place] = costs[place - 1] as number;
        previous[place] = previous[place - 1] as number;
      }
      costs[place] = cost;
      previous[place] = source;
    }
  }
}

function trace(layers: readonly (readonly Touch[])[], lastEntry: number, count: number): readonly Touch[] {
  const touches: Touch[] = new Array(layers.length);
  let first = layers.reduce((sum, layer) => sum + layer.length, 0) * count;
  let entry = lastEntry;
  for (let step = layers.length - 1; step >= 0; step -= 1) {
    const layer = layers[step] as readonly Touch[];
    first -= layer.length * count;
    touches[step] = layer[Math.floor((entry - first) / count)] as Touch;
    entry = previous[entry] as number;
  }
  return touches;
}
