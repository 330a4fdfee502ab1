/**
 * Requests that are none, clients that dawdle, and too much of everything: refused, and the server goes on.
 */
import { connect, type Socket } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask, type Served, serve } from '../api/server.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

function open(): Socket {
  const { hostname, port } = new URL(served.origin);
  const socket = connect(Number(port), hostname);
  // The server may close while it is still being written to.
  socket.on('error', () => {});
  return socket;
}

/** What comes back for some bytes until the server closes. */
function exchange(bytes: string | Buffer): Promise<string> {
  return new Promise((resolve) => {
    const socket = open();
    const chunks: Buffer[] = [];
    socket.on('data', (chunk) => chunks.push(chunk));
    socket.on('close', () => resolve(Buffer.concat(chunks).toString('latin1')));
    socket.write(bytes);
  });
}

async function isWell(): Promise<void> {
  expect((await ask(served.origin, '/v1/modes/dorian/A')).status).toBe(200);
}

const HOST = 'Host: x\r\n';

describe('what is no HTTP', () => {
  test.each([
    ['noise', Buffer.from(Array.from({ length: 500 }, (_, at) => (at * 37) % 256))],
    ['a handshake of TLS', Buffer.from('160301020001000001fc0303', 'hex')],
    ['a version that is none', `GET /v1/modes HTTP/9.9\r\n${HOST}\r\n`],
    ['a field without a name', `GET /v1/modes HTTP/1.1\r\n${HOST}: x\r\n\r\n`],
    ['a line feed in a field', `GET /v1/modes HTTP/1.1\r\n${HOST}A: b\nc\r\n\r\n`],
    ['two lengths', `POST /v1/batch HTTP/1.1\r\n${HOST}Content-Length: 2\r\nContent-Length: 9\r\n\r\n{}`],
    [
      'a length and chunks',
      `POST /v1/batch HTTP/1.1\r\n${HOST}Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
    ],
    ['a chunk of no size', `POST /v1/batch HTTP/1.1\r\n${HOST}Transfer-Encoding: chunked\r\n\r\nzz\r\n\r\n`],
    ['a length below nothing', `POST /v1/batch HTTP/1.1\r\n${HOST}Content-Length: -1\r\n\r\n`],
  ])('%s is answered 400 or the connection closed', async (_what, bytes) => {
    const reply = await exchange(bytes);
    if (reply !== '') expect(reply).toMatch(/^HTTP\/1\.1 4\d\d .*\r\n/);
    await isWell();
  });
});

describe('too much', () => {
  test.each([
    ['an address', `GET /v1/modes?name=${'a'.repeat(100_000)} HTTP/1.1\r\n${HOST}\r\n`],
    ['a field', `GET /v1/modes HTTP/1.1\r\n${HOST}A: ${'b'.repeat(100_000)}\r\n\r\n`],
    [
      'fields',
      `GET /v1/modes HTTP/1.1\r\n${HOST}${Array.from({ length: 5000 }, (_, at) => `A${at}: b\r\n`).join('')}\r\n`,
    ],
  ])('%s gets 431', async (_what, bytes) => {
    const reply = await exchange(bytes);
    expect(reply).toMatch(/^HTTP\/1\.1 431 /);
    expect(reply).toMatch(/^access-control-allow-origin: \*\r$/im);
    expect(reply).toContain('application/problem+json');
    await isWell();
  });

  test('a body that never ends gets 413', async () => {
    const chunk = `2000\r\n${' '.repeat(0x2000)}\r\n`;
    const reply = await exchange(
      `POST /v1/batch HTTP/1.1\r\n${HOST}Content-Type: application/json\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n${chunk.repeat(40)}`,
    );
    expect(reply).toMatch(/^HTTP\/1\.1 413 /);
    await isWell();
  });
});

test('a thousand clients that never finish a sentence keep nobody waiting', async () => {
  const dawdlers = Array.from({ length: 1000 }, () => {
    const socket = open();
    socket.write('GET /v1/modes HTTP/1.1\r\nHost:');
    return socket;
  });
  await new Promise((resolve) => setTimeout(resolve, 200));
  const begun = performance.now();
  for (let at = 0; at < 20; at += 1) await isWell();
  expect(performance.now() - begun).toBeLessThan(5000);
  for (const socket of dawdlers) socket.destroy();
});

test('a client that leaves before its answer does no harm', async () => {
  for (let at = 0; at < 100; at += 1) {
    const socket = open();
    socket.write(`GET /v1/rounds/major/A?tempo=${20 + at} HTTP/1.1\r\n${HOST}Accept-Encoding: br\r\n\r\n`);
    await new Promise((resolve) => setTimeout(resolve, 1));
    socket.destroy();
  }
  await isWell();
});

test('requests that are sent without waiting are answered in their order', async () => {
  const paths = ['/v1/modes/dorian', '/v1/families', '/v1/modes/lydian', '/v1/nothing'];
  const reply = await exchange(
    paths
      .map(
        (path, at) =>
          `GET ${path} HTTP/1.1\r\n${HOST}X-Request-Id: n${at}\r\nAccept-Encoding: br\r\n${at === 3 ? 'Connection: close\r\n' : ''}\r\n`,
      )
      .join(''),
  );
  expect([...reply.matchAll(/X-Request-Id: (n\d)/gi)].map((one) => one[1])).toEqual(['n0', 'n1', 'n2', 'n3']);
});
