/**
 * Patterns: the orders in which the notes of a fingering are played.
 */
import { randomBelow } from './random.ts';

export const PATTERNS = [
  'up',
  'down',
  'up-and-down',
  'thirds',
  'fourths',
  'groups-of-three',
  'groups-of-four',
  'random-walk',
  'degree-and-root',
] as const;

/**
 * An order of notes. Thirds, fourths and groups climb: `1 3 2 4 3 5`, `1 4 2 5`, `1 2 3 2 3 4`. A random walk
 * begins on the lowest root and moves by one or two notes, as often as it takes to go up and down.
 */
export type Pattern = (typeof PATTERNS)[number];

/** The steps that a random walk may take, in notes of the scale. */
const WALK_STEPS = [-2, -1, 1, 2] as const;

/** An order of notes, as places in a fingering. */
export interface PatternLine {
  /** Once through. */
  readonly once: readonly number[];
  /** What is gone through again and again: up and down does not strike its lowest note twice. */
  readonly loop: readonly number[];
}

/**
 * The notes of a fingering in the order of a pattern. A fingering with too few notes for a pattern is played
 * upwards.
 * @param degrees of the fingering's notes, from the lowest up; at least one
 * @param seed of a random walk
 */
export function patternLine(pattern: Pattern, degrees: readonly number[], seed = 1): PatternLine {
  const once = onceThrough(pattern, degrees, seed);
  const line = once.length > 0 ? once : [...degrees.keys()];
  return { once: line, loop: pattern === 'up-and-down' && line.length > 1 ? line.slice(0, -1) : line };
}

function onceThrough(pattern: Pattern, degrees: readonly number[], seed: number): readonly number[] {
  const up = [...degrees.keys()];
  switch (pattern) {
    case 'up':
      return up;
    case 'down':
      return up.toReversed();
    case 'up-and-down':
      return [...up, ...up.toReversed().slice(1)];
    case 'thirds':
      return climb(up, [0, 2]);
    case 'fourths':
      return climb(up, [0, 3]);
    case 'groups-of-three':
      return climb(up, [0, 1, 2]);
    case 'groups-of-four':
      return climb(up, [0, 1, 2, 3]);
    case 'random-walk':
      return walk(degrees, seed);
    case 'degree-and-root':
      return up.flatMap((at) => [at, rootFor(degrees, at)]);
  }
}

/** A figure, begun on every note from which it still fits. */
function climb(up: readonly number[], figure: readonly number[]): readonly number[] {
  const widest = Math.max(...figure);
  return up.slice(0, Math.max(0, up.length - widest)).flatMap((at) => figure.map((step) => at + step));
}

function walk(degrees: readonly number[], seed: number): readonly number[] {
  const below = randomBelow(seed);
  let here = Math.max(0, degrees.indexOf(1));
  const line = [here];
  while (line.length < 2 * degrees.length - 1) {
    const steps = WALK_STEPS.filter((step) => degrees[here + step] !== undefined);
    here += steps[below(steps.length)] as number;
    line.push(here);
  }
  return line;
}

/** The root at or below a note of the fingering; the lowest one where there is none below. */
function rootFor(degrees: readonly number[], at: number): number {
  const below = degrees.lastIndexOf(1, at);
  return below >= 0 ? below : Math.max(0, degrees.indexOf(1));
}
