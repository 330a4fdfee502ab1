import { CATALOGUE } from '@stillroot/catalog';
import { neighboursOf, UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { modeMapSvg } from '../markup/mode-map.ts';
import { BRIGHTEST, DARKEST, leaning, MAP_BANDS, MIDDLE_BRIGHTNESS } from './mode-map.ts';

const columns = MAP_BANDS.flatMap((band) => band.columns);

describe('the map', () => {
  test('has every family in a column of its own, and every mode once', () => {
    expect(columns.map(({ column }) => column)).toEqual([...Array(66).keys()]);
    expect(new Set(columns.map(({ family }) => family.id)).size).toBe(66);
    const places = columns.flatMap(({ column, modes }) =>
      modes.map(({ mode }) => `${column} ${mode.brightness}`),
    );
    expect(new Set(places).size).toBe(462);
  });

  test('runs from 13 to −17, and neighbours are one row apart', () => {
    expect([BRIGHTEST, DARKEST]).toEqual([13, -17]);
    for (const mode of UNIVERSE.modes)
      for (const { mode: other } of neighboursOf(mode))
        expect(Math.abs(other.brightness - mode.brightness)).toBe(1);
  });

  test('has every family about the row of Dorian', () => {
    for (const { modes } of columns) {
      const sum = modes.reduce((all, { mode }) => all + mode.brightness, 0);
      expect(sum / 7).toBe(MIDDLE_BRIGHTNESS);
    }
  });

  test('has mirror images side by side, as dark below the row of Dorian as they are bright above it', () => {
    for (const { family, column, modes, mirror } of columns) {
      const other = columns.find((one) => one.family === mirror);
      expect(Math.abs((other?.column ?? -9) - column)).toBe(mirror === family ? 0 : 1);
      const reflected = modes.map(({ mode }) => 2 * MIDDLE_BRIGHTNESS - mode.brightness).toReversed();
      expect(other?.modes.map(({ mode }) => mode.brightness)).toEqual(reflected);
    }
  });

  // The major scale is the most even of all seven-note scales, and its own mirror image; harmonic minor and
  // harmonic major are each other's (common practice, no source).
  test('begins with the major scale, and pairs harmonic minor with harmonic major', () => {
    const slugs = columns.map(({ family }) => family.slug);
    expect(slugs.slice(0, 2)).toEqual(['major', 'melodic-minor']);
    expect(slugs.indexOf('harmonic-major') - slugs.indexOf('harmonic-minor')).toBe(1);
    expect(columns[0]?.modes.map(({ name }) => name)).toEqual([
      'Lydian',
      'Ionian',
      'Mixolydian',
      'Dorian',
      'Aeolian',
      'Phrygian',
      'Locrian',
    ]);
  });

  test('says truly that families with a name of their own have no step of more than three semitones', () => {
    const named = CATALOGUE.families.filter(({ isTradeNamed }) => isTradeNamed);
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter(({ id }) => /[4-6]/.test(id))).toEqual([]);
  });

  test('tells modes read with lowered degrees from those read with raised ones', () => {
    const byName = (name: string) => {
      const entry = CATALOGUE.modes.find((one) => one.name === name);
      return entry && leaning(entry.mode);
    };
    expect(['Dorian #4', 'Dorian b2', 'Dorian'].map(byName)).toEqual(['raised', 'lowered', 'plain']);
  });
});

describe('the picture', () => {
  const svg = modeMapSvg();

  test('links every mode once, by the id of its steps, under a name without a comma', () => {
    for (const { mode, slug, name } of CATALOGUE.modes) {
      expect(svg.split(`id="${mode.id}"`)).toHaveLength(2);
      expect(svg).toContain(`href="/modes/${slug}/"`);
      expect(name).not.toContain(',');
    }
  });

  test('can be entered with the Tab key at one mark only', () => {
    expect(svg.match(/tabindex="0"/g)).toHaveLength(1);
  });
});
