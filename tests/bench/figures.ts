/**
 * Medians and percentiles.
 */
import { measure } from 'mitata';

/** Nanoseconds for one item: the median of many passes over all of them, divided. */
export async function median<T>(items: readonly T[], work: (item: T) => unknown): Promise<number> {
  let sink: unknown;
  const { p50 } = await measure(() => {
    for (const item of items) sink = work(item);
    return sink;
  });
  return p50 / items.length;
}

/** The middle of some values. */
export function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;
}

/** The value that `share` of all do not exceed. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] as number;
}
