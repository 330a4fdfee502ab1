/**
 * Printing: a round, a mode, a comparison and a route each fit one sheet of A4 and of Letter, with nothing
 * cut and the chooser left out.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CATALOGUE } from '@stillroot/catalog';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openStage, type Stage } from './browser.ts';
import { type Sheet, sheetsOf } from './paper.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage.close());

const PAPERS = { A4: [210, 297], Letter: [215.9, 279.4] } as const;

/** Where the browser is told nothing else, a printer leaves no less than this free. */
const LEAST_MARGIN_MM = 5;

/** Each page, and some of what must stand on the sheet: what comes first, and what comes last. */
const PRINTED: readonly (readonly [format: keyof typeof PAPERS, path: string, words: readonly string[]])[] = [
  ...both('/rounds/harmonic-minor/a/', ['The round of harmonic minor from A', 'Locrian ♭4 𝄫7']),
  ...both('/rounds/harmonic-minor/d/?instrument=bass-5', [
    'B0 E1 A1 D2 G2',
    'D harmonic minor',
    'D Locrian ♭4 𝄫7',
  ]),
  ...both('/rounds/harmonic-minor/d/?instrument=mandolin', [
    'G3 D4 A4 E5',
    'D harmonic minor',
    'D Locrian ♭4 𝄫7',
  ]),
  ...both('/rounds/harmonic-minor/e/?instrument=bass-4&tuning=drop-d&fret=5', [
    'Not all seven begin at fret 5',
    'E Dorian ♯4',
    'The hand opens 119 mm',
  ]),
  ...both('/rounds/harmonic-minor/e/?instrument=guitar-7', [
    'B1 E2',
    'E Locrian ♭4 𝄫7',
    'the disc is the root',
  ]),
  ...both('/de/', ['Sechssaitige Gitarre', 'A Dorisch ♯4', 'steigt um einen Halbton']),
  ...both('/de/?instrument=bass-4', ['Viersaitiger', 'A Dorisch ♯4', 'die Scheibe ist der Grundton']),
  ...both('/de/?instrument=guitar-7', ['Siebensaitige', 'A Dorisch ♯4', 'die Scheibe ist der Grundton']),
  ['A4', '/rounds/melodic-minor/e-flat/', ['E♭ melodic minor', 'E♭ altered']],
  ...both('/modes/dorian-sharp4/a/', ['A Dorian ♯4', 'In position', 'Chords on the degrees', 'G maj7♯5']),
  ...both('/modes/phrygian-dominant/a/?instrument=guitar-7&tuning=drop-a&hand=left', [
    'Seven-string guitar',
    'Chords on the degrees',
  ]),
  ['A4', '/modes/dorian/d/?instrument=bass-4&style=across-the-neck', ['Across the neck', 'Shift']],
  ...both('/modes/phrygian-dominant/', ['Phrygian dominant', 'Neighbours', 'Other names']),
  ...both('/compare/dorian-and-phrygian/', ['Dorian', 'Phrygian']),
  ...both('/routes/lydian-to-locrian/', ['Lydian', 'Locrian']),
];

function both(path: string, words: readonly string[]): typeof PRINTED {
  return (['A4', 'Letter'] as const).map((format) => [format, path, words]);
}

test.each(PRINTED)('on %s %s is one page, whole', async (format, path, words) => {
  const page = await stage.open(path);
  const instrument = new URL(path, stage.origin).searchParams.get('instrument');
  if (instrument) {
    const entry = CATALOGUE.instruments.find(({ id }) => id === instrument);
    const strings = entry?.tunings[0].courses.length;
    await page.waitForFunction(
      (count) => document.querySelector('svg.neck[role=img]')?.querySelectorAll('text.open').length === count,
      strings,
    );
  }
  const pdf = await page.pdf({ format });
  const reader = await stage.open('/problems/bad-input/');
  const sheets = await sheetsOf(reader, pdf);
  expect(sheets).toHaveLength(1);
  const [{ widthMm, heightMm, marginsMm, text, picture }] = sheets as [Sheet];
  keepPicture(`${format}${path}`, picture);
  expect([widthMm, heightMm].map(Math.round)).toEqual(PAPERS[format].map(Math.round));
  for (const margin of Object.values(marginsMm)) expect(margin).toBeGreaterThan(LEAST_MARGIN_MM);
  // The reader gives a sign as a piece of its own.
  const run = text.replaceAll(/\s+/g, '');
  for (const word of words) expect(run).toContain(word.replaceAll(' ', ''));
});

/** Pictures of the sheets, for those who want to look at them. */
function keepPicture(name: string, picture: string): void {
  const folder = process.env['PICTURES_FOLDER'];
  if (folder) writeFileSync(join(folder, `${name.replaceAll(/[^\w-]+/g, '_')}.png`), picture, 'base64');
}

test('the chooser and the navigation are not printed', async () => {
  const page = await stage.open('/rounds/harmonic-minor/a/');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('details.chooser').isVisible()).toBe(false);
  expect(await page.locator('header nav:visible').count()).toBe(0);
  expect(await page.locator('svg.neck[role=img]').first().isVisible()).toBe(true);
});

test.each(['/rounds/harmonic-minor/e/', '/rounds/harmonic-minor/e/?style=three-per-string', '/de/'])(
  'what moved is printed with its mode, below its heading: %s',
  async (path) => {
    const page = await stage.open(path);
    await page.waitForLoadState('networkidle');
    await page.emulateMedia({ media: 'print' });
    const turns = await page.locator('.turn:has(.moved)').evaluateAll((all) =>
      all.map((turn) => {
        const [heading, moved, neck] = ['.turn-text', '.moved', '.neck-box'].map((part) =>
          turn.querySelector(part)?.getBoundingClientRect(),
        );
        const { top, bottom } = turn.getBoundingClientRect();
        const isWithin = (moved?.top ?? 0) >= top && (moved?.bottom ?? 0) <= bottom + 1;
        const isFirst =
          (heading?.bottom ?? 0) <= (moved?.top ?? 0) && (heading?.bottom ?? 0) <= (neck?.top ?? 0);
        return isWithin && isFirst && getComputedStyle(turn).breakInside;
      }),
    );
    expect(turns).toEqual(Array.from({ length: 6 }, () => 'avoid'));
  },
);

test('the map is printed whole, without what only a screen needs', async () => {
  const page = await stage.open('/map/?zoom=4');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.sizes').isVisible()).toBe(false);
  const [map, box] = await Promise.all(['.map', '.map-box'].map((one) => page.locator(one).boundingBox()));
  expect(map?.width).toBeLessThanOrEqual((box?.width ?? 0) + 1);
});
