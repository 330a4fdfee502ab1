/**
 * Everything that must hold before a change goes in: form, direction of imports, types, the built site,
 * and every test. Each step says what it does; the last line counts what passed and what failed.
 */
import { spawn } from 'node:child_process';
import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** A command of the project's own tools. */
interface Step {
  readonly says: string;
  readonly command: readonly [string, ...string[]];
}

const STEPS: readonly Step[] = [
  { says: 'format and lint', command: ['biome', 'check', '--error-on-warnings', '.'] },
  { says: 'direction of imports', command: ['node', 'tests/imports.ts'] },
  { says: 'types', command: ['turbo', 'run', 'typecheck', '--output-logs=errors-only'] },
  { says: 'the site, built', command: ['turbo', 'run', 'build', '--output-logs=errors-only'] },
];

/** What the test runner's JSON report says that we read. */
interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numFailedTestSuites: number;
  readonly success: boolean;
}

let passed = 0;
let failed = 0;
let skipped = 0;

for (const { says, command } of STEPS) {
  const begun = Date.now();
  console.log(`\n${says} ...`);
  const isFine = await run(command);
  console.log(`${isFine ? 'passed' : 'FAILED'}: ${says}, ${((Date.now() - begun) / 1000).toFixed(1)} s`);
  if (isFine) passed += 1;
  else failed += 1;
}

console.log('\ntests ...');
const reportFile = join(await mkdtemp(join(tmpdir(), 'stillroot-')), 'report.json');
const isGreen = await run([
  'vitest',
  'run',
  '--config',
  'tests/vitest.config.ts',
  '--reporter=default',
  '--reporter=json',
  `--outputFile=${reportFile}`,
]);
const report = JSON.parse(await readFile(reportFile, 'utf8').catch(() => '{}')) as Partial<Report>;
passed += report.numPassedTests ?? 0;
failed += report.numFailedTests ?? 0;
skipped += report.numPendingTests ?? 0;
// A file that cannot be loaded has no tests to count, and still must not pass.
if (!isGreen && (report.numFailedTests ?? 0) === 0) failed += Math.max(1, report.numFailedTestSuites ?? 1);
if ((report.numPassedTests ?? 0) === 0) failed += 1;

console.log(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed > 0 ? 1 : 0;

/** Runs a tool from the project's own folder of tools; resolves to whether it succeeded. */
function run([name, ...args]: readonly [string, ...string[]]): Promise<boolean> {
  const path = [join(ROOT, 'node_modules', '.bin'), process.env['PATH'] ?? ''].join(delimiter);
  const child = spawn(name, args, {
    cwd: ROOT,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
    env: {
      ...process.env,
      PATH: path,
      TURBO_TELEMETRY_DISABLED: '1',
      ASTRO_TELEMETRY_DISABLED: '1',
    },
  });
  return new Promise((resolve) => {
    child.on('error', (error) => {
      console.error(String(error));
      resolve(false);
    });
    child.on('exit', (code) => resolve(code === 0));
  });
}
