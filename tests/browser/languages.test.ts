/**
 * The other editions in a browser: in their language, accessible, and drawn anew in it.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openStage, type Stage } from './browser.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage.close());

/** What is said of a round across the neck, and of a capo at fret 40. */
const REFUSED = {
  de: [
    'eine Runde bleibt in einer Lage',
    '„40“: erwartet wird ein Bund dieses Griffbretts von 0 (keiner) bis',
  ],
  es: ['una ronda se queda en una zona', '«40»: se espera un traste de este mástil de 0 (ninguno) a'],
} as const;

describe.each([
  ['de', 'Runden', 'Die Runde „harmonisches Moll“ ab A', /steigt um einen Halbton/, 'Saite 1'],
  ['es', 'Rondas', 'La ronda «menor armónica» desde A', /sube un semitono/, 'Cuerda 1'],
] as const)('%s', (code, rounds, title, move, string) => {
  test('what cannot be played and what cannot be chosen is said in its language', async () => {
    const page = await stage.open(`/${code}/?style=across-the-neck&capo=40`);
    const [reason, problem] = REFUSED[code];
    await expect.poll(() => page.locator('.picture .reason').first().textContent()).toContain(reason);
    expect(await page.locator('.picture [lang="en"]').count()).toBe(0);
    await page.locator('details.chooser > summary').first().click();
    await expect.poll(() => page.locator('#problem-capo').textContent()).toContain(problem);
  });

  test('the front page is in its language, with a round whose words are too', async () => {
    const page = await stage.open(`/${code}/`);
    expect(await page.locator('html').getAttribute('lang')).toBe(code);
    expect(await page.locator('header nav a').first().textContent()).toContain(rounds);
    expect(await page.locator('h2', { hasText: title }).count()).toBe(1);
    expect(await page.locator('.moved').first().textContent()).toMatch(/\d/);
    expect(await page.locator('main').textContent()).toMatch(move);
    expect(await page.locator('main').textContent()).not.toMatch(/\b(falls|rises) a semitone\b/);
  });

  test('a neck drawn for another instrument stays in its language', async () => {
    const page = await stage.open(`/${code}/instruments/guitar-6/?tuning=drop-d`);
    const label = page.locator('.neck-box svg desc').first();
    await expect.poll(() => label.textContent()).toContain(string);
  });

  test.each(['/', '/families/harmonic-minor/', '/modes/altered/', '/search/'])(
    'axe finds nothing at %s',
    async (path) => {
      const page = await stage.open(`/${code}${path}`);
      const { violations, passes } = await new AxeBuilder({ page }).analyze();
      expect(passes.length).toBeGreaterThan(10);
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      await page.context().close();
    },
  );

  test('a reader goes to another language and comes to the same page', async () => {
    const page = await stage.open(`/${code}/families/harmonic-minor/`);
    await page.locator('.languages a[hreflang=en]').click();
    await page.waitForURL('**/families/harmonic-minor/');
    expect(await page.locator('html').getAttribute('lang')).toBe('en');
    await page.locator(`.languages a[hreflang=${code}]`).click();
    await page.waitForURL(`**/${code}/families/harmonic-minor/`);
    expect(await page.locator('html').getAttribute('lang')).toBe(code);
  });
});

test.each([
  ['/de/compare/?a=phrygian&b=dorian', 'Dur', 'Ionisch und Dorisch'],
  ['/de/compare/?a=phrygian&b=dorian', 'natürliches Moll', 'Äolisch und Dorisch'],
  ['/es/compare/?a=phrygian&b=dorian', 'mayor', 'jónico y dórico'],
  ['/es/compare/?a=phrygian&b=dorian', 'menor natural', 'eólico y dórico'],
])('%s reads %s as the everyday scale', async (path, typed, title) => {
  const page = await stage.open(path);
  await page.locator('#choose-a, [name="a"]').first().fill(typed);
  await page.keyboard.press('Tab');
  await expect.poll(() => page.locator('h1').textContent()).toContain(title);
  await page.context().close();
});

test('a mode is found by its German name', async () => {
  const page = await stage.open('/de/search/?q=Dorisch');
  await expect.poll(() => page.locator('.results a').first().textContent()).toBe('Dorisch');
});

test('an address with a slip in it is answered with names near to it', async () => {
  const page = await stage.open('/modes/dorain-sharp4/');
  const found = page.locator('lost-island .results a').first();
  await expect.poll(() => found.getAttribute('href')).toBe('/modes/dorian-sharp4/');
});

test('a neck reads as a picture with a name and its notes, string by string', async () => {
  const page = await stage.open('/modes/dorian-sharp4/a/');
  const snapshot = await page.locator('.neck-box.whole').ariaSnapshot();
  expect(snapshot).toMatch(/img "A Dorian ♯4, Six-string guitar, Standard/);
  const id = await page.locator('.neck-box.whole svg').getAttribute('aria-labelledby');
  expect(id).toMatch(/whole-t/);
  expect(await page.locator('#whole-d').textContent()).toMatch(/^String 1: open E, 2 F♯, 3 G, .*String 6: /);
});
