/**
 * Builds the whole site: the English edition, then the other languages into folders of their own within it.
 * What is the same in every language (the catalogue's data, pictures) is kept once.
 */
import { spawn } from 'node:child_process';
import { rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { LANGUAGES } from './src/words/languages.ts';

const astro = join(dirname(createRequire(import.meta.url).resolve('astro/package.json')), 'bin', 'astro.mjs');
/** Files that the editions in other languages would only repeat. */
const SHARED = ['robots.txt', 'sitemap-index.xml', 'data/catalogue.json', 'data/written.json', 'pictures'];

for (const { code, base } of LANGUAGES) {
  await run({ SITE_LANGUAGE: code });
  if (base === '/') continue;
  const folder = join(import.meta.dirname, 'dist', code);
  await Promise.all(SHARED.map((one) => rm(join(folder, one), { recursive: true, force: true })));
}

function run(environment: Readonly<Record<string, string>>): Promise<void> {
  const child = spawn(process.execPath, [astro, 'build'], {
    cwd: import.meta.dirname,
    stdio: 'inherit',
    env: { ...process.env, ...environment },
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('exit', (status) =>
      status === 0 ? resolve() : reject(new Error(`astro build ended with ${status}`)),
    );
  });
}
