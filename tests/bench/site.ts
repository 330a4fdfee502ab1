/**
 * Figures of the site: how fast it builds, how much it weighs, and how it is judged on a phone. Prints them
 * beside what they should be; ends with 1 where one of them is missed.
 *
 * `--built` takes the site as it is built already and leaves the time of building out.
 */
import { execFile } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { gzipSync } from 'node:zlib';
import { SITE_FOLDER } from '../browser/browser.ts';
import { judgePages } from './lighthouse.ts';

const BUILD = fileURLToPath(new URL('../../apps/site/build.ts', import.meta.url));
const MOST_BYTES = 350_000_000;
const FEWEST_PAGES_PER_SECOND = 500;
const MOST_SCRIPT_BYTES = 20_000;

/** One page of each kind, and the most that it may weigh as it is sent. */
const KINDS: readonly (readonly [kind: string, path: string, mostBytes: number])[] = [
  ['home', '/', 20_000],
  ['round', '/rounds/harmonic-minor/a/', 20_000],
  ['mode', '/modes/phrygian-dominant/', 20_000],
  ['mode on a root', '/modes/dorian-sharp4/a/', 16_000],
  ['family', '/families/harmonic-minor/', 20_000],
  ['instrument', '/instruments/guitar-6/', 20_000],
  ['map', '/map/', 60_000],
  ['comparison', '/compare/dorian-and-phrygian/', 20_000],
  ['route', '/routes/lydian-to-locrian/', 20_000],
  ['search', '/search/', 20_000],
  ['home, German', '/de/', 20_000],
  ['family, Spanish', '/es/families/harmonic-minor/', 20_000],
];

/** The pages that are judged. */
const JUDGED = [
  '/',
  '/rounds/harmonic-minor/a/',
  '/modes/phrygian-dominant/',
  '/modes/dorian-sharp4/a/',
  '/families/harmonic-minor/',
  '/map/',
];

let missed = 0;

if (!process.argv.includes('--built')) await measureBuild();
measureWeight();
await measureJudgement();
console.log(missed === 0 ? '\nall as it should be' : `\n${missed} missed`);
process.exitCode = missed === 0 ? 0 : 1;

async function measureBuild(): Promise<void> {
  console.log('building the site in every language ...');
  const begun = performance.now();
  const { stdout } = await promisify(execFile)(process.execPath, [BUILD], { maxBuffer: 1 << 30 });
  const seconds = (performance.now() - begun) / 1000;
  const builds = [...stdout.matchAll(/(\d+) page\(s\) built in ([\d.]+)(m?s)/g)].map(([, pages]) =>
    Number(pages),
  );
  const pages = builds.reduce((sum, one) => sum + one, 0);
  report('pages', `${pages} (${builds.join(' + ')})`);
  report(
    'pages a second, from start to end',
    `${Math.round(pages / seconds)} (${seconds.toFixed(1)} s)`,
    pages / seconds >= FEWEST_PAGES_PER_SECOND,
  );
}

function measureWeight(): void {
  const files = readdirSync(SITE_FOLDER, { recursive: true, withFileTypes: true }).filter((file) =>
    file.isFile(),
  );
  const bytes = files.reduce((sum, { parentPath, name }) => sum + statSync(join(parentPath, name)).size, 0);
  report(
    'bytes of the whole site',
    `${(bytes / 1e6).toFixed(1)} MB in ${files.length} files`,
    bytes < MOST_BYTES,
  );
  for (const [kind, path, most] of KINDS) {
    const html = readFileSync(join(SITE_FOLDER, path, 'index.html'));
    const sent = gzipSync(html, { level: 9 }).length;
    report(`HTML of ${kind}`, `${sent} bytes compressed, ${html.length} plain`, sent < most);
  }
  for (const path of ['/', '/modes/dorian-sharp4/a/', '/map/']) {
    const scripts = firstScripts(path);
    const sent = scripts.reduce(
      (sum, file) => sum + gzipSync(readFileSync(join(SITE_FOLDER, file)), { level: 9 }).length,
      0,
    );
    report(
      `script before anything is pressed, ${path}`,
      `${sent} bytes compressed, ${scripts.length} files`,
      sent < MOST_SCRIPT_BYTES,
    );
  }
}

/** The scripts that a page asks for by itself, with what they import. */
function firstScripts(path: string): readonly string[] {
  const html = readFileSync(join(SITE_FOLDER, path, 'index.html'), 'utf8');
  const found = new Set([...html.matchAll(/<script[^>]* src="([^"]+)"/g)].map(([, file = '']) => file));
  for (const file of found) {
    const text = readFileSync(join(SITE_FOLDER, file), 'utf8');
    for (const [, other = ''] of text.matchAll(/(?:^|[;}\n])import(?:[^"'();]*from)?["']([^"']+)["']/g))
      found.add(new URL(other, `http://site${file}`).pathname);
  }
  return [...found];
}

async function measureJudgement(): Promise<void> {
  console.log('\njudged by Lighthouse as on a phone: performance, accessibility, best practices, search');
  for (const { path, scores, layoutShift, faults } of await judgePages(JUDGED)) {
    const isWhole = scores.every((score) => score === 100) && layoutShift === 0;
    report(path, `${scores.join(' / ')}, layout shift ${layoutShift}`, isWhole);
    for (const fault of faults) console.log(`      ${fault}`);
  }
}

function report(name: string, value: string, isFine = true): void {
  if (!isFine) missed += 1;
  console.log(`  ${isFine ? ' ' : '!'} ${name}: ${value}`);
}
