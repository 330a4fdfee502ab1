/**
 * A real browser and the built site, served by the same process as the API.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import chromium from '@sparticuz/chromium';
import { invariant } from '@stillroot/core';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Page,
  chromium as playwright,
} from 'playwright-core';
import { type Served, serve } from '../api/server.ts';

/** The built site. */
export const SITE_FOLDER = fileURLToPath(new URL('../../apps/site/dist', import.meta.url));

/** Flags that would hide faults a reader's browser shows, or keep contexts from being apart. */
const UNWANTED_FLAGS = ['--single-process', '--disable-web-security', '--headless', '--no-zygote'];

/** The browser and the server, and how to open a page. */
export interface Stage extends Served {
  readonly browser: Browser;
  readonly open: (path: string, options?: BrowserContextOptions) => Promise<Page>;
}

/** One of each kind of page. */
export const PAGE_KINDS: readonly (readonly [string, string])[] = [
  ['home', '/'],
  ['families', '/families/'],
  ['family', '/families/harmonic-minor/'],
  ['modes', '/modes/'],
  ['mode', '/modes/phrygian-dominant/'],
  [
    'mode without a trade name',
    '/modes/lydian-quadruplesharp2-triplesharp3-triplesharp4-doublesharp5-sharp6/',
  ],
  ['mode on a root', '/modes/dorian-sharp4/a/'],
  ['mode on a root with double flats', '/modes/locrian-b4-bb7/a-flat/'],
  ['rounds', '/rounds/'],
  ['round', '/rounds/harmonic-minor/a/'],
  ['instruments', '/instruments/'],
  ['instrument', '/instruments/bass-4/'],
  ['instrument with partial frets', '/instruments/dulcimer-mountain/'],
  ['map', '/map/'],
  ['comparison of any scales', '/compare/'],
  ['comparison', '/compare/dorian-and-phrygian/'],
  ['route between any scales', '/routes/'],
  ['route', '/routes/lydian-to-locrian/'],
  ['search', '/search/'],
  ['problem', '/problems/bad-input/'],
  ['lesson', '/lesson/'],
];

/** What other sites show in a frame, which a script draws. */
export const FRAMES: typeof PAGE_KINDS = [
  ['round in a frame', '/embed/round/?family=harmonic-minor&root=a'],
  ['scale in a frame', '/embed/scale/?mode=dorian&root=a&instrument=bass-4'],
];

/** Opens the stage; the site must have been built. */
export async function openStage(): Promise<Stage> {
  invariant(existsSync(SITE_FOLDER), 'the site is built (pnpm build) before the browser looks at it');
  const served = await serve({ siteFolder: SITE_FOLDER });
  // The browser was seen to crash as it started; nothing was looked at by then.
  const browser = await launch().catch(launch);
  const contexts: BrowserContext[] = [];
  const open = async (path: string, options: BrowserContextOptions = {}): Promise<Page> => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
    contexts.push(context);
    const page = await context.newPage();
    await page.goto(served.origin + path, { waitUntil: 'load' });
    return page;
  };
  const close = async (): Promise<void> => {
    await Promise.all(contexts.map((context) => context.close()));
    await browser.close();
    await served.close();
  };
  return { ...served, browser, open, close };
}

async function launch(): Promise<Browser> {
  return playwright.launch({
    executablePath: await chromium.executablePath(),
    args: chromium.args.filter((flag) => !UNWANTED_FLAGS.some((unwanted) => flag.startsWith(unwanted))),
    headless: true,
  });
}
