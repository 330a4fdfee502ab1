/**
 * The best few of many: lists that stay sorted by cost and never grow beyond what is wanted.
 */
import type { PackedCost } from './cost.ts';
import { isAlike, type Solution } from './touch.ts';

/** Something that has a price. */
interface Priced {
  readonly cost: PackedCost;
}

/**
 * Puts a solution where it belongs among the `count` best, each of which a player can tell from the
 * others; of two alike the cheaper stays. Between equal costs the first found stands.
 */
export function keepBest(best: Solution[], solution: Solution, count: number): void {
  const alike = best.findIndex(({ touches }) => isAlike(touches, solution.touches));
  if (alike >= 0) {
    if ((best[alike] as Solution).cost <= solution.cost) return;
    best.splice(alike, 1);
  }
  insertByCost(best, solution, count);
}

/** Puts an item behind all that cost no more, and drops what is one too many. */
export function insertByCost<T extends Priced>(best: T[], item: T, count: number): void {
  let at = best.length;
  while (at > 0 && (best[at - 1] as T).cost > item.cost) at -= 1;
  if (at >= count) return;
  best.splice(at, 0, item);
  if (best.length > count) best.pop();
}

/** An item must cost less than this to be among the `count` best. */
export function barOf(best: readonly Priced[], count: number): PackedCost {
  return best.length < count ? Number.POSITIVE_INFINITY : (best[count - 1] as Priced).cost;
}
