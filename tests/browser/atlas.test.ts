/**
 * The pages that look at all modes at once: the search, comparisons, routes and the map, with a script and
 * without, by pointer and by keyboard.
 */
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

const query = (page: Page): Record<string, string> => Object.fromEntries(new URL(page.url()).searchParams);
/** What axe finds in a part that was drawn anew; whole pages are looked at with the others. */
const violationsIn = async (page: Page, part: string): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page }).include(part).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
};

describe('the search', () => {
  const firstFound = (page: Page) => page.locator('.results a').first();

  test('fetches its index when it is first used, finds while one types, and keeps what was typed', async () => {
    const page = await stage.open('/search/');
    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(new URL(request.url()).pathname));
    expect(fetched).not.toContain('/data/search.json');
    await page.locator('#q').fill('phrigian dominent');
    await firstFound(page).waitFor();
    expect(fetched).toContain('/data/search.json');
    expect(await firstFound(page).getAttribute('href')).toBe('/modes/phrygian-dominant/');
    expect(query(page)).toEqual({ q: 'phrigian dominent' });
    await page.waitForFunction(() => document.querySelector('.status')?.textContent?.includes('1 mode'));
    expect(await violationsIn(page, 'search-island')).toEqual([]);
  });

  test.each([
    ['A B C D E F G%23', '/modes/harmonic-minor/a/'],
    ['1 b2 3 4 5 b6 b7', '/modes/phrygian-dominant/'],
    ['1312122', '/modes/phrygian-dominant/'],
    ['dorian %234 in F%23', '/modes/dorian-sharp4/f-sharp/'],
    ['DADGAD', '/instruments/guitar-6/?tuning=dadgad'],
  ])('opened with %s finds %s', async (text, path) => {
    const page = await stage.open(`/search/?q=${text}`);
    await firstFound(page).waitFor();
    expect(await firstFound(page).getAttribute('href')).toBe(path);
    const { status } = await ask(stage.origin, path);
    expect(status).toBe(200);
  });

  test('leaves what was found where it is when it is told how much that is', async () => {
    const page = await stage.open('/search/');
    await page.locator('#q').fill('phrygian dominant');
    const found = page.locator('.results a').first();
    const before = await found.boundingBox();
    await page.waitForFunction(() => document.querySelector('.status')?.textContent !== '');
    expect(await found.boundingBox()).toEqual(before);
  });

  test('says when nothing is found, and takes nothing for a script', async () => {
    const page = await stage.open(`/search/?q=${encodeURIComponent('<img src=x onerror=alert(1)>')}`);
    await page.waitForFunction(() => document.querySelector('.results')?.textContent !== '');
    await expect.poll(() => page.getByText('Nothing was found.').count()).toBe(1);
    expect(await page.locator('.results img').count()).toBe(0);
  });

  test('says so where its index cannot be fetched', async () => {
    const page = await stage.open('/search/');
    await page.route('**/data/search.json', (route) => route.abort());
    await page.locator('#q').fill('dorian');
    await page.waitForFunction(() => document.querySelector('.status')?.textContent?.includes('could not'));
    expect(await page.locator('.results').textContent()).toBe('');
  });

  test('carries the instrument that the address chooses on to what is found', async () => {
    const page = await stage.open('/search/?q=dorian&instrument=bass-4');
    await firstFound(page).waitFor();
    expect(await firstFound(page).getAttribute('href')).toBe('/modes/dorian/?instrument=bass-4');
  });

  test('can be worked with the keyboard alone', async () => {
    const page = await stage.open('/search/');
    await page.locator('#q').focus();
    await page.keyboard.type('acoustic');
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      () => document.querySelector('.results a')?.getAttribute('href') === '/modes/lydian-dominant/',
    );
    await page.locator('[role=status]', { hasText: /\d/ }).first().waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('href'))).toBe(
      '/modes/lydian-dominant/',
    );
  });

  test('without a script shows no field that does nothing, and leads to the lists', async () => {
    const page = await stage.open('/search/', { javaScriptEnabled: false });
    expect(await page.locator('#q').isVisible()).toBe(false);
    for (const path of ['/modes/', '/families/', '/instruments/', '/map/'])
      expect(await page.locator(`main a[href="${path}"]`).count()).toBeGreaterThan(0);
  });
});

describe('a comparison', () => {
  const heads = (page: Page): Promise<string[]> => page.locator('.compared thead a').allTextContents();
  const isDrawn = (page: Page, names: readonly string[]): Promise<unknown> =>
    page.waitForFunction(
      (wanted) =>
        [...document.querySelectorAll('.compared thead a')].map(({ textContent }) => textContent).join() ===
        wanted,
      names.join(),
    );

  test('shows what its address names, and says the same as the API', async () => {
    const page = await stage.open('/compare/?a=ionian&b=mixolydian-b6&c=altered&root=D&instrument=bass-4');
    await isDrawn(page, ['D Ionian', 'D Mixolydian ♭6', 'D altered']);
    const notes = await page
      .locator('.compared tbody tr')
      .evaluateAll((rows) =>
        rows.map((row) => [...row.querySelectorAll('td b')].map(({ textContent }) => textContent).join(' ')),
      );
    const scales = await Promise.all(
      ['ionian', 'mixolydian-b6', 'altered'].map((mode) =>
        ask<{ notes: string[] }>(stage.origin, `/v1/modes/${mode}/D`),
      ),
    );
    const ofApi = [0, 1, 2, 3, 4, 5, 6].map((degree) =>
      scales.map(({ body }) => body.notes[degree]?.replaceAll('b', '♭').replaceAll('#', '♯')).join(' '),
    );
    expect(notes).toEqual(ofApi);
    expect(await page.locator('.picture svg.neck[role=img] text.open').allTextContents()).toEqual([
      'G2',
      'D2',
      'A1',
      'E1',
    ]);
    expect(await violationsIn(page, 'compare-island')).toEqual([]);
  });

  test('is chosen by typing names, with slips, and stands in the address', async () => {
    const page = await stage.open('/compare/');
    expect(await heads(page)).toEqual(['A Dorian', 'A Phrygian']);
    await page.locator('#choose-a').fill('mixolidian');
    await page.locator('#choose-b').fill('lydian b7');
    await page.locator('#choose-c').fill('1312122');
    await page.keyboard.press('Tab');
    await page.locator('#choose-root').selectOption('e-flat');
    await isDrawn(page, ['E♭ Mixolydian', 'E♭ Lydian dominant', 'E♭ Phrygian dominant']);
    expect(query(page)).toEqual({
      a: 'mixolydian',
      b: 'lydian-dominant',
      c: 'phrygian-dominant',
      root: 'e-flat',
    });
    expect(await page.locator('#choose-a').inputValue()).toBe('Mixolydian');
  });

  test('takes a mode by its place in a family, and says the place of each', async () => {
    const page = await stage.open('/compare/', { viewport: { width: 390, height: 844 }, hasTouch: true });
    // What a field holds when it is entered gives way to what is typed, also the first time.
    await page.locator('#choose-a').tap();
    await page.keyboard.type('harmonic minor 4th mode');
    expect(await page.locator('h1').textContent()).toBe('Compare scales');
    await page.locator('#choose-b').tap();
    await page.keyboard.type('fifth mode of harmonic minor on D');
    await page.keyboard.press('Enter');
    await isDrawn(page, ['D Dorian ♯4', 'D Phrygian dominant']);
    expect(query(page)).toEqual({ a: 'dorian-sharp4', b: 'phrygian-dominant', root: 'd' });
    const places = await page.locator('.compare-top .facts').first().locator('dd').allTextContents();
    expect(places).toEqual(['The fourth mode of A harmonic minor', 'The fifth mode of G harmonic minor']);
  });

  test('says beside the field what cannot be read, and keeps the others', async () => {
    const page = await stage.open('/compare/?a=ionian&b=lydian&c=qqqqqq');
    await isDrawn(page, ['A Ionian', 'A Lydian']);
    expect(await page.locator('#choose-c').inputValue()).toBe('qqqqqq');
    expect(await page.locator('#problem-c').textContent()).toContain('qqqqqq');
    expect(await page.locator('#problem-c').textContent()).toContain('4th mode of harmonic minor');
  });

  test('tells shared notes from others by shape and label: as many marks are quiet as are shared', async () => {
    const page = await stage.open('/compare/dorian-and-phrygian/', { javaScriptEnabled: false });
    const neck = page.locator('svg.neck[role=img]').first();
    const quiet = await neck.locator('.mark.quiet text').allTextContents();
    expect(new Set(quiet)).toEqual(new Set(['♭3', '4', '5', '♭7']));
    const others = await neck.locator('.mark:has(.pip) text').allTextContents();
    expect(new Set(others)).toEqual(new Set(['2', '♭2', '6', '♭6']));
    expect(await neck.locator('.mark.root .pip').count()).toBe(0);
  });

  test('of its own page leads on to the page that compares any', async () => {
    const page = await stage.open('/compare/dorian-and-phrygian/?root=e');
    await isDrawn(page, ['E Dorian', 'E Phrygian']);
    await page.locator('#choose-c').fill('aeolian');
    await page.locator('#choose-c').blur();
    await page.waitForURL(/\/compare\/\?/);
    expect(query(page)).toEqual({ a: 'dorian', b: 'phrygian', c: 'aeolian', root: 'e' });
    await isDrawn(page, ['E Dorian', 'E Phrygian', 'E Aeolian']);
  });
});

describe('a route', () => {
  const stops = (page: Page): Promise<string[]> => page.locator('.route h3').allTextContents();

  test('is what the address names, and each of its scales is a link', async () => {
    const page = await stage.open('/routes/?from=dorian&to=phrygian-dominant&root=d');
    await page.waitForFunction(() => document.querySelector('.route h3')?.textContent === 'D Dorian');
    const names = await stops(page);
    expect([names[0], names.at(-1), names.length]).toEqual(['D Dorian', 'D Phrygian dominant', 4]);
    const { status } = await ask(
      stage.origin,
      (await page.locator('.route h3 a').nth(1).getAttribute('href')) ?? '',
    );
    expect(status).toBe(200);
    expect(await violationsIn(page, 'route-island')).toEqual([]);
  });

  test('is as long as the API has it', async () => {
    const page = await stage.open('/routes/?from=ionian&to=enigmatic&root=c');
    await page.waitForFunction(() => document.querySelector('.route h3')?.textContent === 'C Ionian');
    const { body } = await ask<{ steps: unknown[] }>(
      stage.origin,
      '/v1/routes?from=ionian&to=enigmatic&root=C',
    );
    expect(await stops(page)).toHaveLength(body.steps.length);
  });

  test('is chosen by typing, and stands in the address', async () => {
    const page = await stage.open('/routes/');
    await page.locator('#choose-from').fill('ionian');
    await page.locator('#choose-to').fill('harmonic mino');
    await page.locator('#choose-to').blur();
    await page.waitForFunction(() => location.search.includes('to=harmonic-minor'));
    expect(query(page)).toEqual({ from: 'ionian', to: 'harmonic-minor', root: 'a' });
    expect((await stops(page)).at(-1)).toBe('A harmonic minor');
  });

  test('is read without a script, step by step', async () => {
    const page = await stage.open('/routes/lydian-to-locrian/', { javaScriptEnabled: false });
    expect(await stops(page)).toHaveLength(7);
    expect(await page.locator('.route').textContent()).toContain('4 falls a semitone: D♯ → D');
    expect(await page.locator('#choose-from').isVisible()).toBe(false);
  });
});

describe('the map', () => {
  const focused = (page: Page): Promise<string | undefined> =>
    page.evaluate(() => document.activeElement?.id);

  test('opened at a mode says what it is, joins it to its neighbours and shows its family', async () => {
    const page = await stage.open('/map/#2131212');
    await page.locator('.map-panel h2').waitFor();
    expect(await page.locator('.map-panel h2').textContent()).toBe('Dorian ♯4');
    const { body } = await ask<{ neighbours: unknown[] }>(stage.origin, '/v1/modes/dorian-sharp4/A/related');
    expect(await page.locator('.map .near').count()).toBe(body.neighbours.length);
    expect(await page.locator('.map .join').count()).toBe(body.neighbours.length);
    expect(await page.locator('.map .chosen a[id]').count()).toBe(7);
    expect(await violationsIn(page, 'map-island')).toEqual([]);
  });

  test.each([
    [1280, 800],
    [700, 900],
    [390, 844],
  ])(
    'names what is pointed at above the picture, which stays where it is: %i × %i',
    async (width, height) => {
      const page = await stage.open('/map/', { viewport: { width, height } });
      const top = () => page.locator('.map-box').evaluate((box) => box.getBoundingClientRect().top + scrollY);
      await page.locator('.map-pointed:not([hidden])').waitFor();
      const [before, said] = [await top(), await page.locator('.map-pointed').boundingBox()];
      expect((said?.y ?? height) + (said?.height ?? 0)).toBeLessThan(height);
      const ids = await page.locator('.map a[id]').evaluateAll((all) => all.map(({ id }) => id));
      await page.locator('.map-box').focus();
      await page.waitForFunction(() => document.querySelector('.map.live') !== null);
      // Every mode in turn: whatever its name, the picture must not move.
      const moved = await page.evaluate(
        ([all, before]) => {
          const box = document.querySelector('.map-box');
          return all.filter((id) => {
            document.getElementById(id)?.dispatchEvent(new PointerEvent('pointerover', { bubbles: true }));
            return (box?.getBoundingClientRect().top ?? 0) + scrollY !== before;
          });
        },
        [ids, before] as const,
      );
      expect([ids.length, moved, await top()]).toEqual([462, [], before]);
      await page.locator('.map a[id="2131212"]').dispatchEvent('pointerover');
      expect(await page.locator('.map-pointed').textContent()).toBe(
        'Dorian ♯4: 4th mode of harmonic minor, brightness −1.',
      );
    },
  );

  test('names the mark on which the mouse rested before there was a script', async () => {
    const page = await stage.open('/map/');
    await page.locator('.map a[id="2131212"]').hover();
    await page.locator('.map-pointed', { hasText: 'Dorian ♯4: 4th mode' }).waitFor();
  });

  test('is one stop for the Tab key, walked with arrows and opened with Enter', async () => {
    const page = await stage.open('/map/');
    expect(await page.locator('.map [tabindex="0"]').count()).toBe(1);
    await page.locator('.map-box').focus();
    await page.waitForFunction(() => document.querySelector('.map.live') !== null);
    await page.keyboard.press('Tab');
    expect(await focused(page)).toBe('2122212');
    await page.keyboard.press('ArrowUp');
    expect(await focused(page)).toBe('2212212');
    await page.keyboard.press('ArrowRight');
    expect(await page.locator('.map-panel').textContent()).toContain('melodic minor');
    expect(new URL(page.url()).hash).toBe(`#${await focused(page)}`);
    await page.keyboard.press('End');
    expect(await page.locator('.map-panel p').first().textContent()).toContain('brightness');
    await page.keyboard.press('Home');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('.map'))).toBeNull();
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/modes\//);
  });

  test('is sized by its buttons, by keys and by the wheel, and the size stands in the address', async () => {
    const page = await stage.open('/map/');
    const width = (): Promise<number> =>
      page.locator('.map').evaluate((map) => Math.round(map.getBoundingClientRect().width));
    const plain = await width();
    await page.getByLabel('twice').check();
    await page.waitForFunction(() => location.search === '?zoom=2');
    expect(await width()).toBe(plain * 2);
    await page.locator('.map-box').focus();
    await page.keyboard.press('+');
    expect([await width(), query(page)]).toEqual([plain * 4, { zoom: '4' }]);
    await page.keyboard.press('-');
    await page.keyboard.press('-');
    expect([await width(), query(page)]).toEqual([plain, {}]);
    await page.locator('.map-box').hover();
    await page.keyboard.down('Control');
    await page.mouse.wheel(0, -120);
    await page.keyboard.up('Control');
    await page.waitForFunction(() => location.search === '?zoom=2');
    const again = await stage.open('/map/?zoom=2');
    await again.waitForFunction(() => document.querySelector('.map.live') !== null);
    expect(await again.getByLabel('twice').isChecked()).toBe(true);
  });

  test('is sized without a script as well, and every mark is a link', async () => {
    const page = await stage.open('/map/', { javaScriptEnabled: false });
    const before = await page.locator('.map').boundingBox();
    await page.getByLabel('twice').check();
    expect((await page.locator('.map').boundingBox())?.width).toBeCloseTo((before?.width ?? 0) * 2, 0);
    expect(await page.locator('.map .family a[id][href^="/modes/"]').count()).toBe(462);
    expect(await page.locator('table.map-table a[href^="/modes/"]').count()).toBe(462);
    expect(await page.locator('table.map-table th a[href^="/families/"]').count()).toBe(66);
  });

  test('follows no touch before its code is there: it shows what was touched', async () => {
    const page = await stage.open('/', { hasTouch: true, viewport: { width: 390, height: 844 } });
    await page.route('**/_astro/map-island*', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 700));
      await route.continue();
    });
    await page.goto(`${stage.origin}/map/`);
    await page.locator('.map a[id="2131212"]').tap();
    await page.locator('.map-panel', { hasText: 'Dorian ♯4' }).waitFor();
    expect(new URL(page.url()).pathname).toBe('/map/');
  });

  test('shows at the first touch of a finger, and opens at the second', async () => {
    const page = await stage.open('/map/', { hasTouch: true, viewport: { width: 390, height: 844 } });
    const mark = page.locator('[id="2212221"]');
    await page.locator('.map-box').focus();
    await page.waitForFunction(() => document.querySelector('.map.live') !== null);
    await mark.tap();
    await page.locator('.map-panel h2').waitFor();
    expect(new URL(page.url()).pathname).toBe('/map/');
    await mark.tap();
    await page.waitForURL(/\/modes\/ionian\//);
  });

  test('moves nothing by itself where less motion is wanted', async () => {
    const page = await stage.open('/map/', { reducedMotion: 'reduce' });
    const durations = await page
      .locator('.map .family a')
      .evaluateAll((marks) => marks.map((mark) => getComputedStyle(mark).transitionDuration));
    expect(new Set(durations)).toEqual(new Set(['0s']));
  });
});

test('a mode leads to its comparison, to its route and to its place on the map', async () => {
  const page = await stage.open('/modes/phrygian-dominant/', { javaScriptEnabled: false });
  expect(
    await page.locator('.ways a').evaluateAll((links) => links.map((link) => link.getAttribute('href'))),
  ).toEqual([
    '/compare/phrygian-and-phrygian-dominant/',
    '/routes/?from=ionian&to=phrygian-dominant',
    '/map/#1312122',
  ]);
});
