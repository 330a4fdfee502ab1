/**
 * The universe from nothing. Each run is a process of its own, from before core is loaded until everything
 * has been asked for once.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { middle } from './figures.ts';

/** As `pnpm serve` starts the server: room for what is made at the start, so that it is not moved about. */
const YOUNG_GENERATION = '--min-semi-space-size=4';

export function measureUniverse(): void {
  const folder = mkdtempSync(join(tmpdir(), 'stillroot-bench-'));
  const bundle = join(folder, 'core.mjs');
  buildSync({
    entryPoints: [fileURLToPath(import.meta.resolve('@stillroot/core'))],
    bundle: true,
    minify: true,
    format: 'esm',
    outfile: bundle,
  });
  const script = join(folder, 'cold.mjs');
  writeFileSync(
    script,
    `const begun = performance.now();
const core = await import('./core.mjs');
const loaded = performance.now();
for (const mode of core.UNIVERSE.modes) for (const root of core.ROOTS) core.spell(mode, root);
const spelled = performance.now();
const rootA = core.ROOTS.find((root) => root.name === 'A');
for (const mode of core.UNIVERSE.modes) {
  core.neighboursOf(mode);
  core.relativeScales(core.spell(mode, rootA));
}
core.placementSets();
const done = performance.now();
console.log(JSON.stringify([loaded - begun, spelled - loaded, done - spelled, done - begun]));
`,
  );
  console.log('\nThe universe from nothing, 15 fresh processes each way, median');
  console.log(
    `  ${'loaded'.padStart(31)}${'spelled'.padStart(11)}${'related'.padStart(11)}${'in all'.padStart(11)}`,
  );
  for (const [name, flags] of [
    ['as served', [YOUNG_GENERATION]],
    ['without room', []],
  ] as const) {
    const runs = Array.from(
      { length: 15 },
      () => JSON.parse(execFileSync(process.execPath, [...flags, script], { encoding: 'utf8' })) as number[],
    );
    const figures = [0, 1, 2, 3].map((at) => `${middle(runs.map((run) => run[at] as number)).toFixed(1)} ms`);
    console.log(`  ${name.padEnd(20)}${figures.map((figure) => figure.padStart(11)).join('')}`);
  }
}
