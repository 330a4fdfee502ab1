/**
 * Rate limits: in memory, and shared over a real Redis or Valkey where one is installed.
 */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { buildApp } from '@stillroot/api';
import { describe, expect, test } from 'vitest';
import { ask } from '../api/server.ts';

const PER_MINUTE = 60;

/** A server with a limit, and what it logged. */
async function limited(redisUrl?: string) {
  const lines: string[] = [];
  const app = await buildApp({
    requestsPerMinute: PER_MINUTE,
    trustedProxies: 1,
    log: { level: 'info', stream: { write: (line) => lines.push(line) } },
    ...(redisUrl !== undefined && { redisUrl }),
  });
  const origin = await app.listen({ host: '127.0.0.1', port: 0 });
  const from = (client: string, path = '/v1/modes/dorian') =>
    ask(origin, path, { headers: { 'x-forwarded-for': `10.0.0.1, ${client}` } });
  return {
    from,
    lines,
    counting: async () => (await from('x', '/health')).body['counting'],
    close: () => app.close(),
  };
}

/** A minute that turns between two requests begins a new count. */
async function awayFromTheTurn(): Promise<void> {
  const left = 60_000 - (Date.now() % 60_000);
  if (left < 15_000) await new Promise((resolve) => setTimeout(resolve, left + 50));
}

test('whoever asks too much is told when to go on; others are answered', async () => {
  await awayFromTheTurn();
  const { from, lines, counting, close } = await limited();
  const statuses: number[] = [];
  for (let at = 0; at < PER_MINUTE + 5; at += 1) statuses.push((await from('1.1.1.1')).status);
  expect(statuses.filter((status) => status === 200)).toHaveLength(PER_MINUTE);
  const refused = await from('1.1.1.1');
  expect([refused.status, refused.type]).toEqual([429, 'application/problem+json; charset=utf-8']);
  expect(Number(refused.headers.get('retry-after'))).toBeGreaterThan(0);
  expect(Number(refused.headers.get('retry-after'))).toBeLessThanOrEqual(60);
  expect((await from('2.2.2.2')).status).toBe(200);
  // What watches over the server is never refused.
  expect((await from('1.1.1.1', '/health')).status).toBe(200);
  expect(await counting()).toBe('in-memory');
  const logged = lines.map((line) => JSON.parse(line)).find(({ status }) => status === 429);
  expect(logged).toMatchObject({ method: 'GET', url: '/v1/modes/dorian', route: 'too-many' });
  expect(typeof logged.ms).toBe('number');
  await close();
});

const command = ['valkey-server', 'redis-server'].find((name) => {
  try {
    execFileSync(name, ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
});
if (command === undefined)
  console.warn('no redis-server or valkey-server here: the shared count is not tested');

function startCount(port: number): Promise<ChildProcess> {
  const child = spawn(command ?? '', [
    '--port',
    String(port),
    '--bind',
    '127.0.0.1',
    '--save',
    '',
    '--appendonly',
    'no',
  ]);
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.stdout?.on('data', (chunk) => {
      if (/ready to accept/i.test(String(chunk))) resolve(child);
    });
  });
}

async function until(isSo: () => Promise<boolean>, withinMs = 8000): Promise<boolean> {
  const end = Date.now() + withinMs;
  while (Date.now() < end) {
    if (await isSo()) return true;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return false;
}

describe.skipIf(command === undefined)('a shared count', () => {
  test('is one for all processes; when it is killed they keep answering, say so, and find it again', async () => {
    await awayFromTheTurn();
    const port = 20_000 + (process.pid % 20_000);
    let redis = await startCount(port);
    const [one, other] = [
      await limited(`redis://127.0.0.1:${port}`),
      await limited(`redis://127.0.0.1:${port}`),
    ];
    expect(await until(async () => (await one.counting()) === 'shared')).toBe(true);
    for (let at = 0; at < PER_MINUTE; at += 1) await one.from('1.1.1.1');
    // Soon the other one knows.
    expect(await until(async () => (await other.from('1.1.1.1')).status === 429)).toBe(true);
    expect((await other.from('2.2.2.2')).status).toBe(200);

    redis.kill('SIGKILL');
    await once(redis, 'exit');
    expect(await until(async () => (await one.counting()) === 'shared-lost')).toBe(true);
    const answered = await Promise.all(Array.from({ length: 20 }, () => one.from('3.3.3.3')));
    expect(answered.every(({ status }) => status === 200)).toBe(true);
    expect(one.lines.some((line) => line.includes('the shared count is lost'))).toBe(true);

    redis = await startCount(port);
    expect(await until(async () => (await one.counting()) === 'shared')).toBe(true);
    expect(one.lines.some((line) => line.includes('reached again'))).toBe(true);
    await Promise.all([one.close(), other.close()]);
    redis.kill('SIGTERM');
  });
});
