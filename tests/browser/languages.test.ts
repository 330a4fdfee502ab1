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

/** A page that is left for another takes its time. */
const SLOWLY = { timeout: 10_000 } as const;

/** What is said of a round across the neck, and of a capo at fret 40. */
const REFUSED = {
  de: [
    'eine Runde bleibt in einer Lage',
    '„40“: erwartet wird ein Bund dieses Griffbretts von 0 (keiner) bis',
  ],
  es: ['una ronda se queda en una zona', '«40»: se espera un traste de este mástil de 0 (ninguno) a'],
} as const;

describe.each([
  ['de', 'Runden', 'Die Runde „Harmonisch Moll“ auf A', /steigt um einen Halbton/, 'Saite 1'],
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
  ['/de/compare/?a=phrygian&b=dorian', 'harmonisches Moll', 'Harmonisch Moll und Dorisch'],
  ['/es/compare/?a=phrygian&b=dorian', 'mayor', 'jónico y dórico'],
  ['/es/compare/?a=phrygian&b=dorian', 'menor natural', 'eólico y dórico'],
])('%s reads %s as the everyday scale', async (path, typed, title) => {
  const page = await stage.open(path);
  await page.locator('#choose-a, [name="a"]').first().fill(typed);
  await page.keyboard.press('Tab');
  await expect.poll(() => page.locator('h1').textContent()).toContain(title);
  await page.context().close();
});

describe.each([
  ['de', 'auf Englisch'],
  ['es', 'en inglés'],
] as const)('%s', (code, inEnglish) => {
  test('every example of the search finds what is said beside it', async () => {
    const page = await stage.open(`/${code}/search/`);
    const examples = await page.locator('search-island tbody tr').evaluateAll((rows) =>
      rows.map((row) => {
        const [typed, found] = row.querySelectorAll('a');
        return [typed?.textContent.trim() ?? '', found?.textContent.trim().replace(/ …$/, '') ?? ''] as const;
      }),
    );
    expect(examples.length).toBeGreaterThan(9);
    const found: (readonly [string, string | null])[] = [];
    for (const [typed] of examples) {
      await page.goto(`${page.url().replace(/[?#].*$/, '')}?q=${encodeURIComponent(typed)}`);
      const first = page.locator('search-island .results a').first();
      await first.waitFor();
      found.push([typed, await first.textContent()]);
    }
    expect(found).toEqual(examples);
    await page.context().close();
  });

  test.each(['/', '/modes/altered/', '/instruments/bass-4/', '/compare/', '/search/?q=C%20E%20G%20Bb'])(
    'links to pages that are in English only say so at %s',
    async (path) => {
      const page = await stage.open(`/${code}${path}`);
      const links = page.locator('main a[hreflang="en"]:visible');
      await links.first().waitFor();
      const marks = await links.evaluateAll((all) =>
        all.map((one) => getComputedStyle(one, '::after').content),
      );
      expect(new Set(marks)).toEqual(new Set([`"EN" / "(${inEnglish})"`]));
      const unmarked = await page
        .locator('main a')
        .evaluateAll((all) =>
          (all as HTMLAnchorElement[]).filter(
            ({ pathname, hreflang }) =>
              /^\/(?:modes|rounds)\/[^/]+\/[^/]+\/$/.test(pathname) && hreflang !== 'en',
          ),
        );
      expect(unmarked).toHaveLength(0);
      expect(await page.locator('main').ariaSnapshot()).toContain(`(${inEnglish})`);
      await page.context().close();
    },
  );

  test('a reader of an English round comes to the same round', async () => {
    const page = await stage.open('/rounds/melodic-minor/e/?instrument=bass-4');
    await expect.poll(() => page.locator('.where').first().textContent(), SLOWLY).toContain('E1 A1 D2 G2');
    await page.locator(`.languages a[hreflang=${code}]`).click();
    await page.waitForURL(`**/${code}/**`);
    const title = page.locator('.picture h2');
    await expect
      .poll(() => title.textContent(), SLOWLY)
      .toMatch(code === 'de' ? /Melodisch Moll“ auf E/ : /melódica» desde E/);
    await expect.poll(() => page.locator('.where').first().textContent(), SLOWLY).toContain('E1 A1 D2 G2');
    await page.locator('.languages a[hreflang=en]').click();
    await page.waitForURL((url) => url.pathname === '/');
    await expect.poll(() => title.textContent(), SLOWLY).toBe('The round of melodic minor from E');
    await page.context().close();
  });

  test('a reader of an English scale comes to its mode on the same root', async () => {
    const page = await stage.open('/modes/dorian-sharp4/e-flat/');
    await page.locator(`.languages a[hreflang=${code}]`).click();
    await page.waitForURL(`**/${code}/modes/dorian-sharp4/?root=*`);
    const heading = page.locator('#neck');
    await expect.poll(() => heading.textContent(), SLOWLY).toMatch(code === 'de' ? /auf E♭$/ : /sobre E♭$/);
    expect(await page.locator('.formula .big td').allTextContents()).toEqual('E♭ F G♭ A B♭ C D♭'.split(' '));
    await expect
      .poll(() => page.locator('svg.neck title').first().textContent(), SLOWLY)
      .toMatch(/^E♭ d[oó]r/i);
    expect(await page.locator('[data-on-page-root]').isVisible()).toBe(false);
    await page.context().close();
  });

  test.each([
    ['/compare/?a=lydian&b=altered&root=e', 'h1'],
    ['/routes/?from=lydian&to=altered&root=e', '.a-route h1, main h2'],
    ['/search/?q=E%20lydian', '.results a'],
  ])('and what was chosen at %s goes along', async (path, where) => {
    const page = await stage.open(path);
    await page.locator(where).first().waitFor();
    await page.locator(`.languages a[hreflang=${code}]`).click();
    await page.waitForURL(`**/${code}/**`);
    const asked = new URL(path, page.url()).searchParams;
    const here = new URL(page.url()).searchParams;
    for (const [key, value] of asked) expect(here.get(key)).toBe(value);
    await expect.poll(() => page.locator('main').textContent(), SLOWLY).toMatch(/E (?:Lydisch|lidio)/);
    await page.context().close();
  });
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
