/**
 * The machine alone: equal pieces of work one after another, without a server, without objects, and how long
 * requests would wait for them that came one by one at a share of what was done in that very time. On a core
 * that is as quick from one moment to the next, the 99th percentile is about ten pieces; where others share
 * the core, it is what no server there can go below. Prints it in milliseconds, and the median before it.
 */
import { gapMs } from './api-arrivals.ts';
import { percentile } from './figures.ts';

const [pieceMs, seconds, share] = process.argv.slice(2).map(Number) as [number, number, number];
/** What is reckoned with, made once. */
const table = new Int32Array(1000);
const turnsEach = Math.max(1, Math.round(pieceMs * turnsAMillisecond()));
// Once for nothing: all is compiled then.
takenBy(turnsEach, seconds);
const piecesMs = takenBy(turnsEach, seconds);
const perSecond = (1000 * piecesMs.length) / piecesMs.reduce((sum, ms) => sum + ms, 0);
const waits = waitsFor(piecesMs, perSecond * share);
console.log(`${percentile(waits, 0.5)} ${percentile(waits, 0.99)}`);

/** How long each piece took. */
function takenBy(turns: number, wantedSeconds: number): readonly number[] {
  const taken: number[] = [];
  const end = performance.now() + 1000 * wantedSeconds;
  for (let begun = performance.now(); begun < end; ) {
    reckon(turns);
    const done = performance.now();
    taken.push(done - begun);
    begun = done;
  }
  return taken;
}

/** From when each is due until it is done, first come, first served. */
function waitsFor(taken: readonly number[], arrivalsPerSecond: number): readonly number[] {
  let dueMs = 0;
  let doneMs = 0;
  return taken.map((ms) => {
    dueMs += gapMs(arrivalsPerSecond);
    doneMs = Math.max(dueMs, doneMs) + ms;
    return doneMs - dueMs;
  });
}

/** Adds to a table again and again, a thousand numbers a turn. */
function reckon(turns: number): void {
  for (let turn = 0; turn < turns; turn += 1)
    for (let at = 0; at < table.length; at += 1) table[at] = ((table[at] as number) + (at ^ turn)) | 0;
}

/** Measured when all is compiled. */
function turnsAMillisecond(): number {
  const turns = 100_000;
  reckon(turns);
  const begun = performance.now();
  reckon(turns);
  return turns / (performance.now() - begun);
}
