/**
 * Rounds as staff and tablature, as they look: pictures that somebody has looked at are kept, and what is
 * engraved today must look like them. `RENEW_PICTURES=1` makes them anew; look at them before they are kept.
 */
import { readFileSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openStage, type Stage } from './browser.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage.close());

/** Edges are drawn a little differently from machine to machine: a hundredth of what is inked may differ. */
const MOST_CHANGED = 0.01;

/** Figures in a font that is the same on every machine, whatever it has of its own. */
const figuresFont = createRequire(import.meta.url).resolve(
  'pdfjs-dist/standard_fonts/LiberationSans-Regular.ttf',
);
const FIGURES = `
  @font-face { font-family: Figures; src: url(data:font/ttf;base64,${readFileSync(figuresFont, 'base64')}); }
  .score-part text { font-family: "Stillroot Music", Figures !important; }`;

/** Of the seven modes the second is shown: it begins where the first ended, and has signs of its own. */
const SHOWN = 1;

test.each(['guitar-6', 'guitar-7', 'bass-4', 'ukulele-soprano', 'banjo-5'])('a round on %s', async (id) => {
  const page = await stage.open(`/rounds/harmonic-minor/d/?instrument=${id}&value=eighth`);
  await page.locator('[data-part="score"] > summary').click();
  const part = page.locator('.score-part').nth(SHOWN).locator('svg').first();
  await part.waitFor();
  await page.addStyleTag({ content: FIGURES });
  await page.evaluate(() => document.fonts.ready);
  const picture = (await part.screenshot({ animations: 'disabled' })).toString('base64');
  const kept = pathOf(id);
  if (process.env['RENEW_PICTURES'] === '1') await writeFile(kept, picture, 'base64');
  const before = await readFile(kept, 'base64');
  const { inked, changed } = await page.evaluate(compare, [before, picture] as const);
  expect(inked).toBeGreaterThan(100);
  expect(changed / inked).toBeLessThan(MOST_CHANGED);
});

test('the comparison tells one instrument from another', async () => {
  const page = await stage.open('/robots.txt');
  const pictures = await Promise.all(['guitar-6', 'guitar-7'].map((id) => readFile(pathOf(id), 'base64')));
  const { inked, changed } = await page.evaluate(compare, pictures as [string, string]);
  expect(changed / inked).toBeGreaterThan(20 * MOST_CHANGED);
});

function pathOf(id: string): string {
  return fileURLToPath(new URL(`pictures/round-${id}.png`, import.meta.url));
}

/** Runs in the browser: both pictures in squares of four pixels; which hold ink, and in which of them it differs. */
async function compare(pictures: readonly [string, string]): Promise<{ inked: number; changed: number }> {
  const SQUARE = 4;
  const images = await Promise.all(
    pictures.map(async (data) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      return image;
    }),
  );
  const width = Math.max(...images.map(({ naturalWidth }) => naturalWidth));
  const height = Math.max(...images.map(({ naturalHeight }) => naturalHeight));
  const [columns, rows] = [Math.ceil(width / SQUARE), Math.ceil(height / SQUARE)];
  const [one = [], other = []] = images.map((image) => {
    const canvas = document.createElement('canvas');
    canvas.width = columns;
    canvas.height = rows;
    const context = canvas.getContext('2d');
    if (!context) throw new Error('no canvas');
    context.fillStyle = '#fff';
    context.fillRect(0, 0, columns, rows);
    context.imageSmoothingQuality = 'high';
    context.drawImage(image, 0, 0, image.naturalWidth / SQUARE, image.naturalHeight / SQUARE);
    const { data } = context.getImageData(0, 0, columns, rows);
    return Array.from({ length: columns * rows }, (_, at) => data[4 * at + 1] ?? 255);
  });
  let [inked, changed] = [0, 0];
  const paper = one[0] ?? 255;
  for (const [at, dark] of one.entries()) {
    const now = other[at] ?? 255;
    if (Math.abs(dark - paper) > 24 || Math.abs(now - paper) > 24) inked += 1;
    if (Math.abs(dark - now) > 64) changed += 1;
  }
  return { inked, changed };
}
