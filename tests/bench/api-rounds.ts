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

/** One visit in so many asks for something that nobody asked for before. */
const NEW_VISIT = 5;

/** What readers ask for: mostly families, modes and scales that many ask for, sometimes a round in any form. */
export function* visits(): Generator<string> {
  const { families, modes, instruments } = CATALOGUE;
  const known = [
    ...families.map(({ slug }) => `/v1/families/${slug}`),
    ...instruments.map(({ id }) => `/v1/instruments/${id}`),
    ...modes.slice(0, 100).map(({ slug }) => `/v1/modes/${slug}`),
    ...modes
      .slice(0, 28)
      .flatMap(({ slug }) =>
        EVERYDAY_ROOTS.map(({ name }) => `/v1/modes/${slug}/${encodeURIComponent(name)}`),
      ),
  ];
  const rounds = ['', '.svg', '.txt', '.mid', '.musicxml'].map((extension) => newRounds(extension));
  for (let count = 0; ; count += 1) {
    const kind = Math.floor(count / NEW_VISIT) % rounds.length;
    const fresh = count % NEW_VISIT === 0 ? rounds[kind]?.next() : undefined;
    // 7919 is a prime: every known address has its turn.
    yield fresh && !fresh.done ? fresh.value : (known[(count * 7919) % known.length] as string);
  }
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}
