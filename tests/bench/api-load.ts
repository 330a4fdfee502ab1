/**
 * Load: many connections that ask as fast as they are answered, or at a steady rate.
 */
import autocannon from 'autocannon';

/** What is asked for. */
export interface LoadOptions {
  readonly seconds: number;
  readonly path?: string;
  /** Addresses that are asked for one after another, each once. */
  readonly paths?: Iterator<string>;
  /** At most so many requests a second; as many as are answered where absent. */
  readonly perSecond?: number;
}

/** How it was answered. */
export interface Load {
  readonly perSecond: number;
  readonly answered: number;
  readonly p50Ms: number;
  readonly p99Ms: number;
  readonly notOk: number;
}

const CONNECTIONS = 50;
/** A steady rate needs fewer: each waits for its answer before it asks again. */
const STEADY_CONNECTIONS = 20;

/** Puts a server under load. */
export async function load(origin: string, options: LoadOptions): Promise<Load> {
  const { seconds, path = '/', paths, perSecond } = options;
  const next = (): string => {
    const { value, done } = paths?.next() ?? { value: path, done: false };
    if (done) throw new Error('there are no more addresses');
    return value;
  };
  const result = await autocannon({
    url: origin,
    duration: seconds,
    connections: perSecond === undefined ? CONNECTIONS : STEADY_CONNECTIONS,
    ...(perSecond !== undefined && { overallRate: Math.round(perSecond) }),
    requests: [
      { method: 'GET', path, ...(paths && { setupRequest: (request) => ({ ...request, path: next() }) }) },
    ],
  });
  const { requests, latency, non2xx, errors } = result;
  return {
    perSecond: requests.average,
    answered: requests.total,
    p50Ms: latency.p50,
    p99Ms: latency.p99,
    notOk: non2xx + errors,
  };
}
