/**
 * Load: many connections that ask as fast as they are answered.
 */
import autocannon from 'autocannon';

/** What is asked for. */
export interface LoadOptions {
  /** How long; as long as it takes where the number of requests is given. */
  readonly seconds?: number;
  readonly requests?: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly path?: string;
  /** Addresses that are asked for one after another, each once. */
  readonly paths?: Iterator<string>;
}

/** How it was answered. */
export interface Load {
  readonly perSecond: number;
  readonly answered: number;
  readonly notOk: number;
}

const CONNECTIONS = 50;

/** Puts a server under load. */
export async function load(origin: string, options: LoadOptions): Promise<Load> {
  const { seconds, requests: amount, headers, path = '/', paths } = options;
  const next = (): string => {
    const { value, done } = paths?.next() ?? { value: path, done: false };
    if (done) throw new Error('there are no more addresses');
    return value;
  };
  const result = await autocannon({
    url: origin,
    ...(seconds !== undefined && { duration: seconds }),
    ...(amount !== undefined && { amount }),
    ...(headers && { headers }),
    connections: CONNECTIONS,
    requests: [
      { method: 'GET', path, ...(paths && { setupRequest: (request) => ({ ...request, path: next() }) }) },
    ],
  });
  const { requests, non2xx, errors } = result;
  return {
    perSecond: requests.average,
    answered: requests.total,
    notOk: non2xx + errors,
  };
}
