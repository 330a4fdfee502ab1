/**
 * What cannot be had: said beside its field with what would be right, kept until its reader mends it, and losing
 * nothing else; the same of what stands in an address.
 */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openStage, type Stage } from './browser.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage.close());

const ROUND = '/rounds/harmonic-minor/e/';
const query = (page: Page): Record<string, string> => Object.fromEntries(new URL(page.url()).searchParams);
/** On a busy machine a page takes its time. */
const soon = <T>(look: () => T) => expect.poll(look, { timeout: 10_000 });
const says = (page: Page, selector: string, text: string): Promise<void> =>
  soon(() => page.locator(selector).first().textContent()).toContain(text);

/** What a field says to who sees it and to who hears it. */
async function fieldOf(page: Page, id: string) {
  const field = page.locator(`#${id}`);
  const problem = page.locator(`#${id.replace('choose-', 'problem-').replace('play-', 'play-problem-')}`);
  const described = (await field.getAttribute('aria-describedby')) ?? '';
  expect(described.split(' ')).toContain(await problem.getAttribute('id'));
  // A status is a polite live region (WAI-ARIA 1.2, section 5.3.3).
  expect(await problem.getAttribute('role')).toBe('status');
  return {
    value: await field.inputValue(),
    isInvalid: await field.getAttribute('aria-invalid'),
    problem: await problem.textContent(),
  };
}

async function openChooser(page: Page): Promise<void> {
  await page.locator('details.chooser > summary').first().click();
  await page.locator('#choose-reach').waitFor({ state: 'attached' });
  await page.locator('details.more > summary').first().click();
}

async function put(page: Page, id: string, text: string): Promise<void> {
  await page.locator(`#${id}`).fill(text);
  await page.locator(`#${id}`).press('Tab');
}

describe('a fret', () => {
  test('below which a round begins is named, and one at which it begins is not', async () => {
    const bass = `${ROUND}?instrument=bass-4&tuning=drop-d`;
    const page = await stage.open(`${bass}&fret=5`);
    await says(page, '.picture .reason', 'Not all seven begin at fret 5 within a reach of 120 mm');
    expect(await page.locator('.picture .where').textContent()).toContain('Frets 7 to 11');
    await page.goto(`${stage.origin}${bass}&fret=7`);
    await says(page, '.picture .where', 'Frets 7 to 11');
    expect(await page.locator('.picture .reason').count()).toBe(0);
  });

  test.each([
    [ROUND, 18],
    ['/modes/dorian/a/', 19],
  ])(
    'beyond the end of the neck is told with the last, and the nearest is offered: %s',
    async (path, fret) => {
      const page = await stage.open(`${path}?fret=30`);
      await says(page, '.picture .reason', 'this neck ends at fret 22');
      await says(page, '.status', 'From fret – “30”: expected a fret of this neck from 0');
      await page.locator('.reason a[data-choose]').click();
      await says(page, '.picture', `Frets ${fret} to`);
      expect(query(page)).toEqual({ fret: String(fret) });
      expect(await page.locator('.status').first().textContent()).toBe('');
    },
  );
});

describe('what is typed and cannot be had', () => {
  test('stays in its field of the chooser with what would be right, until it is mended', async () => {
    const page = await stage.open(`${ROUND}?tempo=70`);
    await openChooser(page);
    await put(page, 'choose-reach', '0');
    await put(page, 'choose-scaleLength', '9');
    await page.locator('#choose-capo').focus();
    await page.keyboard.press('Control+A');
    // Letters in a field for a number: this browser lets only some be typed, and hands out none of them.
    await page.keyboard.type('-e');
    await page.keyboard.press('Tab');
    await put(page, 'choose-fret', '7');
    await soon(() => query(page)['fret']).toBe('7');
    expect(await fieldOf(page, 'choose-reach')).toEqual({
      value: '0',
      isInvalid: 'true',
      problem: '“0”: expected a length in millimetres from 40 to 200.',
    });
    expect(await fieldOf(page, 'choose-scaleLength')).toMatchObject({ value: '9', isInvalid: 'true' });
    expect(await fieldOf(page, 'choose-capo')).toMatchObject({
      isInvalid: 'true',
      problem: 'Expected a fret of this neck from 0 (none) to 21.',
    });
    expect(
      await page.locator('#choose-capo').evaluate((field: HTMLInputElement) => field.validity.badInput),
    ).toBe(true);
    expect(query(page)).toEqual({ fret: '7', reach: '0', scaleLength: '9', tempo: '70' });
    await put(page, 'choose-capo', '2');
    await put(page, 'choose-reach', '110');
    await put(page, 'choose-scaleLength', '');
    await soon(() => query(page)).toEqual({ capo: '2', fret: '7', reach: '110', tempo: '70' });
    for (const id of ['choose-capo', 'choose-reach', 'choose-scaleLength'])
      expect(await fieldOf(page, id)).toMatchObject({ isInvalid: 'false', problem: '' });
  });

  test('stays in the panel of the play-along, and what else is chosen is taken', async () => {
    const page = await stage.open(ROUND);
    await page.locator('[data-part="panel"] > summary').click();
    await put(page, 'play-tempo', '9999');
    const wrong = {
      value: '9999',
      isInvalid: 'true',
      problem: '“9999”: expected a whole number from 20 to 400.',
    };
    expect(await fieldOf(page, 'play-tempo')).toEqual(wrong);
    await page.locator('#play-pattern').selectOption('thirds');
    await soon(() => query(page)).toEqual({ pattern: 'thirds' });
    expect(await fieldOf(page, 'play-tempo')).toEqual(wrong);
    const { violations } = await new AxeBuilder({ page }).include('.play').analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    // Folded away it is said at the button.
    await page.locator('[data-part="panel"] > summary').click();
    await says(
      page,
      '.play-status',
      'Tempo, beats a minute – “9999”: expected a whole number from 20 to 400.',
    );
    await page.locator('[data-part="panel"] > summary').click();
    await soon(() => page.locator('.play-status').textContent()).toBe('');
    await put(page, 'play-tempo', '90');
    await soon(() => query(page)).toEqual({ pattern: 'thirds', tempo: '90' });
    expect(await fieldOf(page, 'play-tempo')).toEqual({ value: '90', isInvalid: 'false', problem: '' });
  });

  test('gives way to a press on slower or faster', async () => {
    const page = await stage.open(ROUND);
    await page.locator('[data-part="panel"] > summary').click();
    await put(page, 'play-tempo', '9999');
    await page.locator('[data-step="5"]').click();
    expect(await fieldOf(page, 'play-tempo')).toEqual({ value: '85', isInvalid: 'false', problem: '' });
  });
});

describe('what stands in an address and cannot be had', () => {
  test.each([
    [ROUND, 'Capo at fret – “abc”: expected a fret of this neck from 0 (none) to 21.', 'from 20 to 400'],
    [
      '/de/',
      '„abc“: erwartet wird ein Bund dieses Griffbretts von 0 (keiner) bis 21.',
      'Zahl von 20 bis 400',
    ],
    ['/es/', '«abc»: se espera un traste de este mástil de 0 (ninguno) a 21.', 'entero de 20 a 400'],
  ])('is told before anything is opened: %s', async (path, capo, tempo) => {
    const page = await stage.open(`${path}?tempo=9999&capo=abc`);
    await says(page, '.play-status', tempo);
    const told = await page.locator('.status, .problem').allTextContents();
    expect(told.join(' ')).toContain(capo);
    expect(await page.locator('svg.neck[role=img]').count()).toBe(7);
  });

  test('wakes a page of its own accord only where it is a tempo', async () => {
    const page = await stage.open(`${ROUND}?tempo=9999`);
    await says(page, '.play-status', '“9999”: expected a whole number from 20 to 400.');
    expect(await page.locator('.play-bar button').count()).toBe(1);
  });

  test('is still told when something else is chosen, and no more when it is mended', async () => {
    const page = await stage.open(`${ROUND}?capo=abc`);
    await openChooser(page);
    await says(page, '#problem-capo', '“abc”');
    await page.locator('#choose-style').selectOption('three-per-string');
    await soon(() => query(page)).toEqual({ style: 'three-per-string' });
    expect(await fieldOf(page, 'choose-capo')).toMatchObject({ value: '', isInvalid: 'true' });
    await put(page, 'choose-capo', '1');
    await soon(() => query(page)).toEqual({ style: 'three-per-string', capo: '1' });
    expect(await fieldOf(page, 'choose-capo')).toEqual({ value: '1', isInvalid: 'false', problem: '' });
  });
});
