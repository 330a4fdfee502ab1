/**
 * What is heard: the play-along is rendered to a file by the real browser, and the file is measured against
 * what core wrote. Frequencies are equal temperament on A4 = 440 Hz (ISO 16).
 */
import { readFile } from 'node:fs/promises';
import { CATALOGUE, plainCatalogue } from '@stillroot/catalog';
import {
  buildNeck,
  fingeringsOf,
  invariant,
  type Piece,
  parseRoot,
  playFingering,
  playRound,
  roundOf,
  secondsAt,
  spell,
  UNIVERSE,
} from '@stillroot/core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openStage, type Stage } from './browser.ts';
import { onsetsIn, partialAt, peakOf, pitchAt, readWav, type Sound } from './sound-measure.ts';

let stage: Stage;
let page: Page;
beforeAll(async () => {
  stage = await openStage();
  page = await stage.open('/robots.txt');
});
afterAll(() => stage.close());

const NOTES_ONLY = 'mix=100-0-0-0';

/** The file that the page makes of its play-along. */
async function bytesFrom(path: string): Promise<Buffer> {
  await page.goto(stage.origin + path);
  await page.locator('[data-part="panel"] > summary').click();
  const button = page.locator('[data-file="wav"]');
  await button.waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  return readFile(await download.path());
}

async function soundFrom(path: string): Promise<Sound> {
  return readWav(await bytesFrom(path));
}

const cents = (heard: number, written: number): number => 1200 * Math.log2(heard / written);
const hertz = (midi: number): number => 440 * 2 ** ((midi - 69) / 12);

function neckOf(id: string) {
  const instrument = CATALOGUE.instruments.find((one) => one.id === id);
  invariant(instrument !== undefined, `${id} is an instrument`);
  const neck = buildNeck(instrument, instrument.tunings[0]);
  invariant(neck.ok, `${id} has a neck`);
  return neck.value;
}

function rootOf(name: string) {
  const root = parseRoot(name);
  invariant(root.ok, `${name} is a root`);
  return root.value;
}

/** A Dorian ♯4 in position, after a bar of count-in, as core writes it. */
function scalePiece(instrument: string, tempoBpm: number): Piece {
  const mode = UNIVERSE.modesById.get('2131212');
  invariant(mode !== undefined, 'Dorian ♯4 is a mode');
  const scale = spell(mode, rootOf('A'));
  const [fingering] = fingeringsOf(neckOf(instrument), scale, { limit: 1 }).fingerings;
  invariant(fingering !== undefined, 'it can be played');
  const piece = playFingering(scale, fingering, { tempoBpm, countInBars: 1 });
  invariant(piece.ok, 'it is a piece');
  return piece.value;
}

const SCALE = '/modes/dorian-sharp4/a/';

/** Pitch and beginning of every note against what was written. */
function checkNotes(sound: Sound, piece: Piece): void {
  const written = piece.notes.map(({ startTicks, midi }) => ({
    seconds: secondsAt(piece.timing, startTicks),
    hz: hertz(midi),
  }));
  const noteSeconds = secondsAt(piece.timing, piece.notes[0]?.durationTicks ?? 0);
  const onsets = onsetsIn(sound, noteSeconds / 2);
  expect(onsets).toHaveLength(written.length);
  const late = written.map(({ seconds }, at) => Math.abs((onsets[at] ?? 0) - seconds) * 1000);
  expect(Math.max(...late)).toBeLessThan(5);
  const listened = Math.min(0.13, noteSeconds - 0.05);
  const off = written.map(({ seconds, hz }) => Math.abs(cents(pitchAt(sound, seconds + 0.03, listened), hz)));
  expect(Math.max(...off)).toBeLessThan(5);
}

describe('a scale on its own', () => {
  test.each([40, 120, 240])('at %i beats a minute every note is in tune and in time', async (tempo) => {
    const piece = scalePiece('guitar-6', tempo);
    const sound = await soundFrom(`${SCALE}?tempo=${tempo}&${NOTES_ONLY}`);
    checkNotes(sound, piece);
    // The same by hand: a quarter each, after four beats of count-in.
    const [first, second] = onsetsIn(sound, 30 / tempo);
    expect(Math.abs((first ?? 0) - (4 * 60) / tempo)).toBeLessThan(0.005);
    expect(Math.abs((second ?? 0) - (5 * 60) / tempo)).toBeLessThan(0.005);
  });

  test('on a bass it is as true, down to the lowest string', async () => {
    const sound = await soundFrom(`${SCALE}?instrument=bass-4&tempo=120&${NOTES_ONLY}`);
    checkNotes(sound, scalePiece('bass-4', 120));
  });
});

test('a round of seven modes on a seven-string guitar is in tune and in time from first note to last', async () => {
  const family = plainCatalogue(CATALOGUE).families.find(({ slug }) => slug === 'harmonic-minor');
  const head = UNIVERSE.modesById.get(family?.modes[0] ?? '');
  invariant(head !== undefined, 'harmonic minor has a first mode');
  const piece = playRound(roundOf(neckOf('guitar-7'), head, rootOf('E')), { tempoBpm: 240, countInBars: 1 });
  invariant(piece.ok, 'the round is a piece');
  const sound = await soundFrom(`/rounds/harmonic-minor/e/?instrument=guitar-7&tempo=240&${NOTES_ONLY}`);
  expect(new Set(piece.value.notes.map(({ modeIndex }) => modeIndex)).size).toBe(7);
  checkNotes(sound, piece.value);
});

describe('everything at once', () => {
  const LOUDEST = `${SCALE}?backing=both&tempo=120&mix=100-100-100-100`;

  test('at full volume nothing clips, nor is it faint; made again it is the same', async () => {
    const [one, two] = [await soundFrom(LOUDEST), await soundFrom(LOUDEST)];
    expect(peakOf(one)).toBeLessThan(0.98);
    expect(peakOf(one)).toBeGreaterThan(0.3);
    // But for the last bit, which hangs on the order in which the browser adds the voices up.
    const apart = one.samples.map((sample, at) => Math.abs(sample - (two.samples[at] ?? 1)));
    expect(one.samples).toHaveLength(two.samples.length);
    expect(apart.reduce((most, each) => Math.max(most, each), 0)).toBeLessThanOrEqual(1 / 32_768);
  });

  test('the drone sounds under all of it, on the root, and not where it is not wanted', async () => {
    const withDrone = await soundFrom(`${SCALE}?tempo=120&mix=0-100-0-0`);
    const without = await soundFrom(`${SCALE}?tempo=120&backing=none&mix=0-100-0-0`);
    // A2, the A above E2 that core puts the drone on; after a count-in of two seconds.
    const hz = hertz(45);
    for (const from of [2.2, 4, 6, 8]) {
      expect(partialAt(withDrone, hz, from, from + 0.5)).toBeGreaterThan(0.02);
      expect(Math.abs(cents(pitchAt(withDrone, from, 0.13), hz))).toBeLessThan(1);
    }
    expect(partialAt(withDrone, hz, 0.5, 1.5)).toBeLessThan(1e-4);
    expect(peakOf(without)).toBe(0);
  });

  test('the drone can be told from the rest of the mix', async () => {
    const all = await soundFrom(`${SCALE}?tempo=120&mix=80-60-60-50`);
    const bare = await soundFrom(`${SCALE}?tempo=120&mix=80-0-60-50`);
    const hz = hertz(45);
    expect(partialAt(all, hz, 7, 7.5)).toBeGreaterThan(4 * partialAt(bare, hz, 7, 7.5));
  });

  test('the metronome clicks on every beat, and on the count-in alone where that is asked', async () => {
    const clicks = await soundFrom(`${SCALE}?tempo=120&mix=0-0-0-100`);
    const count = scalePiece('guitar-6', 120).totalTicks / 480;
    expect(onsetsIn(clicks, 0.2).map((one) => Math.round(one * 100) / 100)).toEqual(
      Array.from({ length: count }, (_, beat) => beat / 2),
    );
    const countIn = await soundFrom(`${SCALE}?tempo=120&metronome=off&mix=0-0-0-100`);
    expect(onsetsIn(countIn, 0.2)).toHaveLength(4);
  });
});
