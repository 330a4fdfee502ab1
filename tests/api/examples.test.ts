/**
 * Every example in the OpenAPI document, executed: parameters, curl, TypeScript through the generated client,
 * and Python.
 */
import { execFile, execFileSync } from 'node:child_process';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { createStillrootClient } from '@stillroot/client';
import { openApiDocument } from '@stillroot/contract';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask, type Served, serve } from './server.ts';

interface Operation {
  readonly parameters?: readonly { readonly name: string; readonly in: string; readonly example?: unknown }[];
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly example: unknown }>> };
  readonly responses: Readonly<Record<string, { readonly content: object }>>;
  readonly 'x-codeSamples': readonly { readonly lang: string; readonly source: string }[];
}

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const paths = openApiDocument()['paths'] as Readonly<Record<string, Readonly<Record<string, Operation>>>>;
const operations = Object.entries(paths).flatMap(([path, methods]) =>
  Object.entries(methods).map(([method, operation]): [string, string, Operation] => [
    method,
    path,
    operation,
  ]),
);

const WRITTEN_FOR = 'http://127.0.0.1:8080';
const run = promisify(execFile);

function sampleOf({ 'x-codeSamples': samples }: Operation, lang: string): string {
  const source = samples.find((one) => one.lang === lang)?.source;
  if (source === undefined) throw new Error(`no sample in ${lang}`);
  return source.replaceAll(WRITTEN_FOR, served.origin);
}

function isThere(command: string): boolean {
  try {
    execFileSync(command, ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

describe('the examples of parameters and bodies', () => {
  test.each(operations)(
    '%s %s answers 200 in the form that is described',
    async (method, path, operation) => {
      const { parameters = [], requestBody, responses } = operation;
      const query = new URLSearchParams();
      let filled = path;
      for (const { name, in: place, example } of parameters) {
        if (place === 'path') {
          expect(example, name).toBeDefined();
          filled = filled.replace(`{${name}}`, encodeURIComponent(String(example)));
        } else if (example !== undefined) query.set(name, String(example));
      }
      const body = requestBody?.content['application/json']?.example;
      const answer = await ask(served.origin, query.size > 0 ? `${filled}?${query}` : filled, {
        method: method.toUpperCase(),
        ...(body !== undefined && {
          body: JSON.stringify(body),
          headers: { 'content-type': 'application/json' },
        }),
      });
      expect(answer.status).toBe(200);
      expect(Object.keys(responses['200']?.content ?? {})).toEqual([answer.type.split(';')[0]]);
      expect(answer.text.length).toBeGreaterThan(10);
    },
  );
});

test.skipIf(!isThere('curl'))('every curl sample gets what is there', async () => {
  const cwd = await mkdtemp(join(tmpdir(), 'stillroot-samples-'));
  for (const [method, path, operation] of operations) {
    const { stdout } = await run('sh', ['-c', sampleOf(operation, 'Shell')], { cwd, maxBuffer: 4e6 });
    expect(stdout.length, `${method} ${path}`).toBeGreaterThan(path.endsWith('.mid') ? -1 : 10);
  }
});

describe('the TypeScript samples, with the generated client', () => {
  type Client = ReturnType<typeof createStillrootClient>;
  type Body = (client: Client) => Promise<{ data?: unknown; error?: unknown }>;
  const AsyncFunction = (async () => {}).constructor as new (...source: readonly string[]) => Body;

  test.each(operations)('%s %s', async (_method, path, operation) => {
    const client = createStillrootClient({ baseUrl: served.origin });
    const sample = new AsyncFunction(
      'client',
      `${sampleOf(operation, 'TypeScript')} return { data, error };`,
    );
    const { data, error } = await sample(client);
    expect(error).toBeUndefined();
    expect(data, path).toBeTruthy();
  });

  test('have types: a scale, a round and a problem are read by their fields', async () => {
    const client = createStillrootClient({ baseUrl: served.origin });
    const scale = await client.GET('/v1/modes/{mode}/{root}', {
      params: { path: { mode: 'dorian', root: 'F#' } },
    });
    expect(scale.data?.notes).toEqual(['F#', 'G#', 'A', 'B', 'C#', 'D#', 'E']);
    const round = await client.GET('/v1/rounds/{family}/{root}', {
      params: {
        path: { family: 'major', root: 'D' },
        query: { instrument: 'bass-4', pattern: 'thirds', tempo: 96 },
      },
    });
    expect(round.data?.modes.map(({ degree }) => degree)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    const batch = await client.POST('/v1/batch', { body: { paths: ['/v1/modes/dorian'] } });
    expect(batch.data?.answers[0]?.status).toBe(200);
    const wrong = await client.GET('/v1/modes/{mode}', { params: { path: { mode: 'dorain' } } });
    expect(wrong.error?.errors[0]?.field).toBe('mode');
  });
});

test.skipIf(!isThere('python3'))('every Python sample gets what is there', async () => {
  const sources = operations.map(([method, path, operation]) => [
    `${method} ${path}`,
    sampleOf(operation, 'Python'),
  ]);
  const script = [
    'import json, sys',
    'for name, source in json.loads(sys.argv[1]):',
    '    place = {}',
    '    exec(source, place)',
    '    assert place["data"], name',
    'print("done")',
  ].join('\n');
  const { stdout } = await run('python3', ['-c', script, JSON.stringify(sources)]);
  expect(stdout).toBe('done\n');
});
