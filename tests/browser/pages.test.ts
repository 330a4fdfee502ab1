/**
 * Every kind of page: there, quiet, within the screen, accessible in both themes, readable without a
 * script.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openStage, PAGE_KINDS, type Stage } from './browser.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage.close());

const PHONE = { viewport: { width: 390, height: 844 } };

describe.each(PAGE_KINDS)('%s at %s', (_kind, path) => {
  test('loads with a title, one heading above all, a canonical address and no complaint', async () => {
    const page = await stage.open('/robots.txt');
    const complaints: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(String(error)));
    const response = await page.goto(stage.origin + path);
    expect(response?.status()).toBe(200);
    expect(await page.title()).toContain('Stillroot');
    expect(await page.locator('h1').count()).toBe(1);
    expect(await page.locator('html').getAttribute('lang')).toBe('en');
    expect(await page.locator('link[rel=canonical]').getAttribute('href')).toMatch(/^http.*\/$/);
    expect(complaints).toEqual([]);
  });

  test.each(['light', 'dark'] as const)('has nothing that axe finds in %s', async (colorScheme) => {
    const page = await stage.open(path, { colorScheme });
    const { violations, passes } = await new AxeBuilder({ page }).analyze();
    expect(passes.length).toBeGreaterThan(10);
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  });

  test.each([
    ['a phone', PHONE],
    ['a desk', {}],
  ])('does not spill over the edge of %s', async (_screen, options) => {
    const page = await stage.open(path, options);
    const [content, screen] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect(content).toBeLessThanOrEqual(screen as number);
  });

  test('says the same without a script', async () => {
    const withScript = await stage.open(path);
    const without = await stage.open(path, { javaScriptEnabled: false });
    const text = (await without.locator('main').textContent()) ?? '';
    expect(text.length).toBeGreaterThan(80);
    expect(await without.locator('h1').textContent()).toBe(await withScript.locator('h1').textContent());
  });
});

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
