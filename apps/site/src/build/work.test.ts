import { type ChildProcess, fork } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { handOut } from './work.ts';

const folder = mkdtempSync(join(tmpdir(), 'work-'));
const PIECES = Array.from({ length: 40 }, (_, at) => `/modes/${at}`);

afterAll(() => rmSync(folder, { recursive: true }));

/** A builder that runs a program with the builder's side of the work at hand. */
function builder(program: string): ChildProcess {
  const file = join(folder, `${crypto.randomUUID()}.mjs`);
  const work = JSON.stringify(new URL('work.ts', import.meta.url).href);
  writeFileSync(file, `import { askFor, endWork } from ${work};\n${program}`);
  return fork(file, { execArgv: [], stdio: ['ignore', 'ignore', 'ignore', 'ipc'] });
}

/** Asks for each piece, some twice, and tells which it was given, with its own number. */
const ASKING = `
const got = [];
for (const piece of ${JSON.stringify(PIECES)}) {
  const [first, again] = await Promise.all([askFor(piece), askFor(piece)]);
  if (first !== again || first !== (await askFor(piece))) throw new Error('two answers');
  if (first) got.push(piece + ' ' + process.pid);
}
endWork(got);`;

test('each piece goes to one builder, and what all of them wrote is known', async () => {
  const wrote = await handOut([builder(ASKING), builder(ASKING), builder(ASKING)]);
  expect([...wrote].map((one) => one.split(' ')[0]).toSorted()).toEqual(PIECES.toSorted());
});

test('one builder alone is given everything', async () => {
  const wrote = await handOut([builder(ASKING)]);
  expect(wrote.size).toBe(PIECES.length);
});

test('where a builder fails, the work fails and the others are ended', async () => {
  const idle = builder('setInterval(() => {}, 1000);');
  const ended = new Promise((resolve) => idle.on('exit', (_status, signal) => resolve(signal)));
  const failing = builder("await askFor('/modes/dorian'); throw new Error('cannot');");
  await expect(handOut([idle, failing])).rejects.toThrow('A builder ended before its work was done');
  expect(await ended).toBe('SIGTERM');
});

test('what a builder wrote is known however much it is', async () => {
  const many = 'endWork(Array.from({ length: 50_000 }, (_, at) => "/modes/some-mode/root/" + at));';
  expect((await handOut([builder(many), builder(ASKING)])).size).toBe(50_000 + PIECES.length);
});
