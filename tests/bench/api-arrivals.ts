/**
 * Arrivals: requests that come one by one, whether those before them were answered or not, as they do from
 * many clients that know nothing of one another (a Poisson process). How long each waits is counted from
 * when it was due, so that a server that stands still is charged for all that came meanwhile. They come over
 * connections that were opened before, as a cache in front keeps them; where all are taken, a request waits
 * for one. The load generator's own rate is not that: it sends a second's share at once, and only as it is
 * answered. Written on sockets, since a client that makes an object of every answer waits longer for itself
 * than for the server.
 */
import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
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

/** A connection that is kept, and what is under way on it. */
interface Line {
  readonly socket: Socket;
  answered: (isOk: boolean) => void;
  /** Of the answer that is under way; undefined until its header fields are here. */
  bytesLeft: number | undefined;
  isOk: boolean;
}

/** A request that waits for a connection. */
interface Due {
  readonly path: string;
  readonly dueMs: number;
}

/** As many connections as the cache in front keeps (`deploy/nginx.conf`). */
const LINES = 64;

/** Sends requests as they come, and waits for the last answer. */
export async function arrivals(
  origin: string,
  { seconds, perSecond, paths }: ArrivalOptions,
): Promise<Waits> {
  const { hostname, port, host } = new URL(origin);
  const lines = await Promise.all(Array.from({ length: LINES }, () => open(hostname, Number(port))));
  const idle = [...lines];
  const waiting: Due[] = [];
  const waits: number[] = [];
  let sent = 0;
  let notOk = 0;
  const { promise: ended, resolve: end, reject: fail } = Promise.withResolvers<void>();
  for (const { socket } of lines)
    socket.once('close', () => fail(new Error('the server closed a connection')));
  let isLastSent = false;
  const send = (line: Line, { path, dueMs }: Due): void => {
    line.answered = (isOk) => {
      waits.push(performance.now() - dueMs);
      if (!isOk) notOk += 1;
      const next = waiting.shift();
      if (next) send(line, next);
      else idle.push(line);
      if (isLastSent && waits.length === sent) end();
    };
    line.socket.write(`GET ${path} HTTP/1.1\r\nHost: ${host}\r\n\r\n`);
  };
  const begun = performance.now();
  for (let dueMs = begun; dueMs < begun + 1000 * seconds; dueMs += gapMs(perSecond)) {
    while (performance.now() < dueMs) await new Promise(setImmediate);
    const { value: path, done } = paths.next();
    if (done) throw new Error('there are no more addresses');
    sent += 1;
    // In turn: the server closes a connection on which nothing comes.
    const line = idle.shift();
    if (line) send(line, { path, dueMs });
    else waiting.push({ path, dueMs });
  }
  isLastSent = true;
  if (waits.length === sent) end();
  await ended;
  for (const { socket } of lines) socket.destroy();
  return {
    answered: waits.length,
    p50Ms: percentile(waits, 0.5),
    p99Ms: percentile(waits, 0.99),
    longestMs: percentile(waits, 1),
    notOk,
  };
}

/** The time until the next arrival: exponentially distributed. */
export function gapMs(perSecond: number): number {
  return (-Math.log(1 - Math.random()) * 1000) / perSecond;
}

async function open(hostname: string, port: number): Promise<Line> {
  const socket = connect({ host: hostname, port, noDelay: true });
  const line: Line = { socket, answered: () => undefined, bytesLeft: undefined, isOk: false };
  await once(socket, 'connect');
  socket.on('data', (chunk) => receive(line, chunk));
  return line;
}

/** One answer at a time is under way on a line, and says how long it is. */
function receive(line: Line, chunk: Buffer): void {
  if (line.bytesLeft === undefined) {
    const end = chunk.indexOf('\r\n\r\n');
    const head = chunk.toString('latin1', 0, end);
    const length = /content-length: (\d+)/i.exec(head)?.[1];
    if (end < 0 || length === undefined) {
      line.socket.destroy();
      return;
    }
    line.isOk = head.startsWith('HTTP/1.1 200');
    line.bytesLeft = Number(length) + end + 4;
  }
  line.bytesLeft -= chunk.length;
  if (line.bytesLeft > 0) return;
  line.bytesLeft = undefined;
  line.answered(line.isOk);
}
