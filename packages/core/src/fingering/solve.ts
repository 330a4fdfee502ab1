/**
 * The solver: which string, fret, finger and hand position for each note of a line, so that the cost is
 * least, and the few next best. Travel is compared first, so a line that can be played without moving the
 * hand is never better played with a move: those come first, and only where they are not enough does the
 * hand move.
 */
import type { Neck } from '../instrument/neck.ts';
import type { HandPosition } from './hand.ts';
import { solveMoving } from './move.ts';
import { keepBest } from './ranking.ts';
import { solveStaying } from './stay.ts';
import type { LineNote, Solution } from './touch.ts';

/**
 * The `count` cheapest ways to play a line with a hand that may lie in any of `positions`, best first; each
 * differs from the others in a string, a fret or a finger. Empty where there are none.
 */
export function solve(
  neck: Neck,
  line: readonly LineNote[],
  positions: readonly HandPosition[],
  count = 1,
): readonly Solution[] {
  const staying = solveStaying(line, positions, count);
  if (staying.length === count) return staying;
  const best = [...staying];
  for (const solution of solveMoving(neck, line, positions, count)) keepBest(best, solution, count);
  return best;
}
