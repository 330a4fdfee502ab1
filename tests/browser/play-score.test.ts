/**
 * Staff and tablature on the page, read back off the picture: which line or space a head stands on, which
 * accidental stands by it, which line a fret stands on. What is right is worked out here from core's notes and
 * the instrument's clef alone; code points are SMuFL's (W3C).
 */
import { readFile } from 'node:fs/promises';
import { CATALOGUE } from '@stillroot/catalog';
import { buildNeck, fingeringsOf, invariant, parseRoot, spell, UNIVERSE } from '@stillroot/core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openStage, type Stage } from './browser.ts';

let stage: Stage;
let page: Page;
beforeAll(async () => {
  stage = await openStage();
  page = await stage.open('/robots.txt');
});
afterAll(() => stage.close());

/** Two of its notes are doubly flat from A flat. */
const MODE = { steps: '1212213', slug: 'locrian-b4-bb7', root: 'Ab', rootSlug: 'a-flat' };

const INSTRUMENTS = ['guitar-6', 'guitar-7', 'bass-4', 'ukulele-soprano', 'banjo-5'] as const;

/** What a reader sees of a system. */
interface Seen {
  readonly staffLines: number;
  readonly tabLines: number;
  readonly clef: string;
  readonly tabClef: string;
  readonly heads: readonly {
    readonly x: number;
    readonly steps: number;
    readonly signs: readonly string[];
  }[];
  readonly frets: readonly { readonly x: number; readonly line: number; readonly text: string }[];
  readonly spills: readonly string[];
}

async function openScore(path: string): Promise<readonly Seen[]> {
  await page.goto(stage.origin + path);
  await page.locator('[data-part="score"] > summary').click();
  await page.locator('.score svg').first().waitFor();
  return page.locator('.score').evaluate((score) =>
    [...score.querySelectorAll('svg')].map((svg) => {
      const number = (element: Element | undefined, name: string): number =>
        Number(element?.getAttribute(name));
      const linesOf = (stave: Element | undefined): number[] =>
        [...(stave?.querySelectorAll('path') ?? [])].map((path) =>
          Number(/M[\d.]+ ([\d.]+)/.exec(path.getAttribute('d') ?? '')?.[1]),
        );
      const [staff = [], tab = []] = [...svg.querySelectorAll('.vf-stave')].map(linesOf);
      const clefs = [...svg.querySelectorAll('.vf-clef text')].map((one) => one.textContent ?? '');
      const middle = (element: Element): number => {
        const { x, width } = (element as SVGGraphicsElement).getBBox();
        return x + width / 2;
      };
      const heads = [...svg.querySelectorAll('.vf-stavenote')].flatMap((note) => {
        const [head, ...signs] = [...note.querySelectorAll('.vf-notehead text')];
        if (!head || !/[\uE0A2-\uE0A4]/.test(head.textContent ?? '')) return [];
        const steps = Math.round(((staff[4] ?? 0) - number(head, 'y')) / 5);
        return [{ x: number(head, 'x'), steps, signs: signs.map((one) => one.textContent ?? '') }];
      });
      const frets = [...svg.querySelectorAll('.vf-tabnote')].map((note) => {
        const text = note.querySelector('text') as SVGTextElement;
        const box = note.querySelector('rect') ?? undefined;
        const y = number(box, 'y') + number(box, 'height') / 2;
        const spread = (tab[1] ?? 0) - (tab[0] ?? 0);
        // Figures stand on whole pixels, lines between them.
        const above = y + 0.5 - (tab[0] ?? 0);
        return { x: middle(text), line: 1 + above / spread, text: text.textContent ?? '' };
      });
      const { width, height } = svg.viewBox.baseVal;
      // The box of a music sign is as high as its font, so that only its baseline says where it stands.
      const spills = [...svg.querySelectorAll<SVGGraphicsElement>('text, path')].flatMap((one) => {
        const { x, y, width: across, height: high } = one.getBBox();
        const baseline = number(one, 'y');
        const [top, bottom] = one.matches('text') ? [baseline - 6, baseline] : [y, y + high];
        const isInside = x >= -1 && x + across <= width + 1 && top >= 0 && bottom <= height;
        return isInside ? [] : [one.outerHTML];
      });
      return {
        staffLines: staff.length,
        tabLines: tab.length,
        clef: clefs[0] ?? '',
        tabClef: clefs[1] ?? '',
        heads,
        frets,
        spills,
      };
    }),
  );
}

const ACCIDENTALS: Readonly<Record<number, string>> = {
  [-2]: '\uE264',
  [-1]: '\uE260',
  1: '\uE262',
  2: '\uE263',
};
const LETTERS = 'CDEFGAB';
const NATURALS = [0, 2, 4, 5, 7, 9, 11];

/** Letters and octaves counted through: C0 is 0, D0 is 1, C1 is 7. */
function stepsOf(note: string, midi: number): number {
  const letter = LETTERS.indexOf(note.charAt(0));
  const octave = (midi - alterationOf(note) - (NATURALS[letter] ?? 0)) / 12 - 1;
  return 7 * octave + letter;
}

function alterationOf(note: string): number {
  return note.endsWith('b') ? 1 - note.length : note.length - 1;
}

/** The bottom lines of the clefs: E4 under a G clef, G2 under an F clef. */
const BOTTOM_LINES: Readonly<Record<string, number>> = { G: stepsOf('E', 64), F: stepsOf('G', 43) };
const CLEFS: Readonly<Record<string, string>> = { 'G 0': '\uE050', 'G -1': '\uE052', 'F -1': '\uE064' };

describe.each(INSTRUMENTS)('on %s', (id) => {
  test('every head, accidental and fret stands where core’s note and the clef put it', async () => {
    const instrument = CATALOGUE.instruments.find((one) => one.id === id);
    const mode = UNIVERSE.modesById.get(MODE.steps);
    const root = parseRoot(MODE.root);
    invariant(
      instrument !== undefined && mode !== undefined && root.ok,
      'the scale and the instrument are known',
    );
    const neck = buildNeck(instrument, instrument.tunings[0]);
    invariant(neck.ok, 'it has a neck');
    const [fingering] = fingeringsOf(neck.value, spell(mode, root.value), { limit: 1 }).fingerings;
    invariant(fingering !== undefined, 'the scale can be played');
    const systems = await openScore(`/modes/${MODE.slug}/${MODE.rootSlug}/?instrument=${id}&value=eighth`);
    const { sign, octaveChange } = instrument.clef;
    for (const { staffLines, tabLines, clef, tabClef, spills } of systems) {
      expect([staffLines, tabLines]).toEqual([5, instrument.tunings[0].courses.length]);
      expect([clef, tabClef]).toEqual([
        CLEFS[`${sign} ${octaveChange}`],
        tabLines >= 6 ? '\uE06D' : '\uE06E',
      ]);
      expect(spills).toEqual([]);
    }
    const written = fingering.notes.map(({ note, midi }) => ({
      steps: stepsOf(note, midi) - 7 * octaveChange - (BOTTOM_LINES[sign] ?? Number.NaN),
      signs: [ACCIDENTALS[alterationOf(note)] ?? ''].filter((one) => one !== ''),
    }));
    const heads = systems.flatMap((one) => one.heads);
    expect(heads.map(({ steps, signs }) => ({ steps, signs }))).toEqual(written);
    const frets = systems.flatMap((one) => one.frets);
    expect(frets.map(({ text, line }) => `${text} on ${line}`)).toEqual(
      fingering.notes.map(({ fret, string }) => `${fret} on ${string}`),
    );
    for (const [at, { x }] of frets.entries())
      expect(Math.abs(x - ((heads[at]?.x ?? 0) + 5.9))).toBeLessThan(2);
    expect(heads.flatMap(({ signs }) => signs)).toContain('\uE264');
  });
});

test('the note that sounds is lit on the score, and the score follows what is chosen', async () => {
  await openScore('/rounds/harmonic-minor/a/');
  expect(await page.locator('.score-part').count()).toBe(7);
  const light = page.locator('.score-light');
  const place = async (): Promise<number> => Number(await light.getAttribute('x'));
  const first = await place();
  await page.getByRole('button', { name: 'Next note' }).click();
  await page.waitForFunction(
    (x) => Number(document.querySelector('.score-light')?.getAttribute('x')) > x,
    first,
  );
  await page.getByRole('button', { name: 'Next mode' }).click();
  await page.waitForFunction(() =>
    document.querySelector('.score-light')?.closest('.score-part')?.textContent?.includes('Locrian'),
  );
  const heads = await page.locator('.score .vf-stavenote').count();
  await page.locator('[data-part="panel"] > summary').click();
  await page.locator('#play-pattern').selectOption('up-and-down');
  await page.waitForFunction(
    (before) => document.querySelectorAll('.score .vf-stavenote').length > before,
    heads,
  );
});

test('files come as files: a score, a MIDI file, a tablature in text, a picture with its font', async () => {
  await page.goto(`${stage.origin}/modes/dorian-sharp4/a/?tempo=66`);
  await page.locator('[data-part="panel"] > summary').click();
  const save = async (kind: string): Promise<readonly [string, Buffer]> => {
    const button = page.locator(`[data-file="${kind}"]`);
    await button.waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
    return [download.suggestedFilename(), await readFile(await download.path())];
  };
  const [midiName, midi] = await save('mid');
  expect([midiName, midi.toString('latin1', 0, 4)]).toEqual(['dorian-sharp4-a-guitar-6-66.mid', 'MThd']);
  const [, score] = await save('musicxml');
  expect(score.toString()).toMatch(/<score-partwise version="4.0">[\s\S]*<per-minute>66</);
  const [, text] = await save('txt');
  expect(text.toString()).toMatch(/66 beats a minute/);
  const [, picture] = await save('svg');
  const faults = await page.evaluate(
    (text) => new DOMParser().parseFromString(text, 'image/svg+xml').querySelectorAll('parsererror').length,
    picture.toString(),
  );
  expect(faults).toBe(0);
  expect(picture.toString()).toMatch(/@font-face[\s\S]*data:font\/woff2;base64,d09GMg/);
});
