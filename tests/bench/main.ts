/**
 * Figures, side by side in one run: core against the general-purpose theory library on the same scales,
 * the whole universe from nothing, and rounds on six instruments. Medians; machines differ, ratios less.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findInstrument } from '@stillroot/catalog';
import {
  buildNeck,
  EVERYDAY_ROOTS,
  fingeringsOf,
  invariant,
  type Mode,
  type Neck,
  type Root,
  roundOf,
  spell,
  spellAnew,
  UNIVERSE,
} from '@stillroot/core';
import { buildSync } from 'esbuild';
import { measure } from 'mitata';
import { Scale } from 'tonal';

/** Seven-note scales that the library and core both spell with seven letters. */
const NAMES: readonly (readonly [string, string])[] = [
  ['major', '2212221'],
  ['dorian', '2122212'],
  ['phrygian', '1222122'],
  ['lydian', '2221221'],
  ['mixolydian', '2212212'],
  ['aeolian', '2122122'],
  ['locrian', '1221222'],
  ['harmonic minor', '2122131'],
  ['melodic minor', '2122221'],
  ['phrygian dominant', '1312122'],
  ['lydian dominant', '2221212'],
  ['harmonic major', '2212131'],
];

/** As `pnpm serve` starts the server: room for what is made at the start, so that it is not moved about. */
const YOUNG_GENERATION = '--min-semi-space-size=16';

const SIX = ['guitar-6', 'guitar-7', 'bass-4', 'mandolin', 'banjo-5', 'ukulele-soprano'];

await compareSpelling();
measureUniverse();
await measureRounds();

async function compareSpelling(): Promise<void> {
  const pairs = NAMES.flatMap(([name, id]) =>
    EVERYDAY_ROOTS.map((root) => ({ name, mode: modeOf(id), root })),
  );
  for (const { name, mode, root } of pairs) {
    const theirs = Scale.get(`${root.name} ${name}`).notes.join(' ');
    invariant(theirs === spell(mode, root).notes.join(' '), `${root.name} ${name} is spelled alike by both`);
  }
  const library = await median(pairs, ({ name, root }) => Scale.get(`${root.name} ${name}`).notes);
  const anew = await median(pairs, ({ mode, root }) => spellAnew(mode, root).notes);
  const lookedUp = await median(pairs, ({ mode, root }) => spell(mode, root).notes);
  console.log(`\nA spelled scale, ${pairs.length} scales in turn, median a scale`);
  console.log(`  theory library (tonal 6.4.3)   ${ns(library)}`);
  console.log(`  core, spelled anew             ${ns(anew)}   ${times(library / anew)}`);
  console.log(`  core, as it is used            ${ns(lookedUp)}   ${times(library / lookedUp)}`);
}

/** Each run is a process of its own, from before core is loaded until everything has been asked for once. */
function measureUniverse(): void {
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

async function measureRounds(): Promise<void> {
  console.log('\nHarmonic minor on 12 roots, in position, median');
  const head = modeOf('2122131');
  const roots = twelveRoots();
  for (const id of SIX) {
    const neck = neckOf(id);
    const round = await median(roots, (root) => roundOf(neck, head, root));
    const fingering = await median(roots, (root) => fingeringsOf(neck, spell(head, root), { limit: 1 }));
    console.log(
      `  ${id.padEnd(18)} a round ${(round / 1e6).toFixed(3)} ms   a fingering ${(fingering / 1e3).toFixed(0)} µs`,
    );
  }
}

/** Nanoseconds for one item: the median of many passes over all of them, divided. */
async function median<T>(items: readonly T[], work: (item: T) => unknown): Promise<number> {
  let sink: unknown;
  const { p50 } = await measure(() => {
    for (const item of items) sink = work(item);
    return sink;
  });
  return p50 / items.length;
}

function twelveRoots(): readonly Root[] {
  return EVERYDAY_ROOTS.filter(({ alteration }) => alteration <= 0);
}

function modeOf(id: string): Mode {
  const mode = UNIVERSE.modesById.get(id);
  invariant(mode !== undefined, `${id} is a mode`);
  return mode;
}

function neckOf(id: string): Neck {
  const instrument = findInstrument(id);
  invariant(instrument !== undefined, `${id} is in the catalogue`);
  const neck = buildNeck(instrument, instrument.tunings[0]);
  invariant(neck.ok, `${id} has a neck`);
  return neck.value;
}

function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;
}

function ns(value: number): string {
  return `${value.toFixed(1)} ns`.padStart(11);
}

function times(ratio: number): string {
  return `${ratio.toFixed(0)} times the library's speed`;
}
