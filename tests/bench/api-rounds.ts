/**
 * Addresses of rounds, none of them twice.
 */
import { CATALOGUE } from '@stillroot/catalog';
import { EVERYDAY_ROOTS, PATTERNS } from '@stillroot/core';

/** Rounds of every family, root, instrument and pattern, in an order that mixes them. */
export function* newRounds(extension = ''): Generator<string> {
  const { families, instruments } = CATALOGUE;
  const total = families.length * instruments.length * EVERYDAY_ROOTS.length * PATTERNS.length;
  // A step that shares no divisor with the total goes through all of them.
  let step = Math.floor(total * 0.618);
  while (divisor(step, total) > 1) step += 1;
  let at = 0;
  for (let count = 0; count < total; count += 1) {
    at = (at + step) % total;
    let rest = at;
    const pick = <T>(items: readonly T[]): T => {
      const item = items[rest % items.length] as T;
      rest = Math.floor(rest / items.length);
      return item;
    };
    const [family, instrument, root, pattern] = [
      pick(families),
      pick(instruments),
      pick(EVERYDAY_ROOTS),
      pick(PATTERNS),
    ];
    const name = encodeURIComponent(root.name);
    yield `/v1/rounds/${family.slug}/${name}${extension}?instrument=${instrument.id}&pattern=${pattern}`;
  }
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}
