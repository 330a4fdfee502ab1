/**
 * Printing: a round, a comparison and a route each fit one sheet of A4 and of Letter, with nothing cut and
 * the chooser left out.
 */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openStage, type Stage } from './browser.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage.close());

test.each([
  ['A4', '/rounds/harmonic-minor/a/'],
  ['Letter', '/rounds/harmonic-minor/a/'],
  ['A4', '/rounds/melodic-minor/e-flat/'],
  ['A4', '/compare/dorian-and-phrygian/'],
  ['Letter', '/compare/dorian-and-phrygian/'],
  ['A4', '/routes/lydian-to-locrian/'],
  ['Letter', '/routes/lydian-to-locrian/'],
])('on %s %s is one page', async (format, path) => {
  const page = await stage.open(path);
  const pdf = await page.pdf({ format });
  const pages = pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? [];
  expect(pages).toHaveLength(1);
});

test('the chooser and the navigation are not printed', async () => {
  const page = await stage.open('/rounds/harmonic-minor/a/');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('details.chooser').isVisible()).toBe(false);
  expect(await page.locator('header nav:visible').count()).toBe(0);
  expect(await page.locator('svg.neck[role=img]').first().isVisible()).toBe(true);
});

test('the map is printed whole, without what only a screen needs', async () => {
  const page = await stage.open('/map/?zoom=4');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.sizes').isVisible()).toBe(false);
  const [map, box] = await Promise.all(['.map', '.map-box'].map((one) => page.locator(one).boundingBox()));
  expect(map?.width).toBeLessThanOrEqual((box?.width ?? 0) + 1);
});
