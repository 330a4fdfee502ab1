/**
 * Pages of the built site, judged by Lighthouse with its own settings for a phone, on a server of our own.
 */
import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import chromium from '@sparticuz/chromium';
import { serve } from '../api/server.ts';
import { SITE_FOLDER } from '../browser/browser.ts';

const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;
const FLAGS = '--headless=new --no-sandbox --disable-gpu';
const lighthouse = join(
  dirname(createRequire(import.meta.url).resolve('lighthouse/package.json')),
  'cli',
  'index.js',
);

/** How a page was judged. */
export interface Judgement {
  readonly path: string;
  /** 0 to 100, by category. */
  readonly scores: readonly number[];
  readonly layoutShift: number;
  /** What kept it from 100, one line each. */
  readonly faults: readonly string[];
}

/** What we read of Lighthouse's report. */
interface Report {
  readonly categories: Readonly<
    Record<
      string,
      {
        readonly score: number | null;
        readonly auditRefs: readonly { readonly id: string; readonly weight: number }[];
      }
    >
  >;
  readonly audits: Readonly<
    Record<
      string,
      {
        readonly title: string;
        readonly score: number | null;
        readonly displayValue?: string;
        readonly numericValue?: number;
      }
    >
  >;
}

/** Judges pages one after another; throws where Lighthouse cannot. */
export async function judgePages(paths: readonly string[]): Promise<readonly Judgement[]> {
  const [served, browser, folder] = await Promise.all([
    serve({ siteFolder: SITE_FOLDER }),
    chromium.executablePath(),
    mkdtemp(join(tmpdir(), 'stillroot-lighthouse-')),
  ]);
  try {
    const judged: Judgement[] = [];
    for (const path of paths) {
      const file = join(folder, 'report.json');
      await run(served.origin + path, file, browser);
      judged.push(judgementOf(path, JSON.parse(await readFile(file, 'utf8')) as Report));
    }
    return judged;
  } finally {
    await served.close();
    await rm(folder, { recursive: true, force: true });
  }
}

function judgementOf(path: string, { categories, audits }: Report): Judgement {
  const scores = CATEGORIES.map((category) => Math.round((categories[category]?.score ?? 0) * 100));
  const weighed = CATEGORIES.flatMap((category) => categories[category]?.auditRefs ?? []);
  const faults = weighed.flatMap(({ id, weight }) => {
    const audit = audits[id];
    const isFault = weight > 0 && audit?.score !== null && (audit?.score ?? 1) < 0.995;
    return isFault && audit ? [`${id}: ${audit.title} ${audit.displayValue ?? ''}`] : [];
  });
  return { path, scores, layoutShift: audits['cumulative-layout-shift']?.numericValue ?? 0, faults };
}

function run(url: string, file: string, browser: string): Promise<void> {
  const args = [lighthouse, url, '--quiet', '--output=json', `--output-path=${file}`];
  const child = spawn(
    process.execPath,
    [
      ...args,
      `--chrome-flags=${FLAGS}`,
      `--only-categories=${CATEGORIES.join()}`,
      '--no-enable-error-reporting',
    ],
    { stdio: ['ignore', 'ignore', 'inherit'], env: { ...process.env, CHROME_PATH: browser } },
  );
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('exit', (code) =>
      code === 0 ? resolve() : reject(new Error(`lighthouse ended with ${code} at ${url}`)),
    );
  });
}
