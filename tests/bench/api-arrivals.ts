/**
 * Arrivals: requests that come one by one, whether those before them were answered or not, as they do from
 * many clients that know nothing of one another (a Poisson process). How long each waits is counted from
 * when it was due, so that a server that stands still is charged for all that came meanwhile. The load
 * generator's own rate is not that: it sends a second's share at once, and only as it is answered.
 */
import { Agent, get } from 'node:http';
import { setTimeout as pause } from 'node:timers/promises';
import { percentile } from './figures.ts';

/** What comes. */
export interface ArrivalOptions {
  readonly seconds: number;
  readonly perSecond: number;
  /** Addresses that are asked for one after another, each once. */
  readonly paths: Iterator<string>;
}

/** How it was answered. */
export interface Waits {
  readonly answered: number;
  readonly p50Ms: number;
  readonly p99Ms: number;
  readonly longestMs: number;
  readonly notOk: number;
}

/** Sends requests as they come, and waits for the last answer. */
export async function arrivals(
  origin: string,
  { seconds, perSecond, paths }: ArrivalOptions,
): Promise<Waits> {
  const agent = new Agent({ keepAlive: true });
  const waits: number[] = [];
  let notOk = 0;
  const under: Promise<void>[] = [];
  const begun = performance.now();
  for (let due = begun; due < begun + 1000 * seconds; due += gapMs(perSecond)) {
    while (performance.now() < due) await pause(1);
    const { value, done } = paths.next();
    if (done) throw new Error('there are no more addresses');
    const at = due;
    under.push(
      ask(agent, origin + value).then((isOk) => {
        waits.push(performance.now() - at);
        if (!isOk) notOk += 1;
      }),
    );
  }
  await Promise.all(under);
  agent.destroy();
  return {
    answered: waits.length,
    p50Ms: percentile(waits, 0.5),
    p99Ms: percentile(waits, 0.99),
    longestMs: percentile(waits, 1),
    notOk,
  };
}

/** The time until the next arrival: exponentially distributed. */
function gapMs(perSecond: number): number {
  return (-Math.log(1 - Math.random()) * 1000) / perSecond;
}

function ask(agent: Agent, url: string): Promise<boolean> {
  return new Promise((resolve) => {
    const request = get(url, { agent }, (response) => {
      response.resume().once('end', () => resolve(response.statusCode === 200));
    });
    request.once('error', () => resolve(false));
  });
}
