/**
 * The cache in front, as it is configured for deployment: what it keeps, and that no request is lost while
 * processes come and go. It is run where `STILLROOT_FRONT=1` asks for it and nginx is installed: it takes the
 * rights to start one.
 */
import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { type Running, startServer } from '../bench/api-servers.ts';

const isInstalled = (() => {
  if (process.env['STILLROOT_FRONT'] !== '1') return false;
  try {
    execFileSync('nginx', ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();
if (!isInstalled) console.warn('the cache in front is not tested: STILLROOT_FRONT=1 and nginx are needed');

const CLIENTS = 8;

/** The committed configuration with other ports. */
async function startFront(port: number, ports: readonly [number, number]) {
  const folder = await mkdtemp(join(tmpdir(), 'stillroot-front-'));
  const committed = await readFile(new URL('../../apps/api/deploy/nginx.conf', import.meta.url), 'utf8');
  const moved = committed
    .replace('127.0.0.1:8080', `127.0.0.1:${port}`)
    .replace('127.0.0.1:8081', `127.0.0.1:${ports[0]}`)
    .replace('127.0.0.1:8082', `127.0.0.1:${ports[1]}`);
  await writeFile(join(folder, 'nginx.conf'), moved);
  const child = spawn(
    'nginx',
    ['-p', folder, '-c', join(folder, 'nginx.conf'), '-g', 'daemon off; user root;'],
    {
      stdio: 'ignore',
    },
  );
  onTestFinished(async () => {
    child.kill('SIGKILL');
    await rm(folder, { recursive: true, force: true });
  });
  const origin = `http://127.0.0.1:${port}`;
  await expect
    .poll(
      () =>
        fetch(`${origin}/health`).then(
          ({ ok }) => ok,
          () => false,
        ),
      { timeout: 10_000 },
    )
    .toBe(true);
  return {
    origin,
    stop: async () => {
      const ended = once(child, 'exit');
      child.kill('SIGTERM');
      await ended;
    },
  };
}

function startOn(port: number): Promise<Running> {
  return startServer(false, { PORT: String(port), LOG_LEVEL: 'silent', STOP_DELAY_MS: '0' });
}

test.skipIf(!isInstalled)(
  'a cache in front answers most, and loses nothing when a process is killed and restarted',
  async () => {
    // Below the ports that outgoing connections are given.
    const port = 21_000 + (process.pid % 3900) * 3;
    let [one, other] = await Promise.all([startOn(port + 1), startOn(port + 2)]);
    onTestFinished(() => Promise.all([one.kill(), other.kill()]).then(() => undefined));
    const front = await startFront(port, [port + 1, port + 2]);
    const paths = ['A', 'B', 'C', 'D', 'E', 'F', 'G'].map((root) => `/v1/modes/dorian/${root}`);
    const tally = new Map<string, number>();
    const bodies = new Map<string, string>();
    const get = async (path: string): Promise<number> => {
      const answer = await fetch(front.origin + path);
      const text = await answer.text();
      const state = answer.headers.get('x-cache') ?? 'none';
      tally.set(state, (tally.get(state) ?? 0) + 1);
      if (answer.ok) expect(text).toBe(bodies.get(path) ?? text);
      bodies.set(path, text);
      return answer.status;
    };
    const lost: number[] = [];
    // An answer that a process was sending when it was killed is cut off: no cache can finish it, but who
    // asks again is answered.
    const cutOff: string[] = [];
    let isKilled = false;
    let isOver = false;
    const load = Array.from({ length: CLIENTS }, async (_, client) => {
      for (let at = 0; !isOver; at += 1) {
        // Half of them were never asked for: the processes have to answer these.
        const path =
          at % 2 === 0
            ? (paths[at % paths.length] as string)
            : `/v1/rounds/major/A?tempo=${20 + (at % 300)}.${client}`;
        const status = await get(path).catch(() => {
          if (!isKilled) return 0;
          cutOff.push(path);
          return get(path).catch(() => 0);
        });
        if (status !== 200) lost.push(status);
      }
    });
    await new Promise((resolve) => setTimeout(resolve, 500));
    await one.stop();
    one = await startOn(port + 1);
    // What was refused by the first, and so waits for the second, is answered before that goes.
    await new Promise((resolve) => setTimeout(resolve, 1000));
    isKilled = true;
    await other.kill();
    other = await startOn(port + 2);
    await new Promise((resolve) => setTimeout(resolve, 500));
    isOver = true;
    await Promise.all(load);
    const total = [...tally.values()].reduce((sum, count) => sum + count, 0);
    const hits = (tally.get('HIT') ?? 0) / total;
    console.log(
      `${total} requests through the cache, ${(hits * 100).toFixed(0)} % of them kept, ${cutOff.length} cut off by the kill, ${lost.length} lost`,
    );
    expect(lost).toEqual([]);
    expect(cutOff.length).toBeLessThanOrEqual(CLIENTS);
    expect(hits).toBeGreaterThan(0.45);
    // With nobody behind it, what is kept is still sent.
    await Promise.all([one.stop(), other.stop()]);
    expect(await get(paths[0] as string)).toBe(200);
    await front.stop();
  },
);
