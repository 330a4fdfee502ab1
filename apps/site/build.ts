/**
 * Builds the whole site into `dist`: the English edition, and the other languages in folders of their own
 * within it. Several builders work side by side, one for each core.
 */
import { fork } from 'node:child_process';
import { rmSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { filesIn, removeFile } from './src/build/files.ts';
import { handOut } from './src/build/work.ts';

/** Each builder bundles the site for itself, so that more of them would gain little. */
const MOST_BUILDERS = 4;
/** Room for young objects, in MB: a page leaves many behind, and few that outlive it. */
const YOUNG = ['--min-semi-space-size=32', '--max-semi-space-size=32'];

const begun = performance.now();
const root = import.meta.dirname;
const site = join(root, 'dist');
const workshop = join(root, 'node_modules', '.build');
const builder = join(root, 'src', 'build', 'builder.ts');
/** Builders start with code that was compiled at an earlier build, where there was one. */
const env = { ...process.env, NODE_COMPILE_CACHE: join(root, 'node_modules', '.compiled') };

rmSync(workshop, { recursive: true, force: true });
const count = Math.min(availableParallelism(), MOST_BUILDERS);
const builders = Array.from({ length: count }, (_, at) =>
  fork(builder, [site, join(workshop, `${at + 1}`)], { cwd: root, execArgv: YOUNG, env }),
);
const before = filesIn(site);
const written = await handOut(builders);
for (const file of before) if (!written.has(file)) removeFile(site, file);
rmSync(workshop, { recursive: true, force: true });
console.log(`The site is whole after ${((performance.now() - begun) / 1000).toFixed(1)} s.`);
