/**
 * Servers in processes of their own, on a core of their own where that can be had.
 */
import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

/** A server that runs. */
export interface Running {
  readonly origin: string;
  readonly pid: number;
  /** From the start of the process until it listens. */
  readonly startMs: number;
  residentMb(): Promise<number>;
  /** Processor time it has used; NaN where the system does not tell. */
  processorSeconds(): Promise<number>;
  /** Lets it finish what it began. */
  stop(): Promise<void>;
  /** Ends it at once. */
  kill(): Promise<void>;
}

const MAIN = fileURLToPath(new URL('../../apps/api/serve.js', import.meta.url));
const BARE = fileURLToPath(new URL('api-bare.ts', import.meta.url));
const MACHINE = fileURLToPath(new URL('api-machine.ts', import.meta.url));

/** What `/proc` counts processor time in, on every Linux of today. */
const TICKS_A_SECOND = 100;

/** Young objects live briefly and old ones are few: the server stays small, and is not much slower for it. */
const MEMORY = ['--min-semi-space-size=4', '--max-semi-space-size=4', '--max-old-space-size=128'] as const;

/** Starts the server as its image does, without a rate limit. */
export function startServer(isPinned: boolean, env: NodeJS.ProcessEnv = {}): Promise<Running> {
  return start([...MEMORY, MAIN], isPinned, {
    PORT: '0',
    REQUESTS_PER_MINUTE: '0',
    MALLOC_ARENA_MAX: '1',
    ...env,
  });
}

/** Starts a bare server that answers everything as an address is answered now. */
export function startBare(address: string, isPinned: boolean): Promise<Running> {
  return start([...MEMORY, BARE, address], isPinned, {});
}

/** How long pieces of work would let one another wait on the core that servers run on. */
export async function machineAlone(
  isPinned: boolean,
  { pieceMs, seconds, share }: { readonly pieceMs: number; readonly seconds: number; readonly share: number },
): Promise<{ readonly p50Ms: number; readonly p99Ms: number }> {
  const [command, ...args] = onItsCore(isPinned, [MACHINE, ...[pieceMs, seconds, share].map(String)]);
  const { stdout } = await promisify(execFile)(command, args);
  const [p50Ms, p99Ms] = stdout.trim().split(' ').map(Number) as [number, number];
  return { p50Ms, p99Ms };
}

async function start(args: readonly string[], isPinned: boolean, env: NodeJS.ProcessEnv): Promise<Running> {
  const begun = performance.now();
  const [command, ...rest] = onItsCore(isPinned, args);
  const child = spawn(command, rest, {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const origin = await listening(child);
  const startMs = performance.now() - begun;
  return {
    origin,
    pid: child.pid ?? 0,
    startMs,
    residentMb: async () => {
      const status = await readFile(`/proc/${child.pid}/status`, 'utf8').catch(() => '');
      return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? Number.NaN) / 1024;
    },
    processorSeconds: async () => {
      const stat = await readFile(`/proc/${child.pid}/stat`, 'utf8').catch(() => '');
      // After the name in parentheses: the 12th and 13th fields are user and system time (proc(5)).
      const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
      return (Number(fields[11]) + Number(fields[12])) / TICKS_A_SECOND;
    },
    stop: () => end(child, 'SIGTERM'),
    kill: () => end(child, 'SIGKILL'),
  };
}

/** The command that runs a script with its flags, on core 0 where that can be. */
function onItsCore(isPinned: boolean, args: readonly string[]): readonly [string, ...string[]] {
  return isPinned ? ['taskset', '-c', '0', process.execPath, ...args] : [process.execPath, ...args];
}

async function end(child: ChildProcess, signal: 'SIGTERM' | 'SIGKILL'): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = once(child, 'exit');
  child.kill(signal);
  await ended;
}

/** The address that a server says it is at. */
async function listening(child: ChildProcess): Promise<string> {
  let said = '';
  for await (const chunk of child.stdout ?? []) {
    said += String(chunk);
    const [origin] = /http:\/\/[^/\s]+/.exec(said) ?? [];
    if (origin !== undefined && said.includes('\n')) {
      child.stdout?.resume();
      return origin;
    }
  }
  throw new Error('the server did not start');
}
