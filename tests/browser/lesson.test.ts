/**
 * Lessons and pages for other sites: made by one reader, opened by another who has nothing but the link.
 */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask } from '../api/server.ts';
import { openStage, type Stage } from './browser.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage.close());

const ROUND = '/rounds/harmonic-minor/d/?instrument=bass-4&tuning=drop-d&fret=5&order=brightness';
const query = (page: Page): Record<string, string> => Object.fromEntries(new URL(page.url()).searchParams);
const violationsOf = async (page: Page): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
};

/** What a reader sees of a round: title, neck, area, and the modes in their order. */
async function seenOf(page: Page) {
  await page.waitForFunction(
    () => document.querySelector('.picture svg.neck[role=img]')?.querySelectorAll('text.open').length === 4,
  );
  return {
    title: await page.locator('h1').textContent(),
    where: await page.locator('.where').first().textContent(),
    modes: await page.locator('.turn h2').allTextContents(),
    frets: await page.locator('.picture text.number').first().locator('tspan').allTextContents(),
  };
}

/** Waits until the necks of a page have so many strings. */
async function drawn(page: Page, strings: number): Promise<void> {
  await page.waitForFunction(
    (count) => document.querySelector('svg.neck[role=img]')?.querySelectorAll('text.open').length === count,
    strings,
  );
  // An address is written once everything is drawn.
  await page.waitForFunction(() => document.documentElement.hasAttribute('data-revealed'));
  await page.waitForLoadState('networkidle');
}

/** Adds the page that is open to the lesson of its reader. */
async function addToLesson(page: Page): Promise<void> {
  await page.locator('a[data-lesson]').click();
  await page.waitForURL(/\/lesson\/#sum=/);
}

describe('a lesson', () => {
  test('made in one browser opens in a fresh one with the same title, root, tuning, area and order', async () => {
    const teacher = await stage.open(ROUND);
    const seen = await seenOf(teacher);
    expect(seen.where).toContain('Drop D');
    await addToLesson(teacher);
    await teacher.goto(`${stage.origin}/modes/dorian/a/`);
    await addToLesson(teacher);
    expect(await teacher.locator('.lesson-pages li').count()).toBe(2);
    await teacher.locator('#lesson-title').fill('Week 3: “bright to dark”');
    await teacher.locator('#lesson-note').fill('First slowly.\nThen faster & louder.');
    const link = await teacher.locator('#lesson-link').inputValue();

    const pupil = await stage.open('/');
    // A pupil who once chose a mandolin still gets what the teacher chose.
    await pupil.evaluate(() => localStorage.setItem('stillroot-choices', 'instrument=mandolin'));
    await pupil.goto(link);
    await pupil.locator('.lesson-pages li').nth(1).waitFor();
    expect(await pupil.locator('h1').textContent()).toBe('Week 3: “bright to dark”');
    expect(await pupil.locator('.lesson p').allTextContents()).toEqual([
      'First slowly.',
      'Then faster & louder.',
    ]);
    expect(await pupil.locator('.faults').textContent()).toBe('');
    const pages = await pupil
      .locator('.lesson-pages a')
      .evaluateAll((links) => links.map((one) => one.getAttribute('href') ?? ''));
    await pupil.goto(stage.origin + pages[0]);
    expect(await seenOf(pupil)).toEqual(seen);
    expect(query(pupil)).toEqual({ instrument: 'bass-4', tuning: 'drop-d', fret: '5', order: 'brightness' });
    await pupil.goto(stage.origin + pages[1]);
    await pupil.waitForFunction(
      () => document.querySelectorAll('svg.neck[role=img]')[0]?.querySelectorAll('text.open').length === 6,
    );
    expect(await pupil.locator('.where').first().textContent()).toContain('Six-string guitar');
  });

  test('can be put in another order and shortened with the keyboard alone', async () => {
    const page = await stage.open('/lesson/#title=T&page=/map/&page=/modes/&page=/families/');
    await page.locator('.lesson-pages li').nth(2).waitFor();
    await page.locator('.change-part > summary').press('Enter');
    await page.locator('.rows button[data-act=down]').first().press('Enter');
    await page.keyboard.press('Enter');
    expect(await page.locator('.lesson-pages a').allTextContents()).toEqual(['Modes', 'Families', 'Map']);
    await page.locator('.rows button[data-act=remove]').first().press('Enter');
    expect(await page.locator('.lesson-pages a').allTextContents()).toEqual(['Families', 'Map']);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-act'))).toBe('remove');
  });

  test('is gone through page by page, each as it was chosen, until its reader goes elsewhere', async () => {
    const page = await stage.open(
      '/lesson/#title=Week+3&page=/rounds/harmonic-minor/d/?instrument=bass-4%26names=german&page=/modes/dorian/a/?instrument=mandolin',
    );
    await page.locator('.lesson-pages a').first().click();
    await page.waitForURL(/\/rounds\//);
    const walk = page.locator('.walk');
    expect(await walk.locator('div').textContent()).toBe('Week 3 page 1 of 2');
    await page.waitForFunction(() => document.querySelectorAll('.picture text.open').length > 0);
    await walk.getByText('Next').click();
    await page.waitForURL((url) => `${url.pathname}${url.search}` === '/modes/dorian/a/?instrument=mandolin');
    expect(await walk.locator('div').textContent()).toBe('Week 3 page 2 of 2');
    expect(await walk.locator('li').allTextContents()).toEqual(['Previous']);
    expect(await violationsOf(page)).toEqual([]);
    // What plays has the foot of the screen for itself.
    await page.locator('.play-go').click();
    await page.locator('.play[data-active]').waitFor();
    expect(await walk.evaluate((one) => getComputedStyle(one).position)).toBe('static');
    await page.locator('.head a[href^="/map/"]').click();
    await page.waitForURL(/\/map\//);
    await page.waitForFunction(() => sessionStorage.getItem('stillroot-walk') === null);
    await page.goto(`${stage.origin}/modes/dorian/a/`);
    await page.waitForFunction(() => document.documentElement.hasAttribute('data-revealed'));
    expect(await walk.count()).toBe(0);
  });

  test('is for the left hand on every page behind one that is, for whoever has the link', async () => {
    const page = await stage.open(
      '/lesson/#page=/rounds/melodic-minor/c/?hand=left&page=/modes/dorian/a/?instrument=bass-4&page=/modes/ionian/c/?instrument=guitar-6',
    );
    await page.locator('.lesson-pages a').nth(2).waitFor();
    for (const chosen of await page.locator('.lesson-pages span').allTextContents())
      expect(chosen).toContain('left-handed');
    await page.locator('.lesson-pages a').first().click();
    for (const [at, strings] of [6, 4, 6].entries()) {
      await drawn(page, strings);
      expect(await page.locator('.neck-box:not(.left)').count()).toBe(0);
      if (at < 2) await page.locator('.walk').getByText('Next').click();
    }
  });

  test('is for the left hand where its reader says so, and for the right where its link does', async () => {
    const page = await stage.open(
      '/lesson/#page=/rounds/major/c/?instrument=bass-4&page=/modes/dorian/a/?instrument=guitar-6&page=/modes/ionian/c/?instrument=bass-4%26hand=right',
    );
    await page.locator('.lesson-pages a').first().click();
    await drawn(page, 4);
    await page.locator('.chooser > summary').click();
    await page.locator('#choose-hand').selectOption('left');
    await page.locator('.neck-box.left').first().waitFor();
    await page.locator('.walk').getByText('Next').click();
    await drawn(page, 6);
    expect(await page.locator('.neck-box:not(.left)').count()).toBe(0);
    await page.locator('.walk').getByText('Next').click();
    await drawn(page, 4);
    expect(await page.locator('.neck-box.left').count()).toBe(0);
  });

  test('opens a round of the front page in another language at its necks', async () => {
    const page = await stage.open('/lesson/#page=/de/?instrument=bass-4&page=/map/', {
      viewport: { width: 390, height: 844 },
    });
    await page.locator('.lesson-pages a').first().click();
    await drawn(page, 4);
    await expect
      .poll(() => page.locator('.picture').evaluate((one) => Math.abs(one.getBoundingClientRect().top)))
      .toBeLessThan(120);
    expect(await page.locator('.walk div').textContent()).toContain('Seite 1 von 2');
  });

  test('takes the round of the front page as it was chosen there', async () => {
    const page = await stage.open('/?root=e&instrument=bass-4');
    await page.waitForFunction(() => document.querySelector('.picture h2')?.textContent?.includes('from E'));
    await addToLesson(page);
    expect(await page.locator('.lesson-pages a').allTextContents()).toEqual([
      'The round of harmonic minor from E',
    ]);
    const href = await page.locator('.lesson-pages a').getAttribute('href');
    expect(href).toBe('/rounds/harmonic-minor/e/?instrument=bass-4');
  });

  test('without a page leads to where pages are found', async () => {
    const page = await stage.open('/lesson/');
    const links = page.locator('.lesson .note a');
    await links.first().waitFor();
    expect(await links.allTextContents()).toEqual(['Rounds', 'Modes', 'Search']);
    await links.first().click();
    await page.waitForURL(/\/rounds\/$/);
  });

  test('has a QR code that is drawn when it is asked for', async () => {
    const page = await stage.open('/lesson/#title=T&page=/map/');
    const scripts = () => page.evaluate(() => performance.getEntriesByType('resource').length);
    await page.locator('.lesson-pages li').first().waitFor();
    const before = await scripts();
    await page.locator('.code-part > summary').click();
    await page.locator('svg.qr').waitFor();
    expect(await scripts()).toBeGreaterThan(before);
    expect(await page.locator('svg.qr').getAttribute('role')).toBe('img');
  });

  test('with a spoilt link says so, shows what can be read, and runs nothing', async () => {
    const bad =
      '#sum=zzz&title=Week%203&note=%E0%A4%A&page=javascript:alert(1)&page=/rounds/nonsense/a/&page=/map/';
    const page = await stage.open(`/lesson/${bad}`);
    await page.locator('.lesson-pages li').first().waitFor();
    expect(await page.locator('h1').textContent()).toBe('Week 3');
    expect(await page.locator('.lesson-pages a').allTextContents()).toEqual(['Map']);
    const faults = await page.locator('.faults').textContent();
    for (const told of ['changed or cut', 'javascript:alert(1)', '/rounds/nonsense/a/'])
      expect(faults).toContain(told);
  });

  test('has nothing that axe finds in either theme', async () => {
    const page = await stage.open('/lesson/#title=T&note=N&page=/rounds/major/c/&page=/modes/dorian/a/', {
      viewport: { width: 390, height: 844 },
    });
    await page.locator('.lesson-pages li').nth(1).waitFor();
    for (const summary of await page.locator('main summary').all()) await summary.click();
    await page.locator('svg.qr').waitFor();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await violationsOf(page)).toEqual([]);
    }
  });
});

describe('a page for another site', () => {
  test('that is remembered stands in the address of the bare page too, and names what is compared', async () => {
    const page = await stage.open('/lesson/#add=%2Fcompare%2F%3Fa%3Ddorian%26b%3Daeolian%26root%3Dd');
    await page.locator('.lesson a', { hasText: 'Dorian and Aeolian on D, compared' }).waitFor();
    await page.goto(`${stage.origin}/lesson/`);
    await page.locator('.lesson a', { hasText: 'Dorian and Aeolian' }).waitFor();
    expect(new URL(page.url()).hash).toContain('dorian');
    expect(await page.locator('#lesson-link').inputValue()).toBe(page.url());
  });

  test('shows a round and a scale as chosen within a page of another origin', async () => {
    const frames = await Promise.all([
      frameOf('/rounds/melodic-minor/e/', '?instrument=mandolin&order=brightness'),
      frameOf('/modes/dorian/b-flat/', '?instrument=bass-5&names=german'),
    ]);
    const host = createServer((_request, response) => {
      response.setHeader('content-type', 'text/html; charset=utf-8');
      response.end(`<!doctype html><title>A school</title>${frames.join('')}`);
    });
    await new Promise<void>((resolve) => host.listen(0, '127.0.0.1', resolve));
    try {
      const { port } = host.address() as AddressInfo;
      const page = await stage.open('/robots.txt');
      await page.goto(`http://localhost:${port}/`);
      const round = page.frameLocator('iframe >> nth=0');
      await round.locator('.turn').first().waitFor();
      expect(await round.locator('h1').textContent()).toBe('The round of melodic minor from E');
      expect(await round.locator('.where').first().textContent()).toContain('Mandolin');
      expect(await round.locator('.turn').count()).toBe(7);
      expect(await round.locator('header, footer, form, nav').count()).toBe(0);
      const scale = page.frameLocator('iframe >> nth=1');
      await scale.locator('.fingering').waitFor();
      expect(await scale.locator('h1').textContent()).toBe('B Dorian');
      expect(await scale.locator('h1 a').getAttribute('target')).toBe('_blank');
    } finally {
      host.close();
    }
  });

  /** The frame that the site hands out for one of its pages, found as another site would find it: by the link in its head. */
  async function frameOf(path: string, chosen: string): Promise<string> {
    const { text } = await ask(stage.origin, path);
    const [, link = ''] =
      /<link rel="alternate" type="application\/json\+oembed" href="([^"]+)"/.exec(text) ?? [];
    const told = new URL(link.replaceAll('&amp;', '&'));
    const page = new URL(told.searchParams.get('url') ?? '');
    expect([told.pathname, page.pathname]).toEqual(['/oembed', path]);
    const url = stage.origin + page.pathname + chosen;
    const { body } = await ask<{ html: string }>(stage.origin, `/oembed?${new URLSearchParams({ url })}`);
    return body.html;
  }

  test.each([
    ['light', '/embed/round/?family=major&root=c'],
    ['dark', '/embed/scale/?mode=locrian-b4-bb7&root=a&style=across-the-neck'],
  ] as const)('has nothing that axe finds in %s: %s', async (colorScheme, path) => {
    const page = await stage.open(path, { colorScheme, viewport: { width: 390, height: 844 } });
    await page.locator('.where').first().waitFor();
    expect(await violationsOf(page)).toEqual([]);
  });

  test('that names nothing says so', async () => {
    const page = await stage.open('/embed/round/?family=nonsense&root=h');
    await page.waitForFunction(() =>
      document.querySelector('h1')?.textContent?.includes('nothing that is known'),
    );
    expect(await page.locator('.turn').count()).toBe(0);
  });
});
