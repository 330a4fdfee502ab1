/**
 * The API under load, side by side in one run: a bare `node:http` server that sends the same bytes, kept
 * answers, rounds that were never made before, files, and how long requests wait at 80 % of the limit.
 * Server and load generator run on cores of their own where `taskset` can pin them. With `--million` also a
 * million requests, and what the server takes of memory meanwhile; with `--processes` also several processes.
 */
import { execFileSync } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { arrivals, type Waits } from './api-arrivals.ts';
import { figuresOfFiles } from './api-files.ts';
import { type Load, load } from './api-load.ts';
import { newRounds, visits } from './api-rounds.ts';
import { machineAlone, startBare, startServer } from './api-servers.ts';
import { middle } from './figures.ts';

const ROUNDS = 3;
const SECONDS = Number(process.env['BENCH_SECONDS'] ?? 4);
const LIMIT_SHARE = 0.8;
const WAIT_BAR_MS = 20;
/** How often the limit is measured and then requests come, so that slow moments of the machine are not the middle. */
const TURNS = 15;

const KEPT = [
  ['a scale', '/v1/modes/phrygian-dominant/A'],
  ['a family', '/v1/families/harmonic-minor'],
] as const;

if (process.argv.includes('--processes')) await processes();
const isPinned = pin();
console.log(
  isPinned
    ? 'Server on core 0, load generator on core 1'
    : 'taskset is not here: server and load generator share the cores, and ratios mean little',
);

const server = await startServer(isPinned);
console.log(`Production start: ${server.startMs.toFixed(0)} ms`);
try {
  for (const [name, path] of KEPT) await besideBare(name, path);
  await uncached();
  await figuresOfFiles(server.origin);
  if (process.argv.includes('--million')) await aMillion();
  console.log(`Resident memory of the server after all this: ${(await server.residentMb()).toFixed(0)} MB`);
} finally {
  await server.stop();
}

async function besideBare(name: string, path: string): Promise<void> {
  const bare = await startBare(server.origin + path, isPinned);
  const [ours, theirs]: [Load[], Load[]] = [[], []];
  const before = await Promise.all([server.processorSeconds(), bare.processorSeconds()]);
  try {
    for (let at = 0; at <= ROUNDS; at += 1) {
      const [one, other] = [
        await load(bare.origin, { path, seconds: SECONDS }),
        await load(server.origin, { path, seconds: SECONDS }),
      ];
      theirs.push(one);
      ours.push(other);
    }
    const after = await Promise.all([server.processorSeconds(), bare.processorSeconds()]);
    const [mine, its] = after.map((seconds, at) => seconds - (before[at] as number)) as [number, number];
    const [sent, bareSent] = [ours, theirs].map((runs) =>
      runs.reduce((sum, { answered }) => sum + answered, 0),
    ) as [number, number];
    console.log(
      `${name}, kept: ${((mine / sent) * 1e6).toFixed(1)} µs of the processor a request beside ${((its / bareSent) * 1e6).toFixed(1)} µs`,
    );
  } finally {
    await bare.stop();
  }
  const [own, bareRate] = [rateOf(ours), rateOf(theirs)];
  console.log(
    `${name}, kept: ${own.toFixed(0)}/s beside ${bareRate.toFixed(0)}/s of bare node:http, ratio ${(own / bareRate).toFixed(2)} (bar 0.90)`,
  );
}

async function uncached(): Promise<void> {
  const paths = newRounds();
  // All that is ever compiled is compiled by then.
  await load(server.origin, { paths, seconds: 4 * SECONDS });
  const first = await load(server.origin, { paths, seconds: SECONDS });
  const pieceMs = 1000 / first.perSecond;
  const turns: Turn[] = [];
  for (let at = 0; at < TURNS; at += 1) turns.push(await turn(paths, pieceMs));
  const perSecond = middle(turns.map(({ limit }) => limit.perSecond));
  console.log(`a round never made before: ${perSecond.toFixed(0)}/s (bar 2000/s)`);
  console.log(
    `  as they come, at ${LIMIT_SHARE * 100} % of that, ${TURNS} times: ${waitsOf(turns.map(({ waits }) => waits))} (bar for the p99 ${WAIT_BAR_MS} ms)`,
  );
  console.log(
    `  what no server on that core goes below, measured in turn: ${waitsOf(turns.map(({ machine }) => machine))}`,
  );
  const notOk = turns.reduce((sum, { limit, waits }) => sum + limit.notOk + waits.notOk, 0);
  if (notOk > 0) console.log(`  ${notOk} answers were not 200`);
}

/** The limit, then requests that come one by one at a share of it, then what the machine alone lets wait. */
interface Turn {
  readonly limit: Load;
  readonly waits: Waits;
  readonly machine: Pick<Waits, 'p50Ms' | 'p99Ms'>;
}

async function turn(paths: Iterator<string>, pieceMs: number): Promise<Turn> {
  const seconds = SECONDS / 2;
  const limit = await load(server.origin, { paths, seconds });
  const perSecond = limit.perSecond * LIMIT_SHARE;
  return {
    limit,
    waits: await arrivals(server.origin, { paths, seconds, perSecond }),
    machine: await machineAlone(isPinned, { pieceMs, seconds, share: LIMIT_SHARE }),
  };
}

function waitsOf(turns: readonly Turn['machine'][]): string {
  const [p50s, p99s] = [turns.map(({ p50Ms }) => p50Ms), turns.map(({ p99Ms }) => p99Ms)];
  const within = p99s.filter((ms) => ms < WAIT_BAR_MS).length;
  return `p50 ${middle(p50s).toFixed(1)} ms, p99 ${middle(p99s).toFixed(1)} ms (below ${WAIT_BAR_MS} ms ${within} times, longest ${Math.max(...p99s).toFixed(0)} ms)`;
}

/** What readers ask for, packed, a hundred thousand at a time. */
async function aMillion(): Promise<void> {
  const paths = visits();
  console.log('a million requests, of which a fifth ask for something new:');
  for (let sent = 100_000; sent <= 1_000_000; sent += 100_000) {
    const { perSecond, notOk } = await load(server.origin, {
      requests: 100_000,
      paths,
      headers: { 'accept-encoding': 'gzip' },
    });
    const memory = (await server.residentMb()).toFixed(0);
    console.log(
      `  ${sent}: ${memory} MB (bar 160 MB), ${perSecond.toFixed(0)}/s${notOk > 0 ? `, ${notOk} not 200` : ''}`,
    );
  }
}

/** Rounds never made before, from one process and from one on each core, on all cores with the load generator. */
async function processes(): Promise<void> {
  for (const workers of [1, availableParallelism()]) {
    const several = await startServer(false, { WORKERS: String(workers) });
    try {
      const paths = newRounds();
      await load(several.origin, { paths, seconds: 3 * SECONDS });
      const { perSecond } = await load(several.origin, { paths, seconds: 2 * SECONDS });
      console.log(
        `${workers === 1 ? '1 process' : `${workers} processes`}, not pinned: a round never made before, ${perSecond.toFixed(0)}/s`,
      );
    } finally {
      await several.stop();
    }
  }
}

function rateOf(loads: readonly Load[]): number {
  // The first run warms the server.
  return middle(loads.slice(1).map(({ perSecond }) => perSecond));
}

/** Moves this process to core 1; whether that could be done. */
function pin(): boolean {
  try {
    execFileSync('taskset', ['-a', '-cp', '1', String(process.pid)], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}
