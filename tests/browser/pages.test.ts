/**
 * Every kind of page: there, quiet, within the screen, accessible in both themes, readable without a
 * script.
 */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { FRAMES, openStage, PAGE_KINDS, type Stage } from './browser.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage.close());

/** What a theme can break; all else is the same in both. */
const ABOUT_COLOUR = ['color-contrast', 'link-in-text-block'];

// One page a kind, looked at again and again: opening it is what takes the time.
describe.each([...PAGE_KINDS, ...FRAMES])('%s at %s', (_kind, path) => {
  const complaints: string[] = [];
  let page: Page;
  let status: number | undefined;
  beforeAll(async () => {
    page = await stage.open('/robots.txt');
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(String(error)));
    status = (await page.goto(stage.origin + path))?.status();
  });
  afterAll(() => page.context().close());

  test('loads with a title, one heading above all, a canonical address and no complaint', async () => {
    expect(status).toBe(200);
    expect(await page.title()).toContain('Stillroot');
    expect(await page.locator('h1').count()).toBe(1);
    expect(await page.locator('html').getAttribute('lang')).toBe('en');
    expect(await page.locator('link[rel=canonical]').getAttribute('href')).toMatch(/^http.*\/$/);
    expect(complaints).toEqual([]);
  });

  test('defines every shape that it draws', async () => {
    const drawn = await page.evaluate(() => [
      ...new Set([...document.querySelectorAll('use')].map((use) => use.getAttribute('href') ?? '')),
    ]);
    const defined = await page.evaluate(
      (names) => names.filter((name) => document.getElementById(name.slice(1)) !== null),
      drawn,
    );
    expect(defined).toEqual(drawn);
  });

  test('has nothing that axe finds in light', async () => {
    await page.emulateMedia({ colorScheme: 'light' });
    expect(await violationsOf(new AxeBuilder({ page }))).toEqual([]);
  });

  test('has no colours that axe finds too weak in dark', async () => {
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await violationsOf(new AxeBuilder({ page }).withRules(ABOUT_COLOUR))).toEqual([]);
  });

  test.each([
    ['a phone', { width: 390, height: 844 }],
    ['a desk', { width: 1280, height: 900 }],
  ])('does not spill over the edge of %s', async (_screen, size) => {
    await page.setViewportSize(size);
    const [content, screen] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect(content).toBeLessThanOrEqual(screen as number);
  });

  if (FRAMES.some(([, frame]) => frame === path)) {
    test('is drawn, and leads to its page beside the other site', async () => {
      await page.locator('svg.neck').first().waitFor();
      expect(await page.locator('h1 a').getAttribute('target')).toBe('_blank');
    });
    return;
  }

  test('says the same without a script', async () => {
    const without = await stage.open(path, { javaScriptEnabled: false });
    const text = (await without.locator('main').textContent()) ?? '';
    expect(text.length).toBeGreaterThan(80);
    expect(await without.locator('h1').textContent()).toBe(await page.locator('h1').textContent());
    await without.context().close();
  });
});

async function violationsOf(axe: AxeBuilder): Promise<readonly string[]> {
  const { violations, passes } = await axe.analyze();
  expect(passes.length).toBeGreaterThan(0);
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}

test('an address that is not there gets a page that helps, with status 404', async () => {
  const page = await stage.open('/modes/dorain/');
  const response = await page.reload();
  expect(response?.status()).toBe(404);
  expect(await page.locator('main a[href="/modes/"]').count()).toBeGreaterThan(0);
});

test('an address without its last slash is sent on to the page', async () => {
  const page = await stage.open('/rounds/harmonic-minor/a');
  expect(new URL(page.url()).pathname).toBe('/rounds/harmonic-minor/a/');
});
