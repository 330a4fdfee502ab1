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
      const first = page.locator('search-island .results li a').first();
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

/** Open strings of the six-string guitar and what is said of them; names of notes as note-names.ts cites them. */
const OWN_NAMES = {
  de: {
    search: 'H dorisch',
    found: ['B Dorisch', '/modes/dorian/b/'],
    inEnglish: 'B dorisch',
    strings: 'E A D G H E',
    reading: 'Gelesen als E2 A2 D3 G3 H3 E4 (englisch E2 A2 D3 G3 B3 E4)',
    named: ['Drop H', 'drop-b'],
  },
  es: {
    search: 'la menor armónica',
    found: ['A menor armónica', '/modes/harmonic-minor/a/'],
    inEnglish: 'A menor armónica',
    strings: 'mi la re sol si mi',
    reading: 'Leído como mi2 la2 re3 sol3 si3 mi4 (en inglés E2 A2 D3 G3 B3 E4)',
    named: ['drop re', 'drop-d'],
  },
} as const;

describe.each(['de', 'es'] as const)('names of notes as readers of %s type them', (code) => {
  const { search, found, inEnglish, strings, reading, named } = OWN_NAMES[code];

  test('name roots in the search, which says how it took them', async () => {
    const page = await stage.open(`/${code}/search/`);
    await page.locator('#q').fill(search);
    const first = page.locator('.results li a').first();
    await first.waitFor();
    expect(await first.textContent()).toBe(found[0]);
    expect(await first.getAttribute('href')).toContain(found[1]);
    expect(await page.locator('.results > .note b').textContent()).toBe(inEnglish);
    expect(new URL(page.url()).searchParams.get('q')).toBe(search);
    await page.context().close();
  });

  test('are open strings, which the address has in English names', async () => {
    const page = await stage.open(`/${code}/modes/dorian/`);
    await page.locator('details.chooser > summary').first().click();
    await page.locator('#choose-tunings').selectOption('typed');
    await page.locator('#choose-tuning').fill(strings);
    await page.locator('#choose-tuning').press('Enter');
    const said = page.locator('#reading-tuning', { hasText: reading });
    await said.waitFor({ state: 'attached' });
    const query = new URL(page.url()).searchParams;
    expect(query.get('tuning')).toBe('E A D G B E');
    // Choosing something else leaves what was typed as it was, and as it was taken.
    await page.locator('#choose-capo').fill('2');
    await page.locator('#choose-capo').press('Tab');
    await expect.poll(() => new URL(page.url()).searchParams.get('capo')).toBe('2');
    expect(new URL(page.url()).searchParams.get('tuning')).toBe('E A D G B E');
    expect(await page.locator('#choose-tuning').inputValue()).toBe(strings);
    await page.context().close();
  });

  test('are in the name of a tuning, which is then chosen in the list', async () => {
    const page = await stage.open(`/${code}/modes/dorian/`);
    await page.locator('details.chooser > summary').first().click();
    await page.locator('#choose-tunings').selectOption('typed');
    await page.locator('#choose-tuning').fill(named[0]);
    await page.locator('#choose-tuning').press('Enter');
    await expect.poll(() => page.locator('#choose-tunings').inputValue()).toBe(named[1]);
    expect(new URL(page.url()).searchParams.get('tuning')).toBe(named[1]);
    await page.context().close();
  });
});

test('a B on a German page is taken one way and offered the other, in the search and of a tuning', async () => {
  const page = await stage.open('/de/search/?q=B+dorisch');
  const results = page.locator('.results li a').first();
  await results.waitFor();
  await expect.poll(() => results.textContent()).toBe('B♭ Dorisch');
  await page.locator('.results a[data-try]').click();
  await expect.poll(() => results.textContent()).toBe('B Dorisch');
  await page.goto(`${stage.origin}/de/modes/dorian/`);
  await page.locator('details.chooser > summary').first().click();
  await page.locator('#choose-tunings').selectOption('typed');
  await page.locator('#choose-tuning').fill('E A D G B E');
  await page.locator('#choose-tuning').press('Enter');
  const other = page.locator('#reading-tuning a[data-choose]');
  await expect.poll(() => other.textContent()).toBe('E2 A2 D3 G3 B3 E4');
  await other.click();
  await expect.poll(() => new URL(page.url()).searchParams.get('tuning')).toBe('E2-A2-D3-G3-Bb3-E4');
  expect(await page.locator('#choose-tuning').inputValue()).toBe('E2-A2-D3-G3-B3-E4');
  await page.context().close();
});

test('a link to a search in chosen names of notes means the same to others', async () => {
  const page = await stage.open('/search/?q=H+dorian&names=german');
  await page.locator('.results li a').first().waitFor();
  await expect.poll(() => page.locator('.results li a').first().textContent()).toBe('H Dorian');
  expect(await page.locator('.results li a').first().getAttribute('href')).toBe(
    '/modes/dorian/b/?names=german',
  );
  await page.context().close();
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
