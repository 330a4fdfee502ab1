/**
 * The runtime goes through memory and compiles on threads of its own while requests are answered. Where they
 * share a core with the thread that answers, each would take as much of it; at a lower priority they take about
 * a quarter, so that little waits meanwhile. At the lowest they would fall behind under load, and memory grow.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { setPriority } from 'node:os';

const OWN_TASKS = '/proc/self/task';
const LOWERED = 5;

/** Lowers the runtime's threads. On Linux only, where each thread has a priority of its own (setpriority(2)). */
export function lowerRuntimeThreads(): void {
  if (process.platform !== 'linux') return;
  for (const thread of readdirSync(OWN_TASKS)) {
    try {
      if (readFileSync(`${OWN_TASKS}/${thread}/comm`, 'utf8').startsWith('V8Worker'))
        setPriority(Number(thread), LOWERED);
    } catch {
      // A thread that has ended, or a system that does not allow it: it answers all the same.
    }
  }
}
