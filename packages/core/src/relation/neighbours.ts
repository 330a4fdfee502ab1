/**
 * Neighbours: modes on the same root that differ by one degree and one semitone; and routes, the shortest
 * chains of them.
 */
import { distanceBetween, type MovedDegree, movedDegrees } from '../mode/base.ts';
import { type Mode, UNIVERSE } from '../mode/universe.ts';

/** A neighbour and the one degree that moves to reach it. */
export interface Neighbour {
  readonly mode: Mode;
  readonly moved: MovedDegree;
}

/** One step of a route: the mode arrived at, and what moved to get there (nothing for the first). */
export interface RouteStep {
  readonly mode: Mode;
  readonly moved: MovedDegree | undefined;
}

/** One degree by one semitone, down and up, from degree 0, which nothing moves, to 7. */
const MOVES: readonly MovedDegree[] = Array.from({ length: 16 }, (_, at) => ({
  degree: at >> 1,
  by: at % 2 === 0 ? -1 : 1,
}));

const neighbourLists: (readonly Neighbour[] | undefined)[] = new Array(UNIVERSE.modes.length);

/** The neighbours of a mode, by degree, downward before upward. Found once, looked up after. */
export function neighboursOf(mode: Mode): readonly Neighbour[] {
  const known = neighbourLists[mode.index];
  if (known) return known;
  const found = findNeighbours(mode);
  neighbourLists[mode.index] = found;
  return found;
}

/**
 * A route from one mode to another on the same root: as long as their distance, one semitone a step.
 * Among the shortest it is the one with the highest sum of `preference` over the modes on the way, so
 * that a route can prefer modes that have trade names.
 * @param preference how welcome a mode is on the way, a finite number; higher is better
 */
export function routeBetween(
  from: Mode,
  to: Mode,
  preference: (mode: Mode) => number = () => 0,
): readonly RouteStep[] {
  const best = new Map<number, { worth: number; previous: Mode | undefined }>([
    [from.index, { worth: 0, previous: undefined }],
  ]);
  let layer: readonly Mode[] = [from];
  for (let left = distanceBetween(from.semitones, to.semitones); left > 0; left -= 1) {
    const next = new Set<Mode>();
    for (const mode of layer) {
      const worthHere = best.get(mode.index)?.worth ?? 0;
      for (const { mode: nearer } of neighboursOf(mode)) {
        if (distanceBetween(nearer.semitones, to.semitones) !== left - 1) continue;
        const worth = worthHere + preference(nearer);
        const known = best.get(nearer.index);
        if (known === undefined || worth > known.worth) best.set(nearer.index, { worth, previous: mode });
        next.add(nearer);
      }
    }
    layer = [...next];
  }
  const modes: Mode[] = [];
  for (let mode: Mode | undefined = to; mode; mode = best.get(mode.index)?.previous) modes.unshift(mode);
  return modes.map((mode, at) => ({
    mode,
    moved: at === 0 ? undefined : movedDegrees((modes[at - 1] as Mode).semitones, mode.semitones)[0],
  }));
}

function findNeighbours(mode: Mode): readonly Neighbour[] {
  const here = mode.set;
  const neighbours: Neighbour[] = [];
  for (let degree = 2; degree <= 7; degree += 1) {
    const semitone = mode.semitones[degree - 1] as number;
    for (let by = -1; by <= 1; by += 2) {
      const to = semitone + by;
      if (to > 11 || here & (1 << to)) continue;
      const found = UNIVERSE.modesBySet.get(here ^ (1 << semitone) ^ (1 << to)) as Mode;
      neighbours.push({ mode: found, moved: MOVES[degree * 2 + (by > 0 ? 1 : 0)] as MovedDegree });
    }
  }
  return neighbours;
}
