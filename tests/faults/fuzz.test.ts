/**
 * Whatever is asked of whatever address of the OpenAPI document: never a 5xx, every refusal a problem that
 * names the field, nothing slow, and memory that does not grow. A few thousand requests, or as many as
 * `FUZZ_REQUESTS` says.
 */
import { Agent, request } from 'node:http';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { answers, openApiDocument } from '@stillroot/contract';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Running, startServer } from '../bench/api-servers.ts';
import { type Asked, anyRequest } from './any-request.ts';

const REQUESTS = Number(process.env['FUZZ_REQUESTS'] ?? 2000);
const TOGETHER = 25;
/** In a long run nothing takes longer; a short one shares the machine with other tests. */
const SLOWEST_MS = REQUESTS > 50_000 ? 250 : 3000;

let server: Running;
beforeAll(async () => {
  server = await startServer(false, { LOG_LEVEL: 'silent' });
});
afterAll(() => server.stop());

const agent = new Agent({ keepAlive: true, maxSockets: TOGETHER });

interface Answered {
  readonly status: number;
  readonly type: string;
  readonly text: string;
  readonly ms: number;
}

function send({ method, path, body, headers }: Asked): Promise<Answered> {
  const begun = performance.now();
  return new Promise((resolve, reject) => {
    const asked = request(server.origin + path, { method, headers, agent }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk) => chunks.push(chunk));
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          type: response.headers['content-type'] ?? '',
          text: unpacked(Buffer.concat(chunks), response.headers['content-encoding']),
          ms: performance.now() - begun,
        }),
      );
    });
    asked.on('error', reject);
    asked.end(body);
  });
}

function unpacked(body: Buffer, coding: string | undefined): string {
  if (body.length === 0 || coding === undefined) return body.toString('utf8');
  return (coding === 'br' ? brotliDecompressSync(body) : gunzipSync(body)).toString('utf8');
}

function check(asked: Asked, { status, type, text, ms }: Answered): void {
  const what = `${asked.method} ${asked.path} ${asked.body ?? ''}`;
  expect(status, what).toBeLessThan(500);
  expect(ms, what).toBeLessThan(SLOWEST_MS);
  if (status < 400 || asked.method === 'HEAD') return;
  expect(type, what).toContain('application/problem+json');
  const problem = answers.Problem.parse(JSON.parse(text));
  expect(problem.status).toBe(status);
  expect(
    status === 405 || problem.errors.every(({ field, expected }) => field !== '' && expected !== ''),
    what,
  ).toBe(true);
  expect(status === 405 || problem.errors.length > 0, what).toBe(true);
}

test(`${REQUESTS} requests of every kind are answered or refused`, { timeout: 3_600_000 }, async () => {
  const operations = Object.entries(openApiDocument()['paths'] as object);
  const seen = new Map<number, number>();
  let warmMb = Number.NaN;
  let count = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.array(anyRequest(operations), { minLength: TOGETHER, maxLength: TOGETHER }),
      async (several) => {
        const answered = await Promise.all(several.map(send));
        for (const [at, one] of answered.entries()) {
          check(several[at] as Asked, one);
          seen.set(one.status, (seen.get(one.status) ?? 0) + 1);
        }
        count += several.length;
        if (Number.isNaN(warmMb) && count >= REQUESTS / 2) warmMb = await server.residentMb();
      },
    ),
    { numRuns: Math.ceil(REQUESTS / TOGETHER), endOnFailure: true },
  );
  const endMb = await server.residentMb();
  const tally = [...seen].toSorted(([a], [b]) => a - b).map(([status, times]) => `${times} × ${status}`);
  console.log(
    `${count} requests: ${tally.join(', ')}; ${warmMb.toFixed(0)} MB half-way, ${endMb.toFixed(0)} MB at the end`,
  );
  expect(seen.get(200)).toBeGreaterThan(count / 10);
  expect(seen.get(400)).toBeGreaterThan(count / 10);
  // Where there is no /proc, nothing is known of memory.
  if (!Number.isNaN(endMb) && REQUESTS > 50_000) expect(endMb).toBeLessThan(warmMb * 1.1);
});
