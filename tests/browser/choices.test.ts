/**
 * What a reader chooses beyond instrument and tuning: tunings typed in any notation, across the neck, the few
 * best fingerings, the names of notes, what a round is compared with; and how it is told when something
 * cannot be had.
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

const SCALE = '/modes/dorian/a/';
const ROUND = '/rounds/harmonic-minor/d/';
const query = (page: Page): Record<string, string> => Object.fromEntries(new URL(page.url()).searchParams);
const says = (page: Page, selector: string, text: string): Promise<unknown> =>
  page.waitForFunction(
    ([where = '', what = '']) => document.querySelector(where)?.textContent?.includes(what),
    [selector, text],
  );
const violationsIn = async (page: Page, part: string): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page }).include(part).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
};

async function openAll(page: Page): Promise<void> {
  await page.locator('details.chooser > summary').first().click();
  await page.locator('#choose-transpose').waitFor({ state: 'attached' });
  await page.locator('details.more > summary').first().click();
}

describe('a tuning typed by hand', () => {
  test('in letters alone is read with its octaves guessed, and known by its name', async () => {
    const page = await stage.open(SCALE);
    await openAll(page);
    await page.locator('#choose-tunings').selectOption('typed');
    await page.locator('#choose-tuning').fill('DADGAD');
    await page.locator('#choose-tuning').press('Enter');
    await says(page, '#reading-tuning', 'Read as D2 A2 D3 G3 A3 D4, octaves guessed. Known as DADGAD');
    expect(query(page)).toEqual({ tuning: 'DADGAD' });
    const { body } = await ask<{ neck: unknown }>(
      stage.origin,
      '/v1/modes/dorian/A/fretboard?tuning=D2-A2-D3-G3-A3-D4',
    );
    expect(body).toBeDefined();
    expect(await page.locator('svg.neck[role=img] text.open').allTextContents()).toEqual(
      expect.arrayContaining(['D4', 'A3', 'G3', 'D3', 'A2', 'D2']),
    );
  });

  test('that could mean two things offers the other', async () => {
    const page = await stage.open(`${SCALE}?instrument=bass-4&tuning=E,A,D,G`);
    await page.locator('#reading-tuning a[data-choose]').waitFor({ state: 'attached' });
    expect(await page.locator('#reading-tuning').textContent()).toContain('It could also mean');
  });
});

describe('a fingering', () => {
  test('across the neck is a chain of areas, with the shifts between them in words', async () => {
    const page = await stage.open(`${SCALE}?style=across-the-neck`);
    await page.locator('.chain > li').first().waitFor();
    const areas = await page.locator('.chain > li').count();
    const { body } = await ask<{
      fingerings: unknown[];
      shifts: { fromFret: number; toFret: number; distanceMm: number }[];
    }>(stage.origin, '/v1/modes/dorian/A/fingerings?style=across-the-neck');
    expect(areas).toBe(body.fingerings.length);
    expect(await page.locator('.chain .shift').allTextContents()).toEqual(
      body.shifts.map(
        ({ fromFret, toFret, distanceMm }) =>
          `Shift: finger 1 from fret ${fromFret} up to fret ${toFret}, ${distanceMm} mm.`,
      ),
    );
  });

  test('is one of the five best, each with its cost, and stays so in the address', async () => {
    const page = await stage.open('/modes/dorian-sharp4/a/');
    await page.locator('.steps a').click();
    await says(page, '.steps', 'Way 2 of 5');
    expect(query(page)).toEqual({ answer: '2' });
    await page.locator('.steps a').last().click();
    await says(page, '.steps', 'Way 3 of 5');
    const { body } = await ask<{ fingerings: { cost: { stretchMm: number } }[] }>(
      stage.origin,
      '/v1/modes/dorian-sharp4/A/fingerings',
    );
    expect(await page.locator('.fingering .where').textContent()).toContain(
      `fingers stretch ${body.fingerings[2]?.cost.stretchMm} mm`,
    );
  });

  test('that begins above the fret asked for says so, and one that begins there does not', async () => {
    const bass = '/modes/phrygian-dominant/e/?instrument=bass-4&tuning=drop-d';
    const page = await stage.open(`${bass}&fret=5`);
    await says(page, '.picture .reason', 'begins at fret 5 within a reach of 120 mm');
    expect(await page.locator('.fingering .where').textContent()).toContain('Frets 7 to 11');
    await page.goto(`${stage.origin}${bass}&fret=7`);
    await says(page, '.fingering .where', 'Frets 7 to 11');
    expect(await page.locator('.picture .reason').count()).toBe(0);
  });

  test('beyond reach says where and how far, and offers what can be played', async () => {
    const page = await stage.open('/modes/ionian/f/?instrument=bass-4&style=three-per-string&fret=1');
    await page.locator('ul.reason li').first().waitFor();
    expect(await page.locator('ul.reason li').first().textContent()).toMatch(
      /frets .* at once span 168\.2 mm/,
    );
    await page.locator('.reason a[data-choose]').click();
    await page.locator('.fingering').waitFor();
    expect(query(page)['instrument']).toBe('bass-4');
  });
});

describe('a number', () => {
  test('that is typed is drawn when the typing pauses, without leaving the field', async () => {
    const page = await stage.open(ROUND);
    await openAll(page);
    await page.locator('#choose-fret').focus();
    await page.keyboard.type('7');
    await page.waitForFunction(() => new URL(location.href).searchParams.get('fret') === '7');
    expect(await page.locator('.where').first().textContent()).toContain('Frets 7 to');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('choose-fret');
    await page.keyboard.type('7');
    await says(page, '.picture', 'this neck ends at fret 22, below fret 77');
  });
});

describe('the view', () => {
  test('German note names are in the sentences of a comparison, and in what is heard', async () => {
    const page = await stage.open('/compare/?a=dorian&b=aeolian&root=b&names=german');
    await says(page, 'h1', 'Dorian and Aeolian on H');
    await says(page, '.against', '(Gis → G)');
    expect((await page.locator('.facts').allTextContents()).join()).toMatch(/Gis/);
    expect((await page.locator('.facts').allTextContents()).join()).not.toMatch(/[A-G]♯/u);
    await page.goto(`${stage.origin}/rounds/major/b/?names=german&countIn=0&tempo=20`);
    await page.locator('.play-go').click();
    await says(page, '.play-now', ': H, 1');
  });

  test('German note names are everywhere on the page, and English ones come back', async () => {
    const page = await stage.open(`/modes/ionian/e/?names=german&labels=notes`);
    await says(page, '.formula .big', 'Gis');
    expect(await page.locator('.formula .big td').allTextContents()).toEqual([
      'E',
      'Fis',
      'Gis',
      'A',
      'H',
      'Cis',
      'Dis',
    ]);
    const marks = await page.locator('svg.neck .mark text').allTextContents();
    expect(marks).toContain('H');
    expect(marks).not.toContain('B');
    expect(await page.locator('.roots a').allTextContents()).toEqual(
      'C Cis Des D Dis Es E F Fis Ges G Gis As A Ais B H'.split(' '),
    );
    await openAll(page);
    await page.locator('#choose-names').selectOption('english');
    await says(page, '.formula .big', 'G♯');
    expect(query(page)).toEqual({ labels: 'notes' });
  });

  test('names go along to pages that draw nothing', async () => {
    const page = await stage.open('/modes/dorian/?names=romance&accidentals=ascii');
    await says(page, '.roots', 'fa#');
    expect(await page.locator('.roots a').first().textContent()).toBe('do');
    expect(await page.locator('.roots a').first().getAttribute('href')).toContain('names=romance');
  });

  test('left-handed, the nut is on the right of every neck', async () => {
    const page = await stage.open(`${ROUND}?hand=left`);
    await page.waitForFunction(() => {
      const [first, second] = document.querySelectorAll('svg.neck[role=img] text.number tspan');
      return Number(first?.getAttribute('x')) > Number(second?.getAttribute('x'));
    });
    expect(await page.locator('.neck-box.left').count()).toBe(7);
  });

  test('the arrows of a round are drawn against the base of each mode where that is asked for', async () => {
    const page = await stage.open(`${ROUND}?compare=base`);
    await page.locator('.against').first().waitFor();
    expect(await page.locator('.against').count()).toBe(7);
    // Dorian #4 is Dorian with one raised degree: one move, a semitone upwards.
    const turn = page.locator('.turn').filter({ hasText: 'D Dorian ♯4' });
    expect(await turn.locator('.moved li').allTextContents()).toEqual([
      'Against D Dorian',
      expect.stringContaining('4 rises a semitone: G → G♯'),
    ]);
  });
});

test('what cannot be read is told above the picture, and the rest is drawn', async () => {
  const page = await stage.open(`${SCALE}?tuning=dadgad&capo=2x&style=sideways`);
  await says(page, '.status', '2x');
  expect(await page.locator('.status').textContent()).toContain('sideways');
  expect(await page.locator('.where').first().textContent()).toContain('DADGAD');
});

test('the opened chooser has nothing that axe finds in either theme, and fits a phone', async () => {
  const page = await stage.open(ROUND, { viewport: { width: 390, height: 844 } });
  await openAll(page);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await violationsIn(page, '.chooser')).toEqual([]);
  }
  const [content, screen] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  expect(content).toBeLessThanOrEqual(screen as number);
});

describe('a list', () => {
  /** The lists whose chosen text is wider than they are, and who do not say it in words below. */
  const cutIn = (page: Page): Promise<string[]> =>
    page.locator('.chooser-form select').evaluateAll((lists) =>
      (lists as HTMLSelectElement[]).flatMap((list) => {
        const text = list.selectedOptions[0]?.text ?? '';
        // A list with nothing but this in it is as wide as it needs to be.
        const free = list.cloneNode() as HTMLSelectElement;
        free.append(new Option(text));
        free.style.cssText = 'width: auto; position: absolute';
        list.after(free);
        const isCut = free.offsetWidth > list.offsetWidth;
        free.remove();
        return isCut && list.parentElement?.querySelector('.chosen-words')?.textContent !== text
          ? [text]
          : [];
      }),
    );

  test.each([
    ['', 390],
    ['de/', 390],
    ['es/', 390],
    ['', 320],
    ['', 1280],
  ])('shows the whole of what was chosen from it: /%s at %i pixels', async (edition, width) => {
    const page = await stage.open(`/${edition}?instrument=bass-6-octave&style=across-the-neck`, {
      viewport: { width, height: 844 },
    });
    await page.locator('#choose-reach').waitFor({ state: 'attached' });
    await page.locator('details.more > summary').click();
    await expect.poll(() => cutIn(page), { timeout: 10_000 }).toEqual([]);
    await page.locator('#choose-instrument').selectOption('guitar-6');
    await page.locator('#choose-tunings option[value="nashville"]').waitFor({ state: 'attached' });
    await page.locator('#choose-tunings').selectOption('nashville');
    await page.locator('#choose-sharing').selectOption('own-areas');
    await page.locator('#choose-compare').selectOption('base');
    await page.locator('.chosen-words').first().waitFor();
    await expect.poll(() => cutIn(page), { timeout: 10_000 }).toEqual([]);
    expect(await page.locator('.chosen-words:not([aria-hidden="true"])').count()).toBe(0);
  });

  test('has the whole width on a phone, where its names are long', async () => {
    const page = await stage.open('/', { viewport: { width: 390, height: 844 } });
    const [form, instrument, tuning] = await Promise.all(
      ['.fields', '#choose-instrument', '#choose-tunings'].map((one) =>
        page.locator(one).first().boundingBox(),
      ),
    );
    expect([instrument?.width, tuning?.width]).toEqual([form?.width, form?.width]);
  });
});

describe('the list of instruments', () => {
  test('is grouped, finds by any words while one types, and says why some are not there', async () => {
    const page = await stage.open('/instruments/');
    expect(await page.locator('instrument-finder section').count()).toBe(12);
    await page.locator('#find').fill('bass five strings low b');
    await page.waitForFunction(() => document.querySelectorAll('[data-id]:not([hidden])').length === 1);
    expect(await page.locator('[data-id]:visible a').getAttribute('href')).toBe('/instruments/bass-5/');
    expect(query(page)).toEqual({ find: 'bass five strings low b' });
    await page.locator('#find').fill('');
    await page.waitForFunction(() => document.querySelectorAll('[data-id][hidden]').length === 0);
    expect(await page.locator('#oud').count()).toBe(1);
  });

  test('leads to rounds in the tuning that is chosen', async () => {
    const page = await stage.open('/instruments/bass-4/');
    const inDropD = page.locator('a[href*="tuning=drop-d"][href*="/rounds/"]');
    expect(
      new URL((await inDropD.getAttribute('href')) ?? '', stage.origin).searchParams.get('instrument'),
    ).toBe('bass-4');
    await page.goto(`${stage.origin}/instruments/bass-4/?tuning=drop-d`);
    await page.waitForFunction(() =>
      document
        .querySelector<HTMLAnchorElement>('#rounds ~ ul a')
        ?.getAttribute('href')
        ?.includes('tuning=drop-d'),
    );
  });
});

describe('a long neck on a phone', () => {
  const phone = { viewport: { width: 390, height: 800 } };
  /** How far inside its box the number of a fret is, from the left, as a share of the box. */
  const placeOf = (page: Page, fret: string): Promise<number> =>
    page.evaluate((number) => {
      const box = document.querySelector('.neck-box.whole');
      const text = [...(box?.querySelectorAll('.number > *') ?? [])].find(
        (one) => one.textContent === number,
      );
      if (!box || !text) throw new Error(`no fret ${number}`);
      const { left, width } = box.getBoundingClientRect();
      return (text.getBoundingClientRect().left - left) / width;
    }, fret);

  test.each([
    ['', 0.15],
    ['&hand=left', 0.85],
  ])('opens at the fret that was asked for%s', async (hand, at) => {
    const page = await stage.open(`${SCALE}?fret=9${hand}`, phone);
    await page.waitForFunction(() => document.querySelector('.neck-box.whole')?.scrollLeft !== 0);
    expect(await placeOf(page, '9')).toBeCloseTo(at, 1);
  });
});
