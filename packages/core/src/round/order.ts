/**
 * The orders in which the seven modes of a family can follow one another.
 */
import { distanceBetween, movedDegrees } from '../mode/base.ts';
import type { Mode } from '../mode/universe.ts';
import { modesFrom } from '../relation/relatives.ts';

/** By parent degree, from the brightest to the darkest, or with the fewest moved notes between two. */
export const ORDERS = ['parent', 'brightness', 'fewest-moves'] as const;

export type Order = (typeof ORDERS)[number];

/**
 * The seven modes of a family in an order.
 * @param head the mode that stands on the family's first degree
 */
export function orderModes(head: Mode, order: Order): readonly Mode[] {
  const modes = modesFrom(head);
  switch (order) {
    case 'parent':
      return modes;
    case 'brightness':
      return modes.toSorted((a, b) => b.brightness - a.brightness);
    case 'fewest-moves':
      return fewestMoves(modes);
  }
}

/** Moved notes first, then semitones moved. Both stay far below a thousand over seven modes. */
function moveCost(a: Mode, b: Mode): number {
  return movedDegrees(a.semitones, b.semitones).length * 1000 + distanceBetween(a.semitones, b.semitones);
}

/**
 * The path through all seven with the least sum of moves: for every set of modes already visited and the
 * last of them, the cheapest way to have come there (Held and Karp, 1962). The head comes first where
 * that costs nothing extra.
 */
function fewestMoves(modes: readonly Mode[]): readonly Mode[] {
  const everyone = (1 << modes.length) - 1;
  const best = new Map<string, { cost: number; path: readonly number[] }>();
  for (const at of modes.keys()) best.set(`${1 << at} ${at}`, { cost: 0, path: [at] });
  for (let visited = 1; visited <= everyone; visited += 1) {
    for (const last of modes.keys()) {
      const here = best.get(`${visited} ${last}`);
      if (!here) continue;
      for (const next of modes.keys()) {
        if (visited & (1 << next)) continue;
        const cost = here.cost + moveCost(modes[last] as Mode, modes[next] as Mode);
        const key = `${visited | (1 << next)} ${next}`;
        const known = best.get(key);
        if (!known || cost < known.cost) best.set(key, { cost, path: [...here.path, next] });
      }
    }
  }
  const paths = [...modes.keys()]
    .map((last) => best.get(`${everyone} ${last}`) as { cost: number; path: readonly number[] })
    .flatMap(({ cost, path }) => [
      { cost, path },
      { cost, path: path.toReversed() },
    ]);
  const rank = ({ cost, path }: { cost: number; path: readonly number[] }) => cost * 10 + (path[0] as number);
  const [cheapest] = paths.toSorted((a, b) => rank(a) - rank(b));
  return (cheapest as { path: readonly number[] }).path.map((at) => modes[at] as Mode);
}
