/**
 * Stopping and settings: what was begun is finished, and what is set wrongly is said.
 */
import { execFile } from 'node:child_process';
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { request } from 'node:http';
import { type AddressInfo, createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';
import { startServer } from '../bench/api-servers.ts';

const MAIN = fileURLToPath(new URL('../../apps/api/serve.js', import.meta.url));

test('a server that is told to stop finishes what it began, says that it is not ready, and ends', async () => {
  const server = await startServer(false, { STOP_DELAY_MS: '2500', LOG_LEVEL: 'silent' });
  const body = JSON.stringify({ paths: ['/v1/modes/dorian/A', '/v1/rounds/major/A'] });
  const slow = request(`${server.origin}/v1/batch`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'content-length': body.length },
  });
  slow.write(body.slice(0, 10));
  await once(slow, 'socket');
  await new Promise((resolve) => setTimeout(resolve, 150));
  const stopped = server.stop();
  await new Promise((resolve) => setTimeout(resolve, 200));
  const ready = await fetch(`${server.origin}/ready`);
  expect([ready.status, await ready.json()]).toEqual([503, { status: 'stopping' }]);
  const still = await fetch(`${server.origin}/v1/modes/dorian`);
  expect([still.status, still.headers.get('connection')]).toEqual([200, 'close']);
  // Soon nothing new is taken any more; the request that was begun is still waited for.
  await expect.poll(() => isTaken(server.origin), { timeout: 8000, interval: 100 }).toBe(false);
  const answered = once(slow, 'response');
  slow.end(body.slice(10));
  const [response] = await answered;
  expect(response.statusCode).toBe(200);
  response.resume();
  await stopped;
});

function isTaken(origin: string): Promise<boolean> {
  return fetch(`${origin}/health`).then(
    () => true,
    () => false,
  );
}

test.skipIf(process.platform !== 'linux')(
  'two processes share a port, and one that dies is replaced',
  async () => {
    const server = await startServer(false, {
      WORKERS: '2',
      LOG_LEVEL: 'silent',
      PORT: String(await freePort()),
    });
    const answers = await Promise.all(
      Array.from({ length: 20 }, () => fetch(`${server.origin}/v1/modes/dorian`)),
    );
    expect(answers.every(({ ok }) => ok)).toBe(true);
    const [first, second] = await childrenOf(server.pid);
    process.kill(first as number, 'SIGKILL');
    await expect
      .poll(async () => (await childrenOf(server.pid)).filter((pid) => pid !== first), { timeout: 10_000 })
      .toHaveLength(2);
    expect(await childrenOf(server.pid)).toContain(second);
    // On a slow machine the second may still have been on its way.
    await expect.poll(() => isTaken(server.origin), { timeout: 10_000 }).toBe(true);
    const again = await Promise.all(Array.from({ length: 20 }, () => isTaken(server.origin)));
    expect(again).not.toContain(false);
    await server.stop();
  },
);

/** A port that was free a moment ago: processes that do not say which share one only while one of them has it. */
async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
}

/** The processes that a process has started; proc(5), `/proc/tid/children`. */
async function childrenOf(pid: number): Promise<readonly number[]> {
  const listed = await readFile(`/proc/${pid}/task/${pid}/children`, 'utf8');
  return listed.trim().split(' ').map(Number);
}

test.each([
  [{ PORT: 'eighty' }, 'PORT is "eighty"'],
  [{ PORT: '70000' }, 'PORT is "70000"'],
  [{ REQUESTS_PER_MINUTE: '-1' }, 'REQUESTS_PER_MINUTE is "-1"'],
  [{ REDIS_URL: 'localhost' }, 'REDIS_URL is "localhost"'],
  [{ SITE_ORIGIN: 'example.org' }, 'SITE_ORIGIN is "example.org"'],
  [{ LOG_LEVEL: 'loud' }, 'LOG_LEVEL is "loud"'],
  [{ HOST: 'nowhere.invalid' }, 'HOST is "nowhere.invalid"'],
])('%j is refused with a sentence', async (env, said) => {
  const run = promisify(execFile)(process.execPath, [MAIN], { env: { ...process.env, PORT: '0', ...env } });
  await expect(run).rejects.toMatchObject({ code: 1, stderr: expect.stringContaining(said) });
});
