/**
 * What a reader chooses: the neck is drawn anew in the browser, and everything chosen is in the address.
 */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask } from '../api/server.ts';
import { openStage, type Stage } from './browser.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage.close());

const ROUND = '/rounds/harmonic-minor/d/';
const query = (page: Page): Record<string, string> => Object.fromEntries(new URL(page.url()).searchParams);

/** The names of the open strings beside the first neck, string 1 first. */
const openNames = (page: Page): Promise<string[]> =>
  page.locator('.picture svg.neck[role=img]').first().locator('text.open').allTextContents();

async function openChooser(page: Page): Promise<void> {
  const isOpen = await page.locator('details.chooser').first().getAttribute('open');
  if (isOpen === null) await page.locator('details.chooser > summary').first().click();
  await page.locator('#choose-instrument').hover();
}

describe('a bassist', () => {
  test('chooses a bass and drop D, sees four strings, and has an address to send', async () => {
    const page = await stage.open(ROUND);
    expect(await openNames(page)).toEqual(['E4', 'B3', 'G3', 'D3', 'A2', 'E2']);
    await openChooser(page);
    await page.locator('#choose-instrument').selectOption('bass-4');
    await page.waitForFunction(
      () =>
        document.querySelectorAll('.picture svg.neck[role=img]')[0]?.querySelectorAll('text.open').length ===
        4,
    );
    await page.locator('#choose-tunings').selectOption('drop-d');
    await page.waitForFunction(() => location.search.includes('drop-d'));
    expect(query(page)).toEqual({ instrument: 'bass-4', tuning: 'drop-d' });
    expect(await openNames(page)).toEqual(['G2', 'D2', 'A1', 'D1']);
    expect(await page.locator('.picture svg.neck[role=img]').count()).toBe(7);
  });

  test('opens that address elsewhere and sees the same, fret for fret as the API has it', async () => {
    const address = `${ROUND}?instrument=bass-4&tuning=drop-d`;
    const page = await stage.open(address);
    await page.waitForFunction(
      () => document.querySelector('.picture svg.neck[role=img]')?.querySelectorAll('text.open').length === 4,
    );
    const { body } = await ask<{ area: { from: number; to: number } }>(
      stage.origin,
      '/v1/rounds/harmonic-minor/D?instrument=bass-4&tuning=drop-d',
    );
    const frets = await page
      .locator('.picture svg.neck[role=img]')
      .first()
      .locator('text.number tspan')
      .allTextContents();
    expect([frets.at(0), frets.at(-1)]).toEqual([String(Math.max(1, body.area.from)), String(body.area.to)]);
  });

  test('goes on choosing where a choice led to another page', async () => {
    const page = await stage.open('/rounds/harmonic-minor/a/?instrument=bass-4');
    await page.locator('details.chooser > summary').click();
    await page.locator('#choose-root').selectOption('d');
    await page.waitForURL(/\/rounds\/harmonic-minor\/d\/\?instrument=bass-4$/);
    await page.waitForFunction(() => document.activeElement?.id === 'choose-root');
    expect(await page.locator('details.chooser').getAttribute('open')).toBe('');
    await page.reload();
    expect(await page.locator('details.chooser').getAttribute('open')).toBeNull();
  });

  test('stays a bassist when following a link', async () => {
    const page = await stage.open(`${ROUND}?instrument=bass-4&tuning=drop-d`);
    await page.waitForFunction(
      () => document.querySelector('.picture svg.neck[role=img]')?.querySelectorAll('text.open').length === 4,
    );
    await page.locator('main a[href*="/modes/"]').first().click();
    await page.waitForLoadState('load');
    expect(query(page)).toEqual({ instrument: 'bass-4', tuning: 'drop-d' });
    await page.waitForFunction(
      () => document.querySelector('svg.neck[role=img]')?.querySelectorAll('text.open').length === 4,
    );
  });
});

describe('a tuning typed by hand', () => {
  test('is drawn, and stands in the address', async () => {
    const page = await stage.open(`${ROUND}?tuning=B1-E2-A2-D3-G3-B3-E4`);
    await page.waitForFunction(
      () => document.querySelector('.picture svg.neck[role=img]')?.querySelectorAll('text.open').length === 7,
    );
    expect(await openNames(page)).toEqual(['E4', 'B3', 'G3', 'D3', 'A2', 'E2', 'B1']);
  });

  test('that cannot be read is said beside the field, and nothing is lost', async () => {
    const page = await stage.open(`${ROUND}?tuning=H9-E2`);
    await page.waitForFunction(() => (document.querySelector('#problem-tuning')?.textContent ?? '') !== '');
    expect(await page.locator('#problem-tuning').textContent()).toContain('a note and its octave');
    expect(await page.locator('.picture svg.neck[role=img]').count()).toBe(7);
  });
});

describe('a hurried reader', () => {
  test('chooses before the catalogue has come, and it counts without changing the rest', async () => {
    const page = await stage.open('/');
    let letThrough = (): void => {};
    const isLetThrough = new Promise<void>((resolve) => {
      letThrough = resolve;
    });
    await page.route('**/data/catalogue.json', async (route) => {
      await isLetThrough;
      await route.continue();
    });
    await page.goto(`${stage.origin}/?hand=left`);
    await openChooser(page);
    await page.locator('#choose-instrument').selectOption('bass-4');
    expect(await openNames(page)).toHaveLength(6);
    letThrough();
    await page.waitForFunction(() => location.search.includes('bass-4'));
    expect(query(page)).toEqual({ instrument: 'bass-4', hand: 'left' });
    expect(await openNames(page)).toHaveLength(4);
  });

  test('presses Enter in the search before its code has come, and keeps the place', async () => {
    const page = await stage.open('/');
    await page.route('**/_astro/search-island*', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 500));
      await route.continue();
    });
    await page.goto(`${stage.origin}/search/`);
    await page.locator('#q').focus();
    await page.keyboard.type('acoustic');
    await page.keyboard.press('Enter');
    await page.locator('.results a').first().waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('q');
  });
});

test('a press on the button of the chooser leads to the picture, and a link to it all can be copied', async () => {
  const page = await stage.open(`${ROUND}?hand=left`, { permissions: ['clipboard-read', 'clipboard-write'] });
  await openChooser(page);
  await page.locator('.chooser-form button').first().click();
  await page.waitForFunction(
    () => (document.querySelector('.picture')?.getBoundingClientRect().top ?? 999) < 40,
  );
  await page.locator('[data-copy]').click();
  await page.locator('.take [role=status]', { hasText: 'copied' }).waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(page.url());
});

test('a left-handed neck that is wider than the screen begins at its nut, on the right', async () => {
  const page = await stage.open('/modes/dorian/a/?hand=left', { viewport: { width: 390, height: 844 } });
  const box = page.locator('.neck-box.whole').first();
  await page.waitForFunction(() => (document.querySelector('.neck-box.whole')?.scrollLeft ?? 0) > 100);
  const [left, width, whole] = await box.evaluate((one) => [
    one.scrollLeft,
    one.clientWidth,
    one.scrollWidth,
  ]);
  expect(Math.abs((left ?? 0) + (width ?? 0) - (whole ?? 0))).toBeLessThan(2);
});

describe('other choices', () => {
  test('left-handed necks are mirrored and keep their numbers', async () => {
    const right = await stage.open('/modes/dorian/a/');
    const left = await stage.open('/modes/dorian/a/?hand=left');
    await left.waitForFunction(() => {
      const [first, second] = document.querySelectorAll('svg.neck[role=img] text.number tspan');
      return Number(first?.getAttribute('x')) > Number(second?.getAttribute('x'));
    });
    const labels = (page: Page) =>
      page.locator('svg.neck[role=img]').first().locator('.mark text').allTextContents();
    expect(await labels(left)).toEqual(await labels(right));
  });

  test('what cannot be played is said with the nearest that can', async () => {
    const page = await stage.open('/modes/ionian/f/?instrument=bass-4&style=three-per-string&fret=1');
    await page.waitForFunction(() => document.body.textContent.includes('168.2'));
    expect(await page.locator('main').textContent()).toContain('120 mm');
  });

  test('a corrupted memory of last time is ignored', async () => {
    const page = await stage.open('/');
    await page.evaluate(() => {
      for (const key of Object.keys(localStorage)) localStorage.setItem(key, '{"instrument":[}');
      localStorage.setItem('stillroot', '\u0000not json');
    });
    const failures: string[] = [];
    page.on('pageerror', (error) => failures.push(String(error)));
    await page.goto(stage.origin + ROUND);
    expect(await page.locator('.picture svg.neck[role=img]').count()).toBe(7);
    expect(failures).toEqual([]);
  });

  test('nonsense in the address is taken as not chosen', async () => {
    const page = await stage.open(
      `${ROUND}?instrument=%3Cscript%3E&fret=NaN&reach=-1&order=__proto__&capo=1e9`,
    );
    await page.waitForLoadState('networkidle');
    expect(await page.locator('.picture svg.neck[role=img]').count()).toBe(7);
  });
});

describe('without a script', () => {
  test('the form on the front page leads to the round that was asked for', async () => {
    const page = await stage.open('/', { javaScriptEnabled: false });
    await page.locator('#choose-family').selectOption('melodic-minor');
    await page.locator('#choose-root').selectOption('e');
    await page.locator('form.chooser-form button[type=submit]').click();
    expect(new URL(page.url()).pathname).toBe('/rounds/melodic-minor/e/');
    expect(await page.locator('svg.neck[role=img]').count()).toBe(7);
  });

  test('a round links to its picture on other instruments', async () => {
    const page = await stage.open(ROUND, { javaScriptEnabled: false });
    const form = page.locator('noscript form[action*="/v1/rounds/"]').first();
    await form.locator('[name=instrument]').fill('bass-4');
    const action = await form.getAttribute('action');
    const { status, type } = await ask(stage.origin, `${action}?instrument=bass-4`);
    expect([status, type]).toEqual([200, 'image/svg+xml; charset=utf-8']);
  });
});

test('a round can be reached and read with the keyboard alone', async () => {
  const page = await stage.open(ROUND);
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.className)).toBe('skip');
  const seen = new Set<string>();
  for (let press = 0; press < 40; press += 1) {
    await page.keyboard.press('Tab');
    seen.add(await page.evaluate(() => document.activeElement?.tagName ?? ''));
  }
  expect([...seen]).toEqual(expect.arrayContaining(['A', 'SUMMARY']));
});
