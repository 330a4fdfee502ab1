import { buildNeck } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { CATALOGUE } from './catalogue.ts';
import { plainCatalogue } from './plain.ts';
import { instrumentFromPlain, type PlainCatalogue } from './plain-browser.ts';

const carried: PlainCatalogue = JSON.parse(JSON.stringify(plainCatalogue(CATALOGUE)));

describe('plainCatalogue', () => {
  test('survives JSON unchanged', () => {
    expect(carried).toEqual(plainCatalogue(CATALOGUE));
  });

  test('holds every family and mode in the order of the catalogue', () => {
    expect(carried.families).toHaveLength(66);
    expect(carried.families[1]).toEqual({
      slug: 'harmonic-minor',
      name: 'harmonic minor',
      modes: ['2122131', '1221312', '2213121', '2131212', '1312122', '3121221', '1212213'],
    });
    expect(carried.modes.map(({ id }) => id)).toEqual(CATALOGUE.modes.map(({ mode }) => mode.id));
  });
});

describe('instruments', () => {
  test('carry their kind, and neither sources, ranges nor remarks', () => {
    for (const [at, plain] of carried.instruments.entries()) {
      expect(plain.kind).toBe(CATALOGUE.instruments[at]?.kind);
      const fields = [...Object.keys(plain), ...plain.tunings.flatMap((tuning) => Object.keys(tuning))];
      expect(fields.filter((field) => /source|range|recalled|note|xml|clef/i.test(field))).toEqual([]);
    }
  });
});

describe('instrumentFromPlain', () => {
  test.each(carried.instruments.map((plain) => [plain.id, plain] as const))(
    '%s has the same necks',
    (id, plain) => {
      const entry = CATALOGUE.instruments.find((one) => one.id === id);
      const instrument = instrumentFromPlain(plain);
      expect(entry).toMatchObject(instrument);
      for (const [at, tuning] of instrument.tunings.entries()) {
        const neck = buildNeck(instrument, tuning);
        const original = entry?.tunings[at];
        expect(neck.ok).toBe(true);
        if (!neck.ok || entry === undefined || original === undefined) continue;
        const expected = buildNeck(entry, original);
        expect(neck.value.strings).toEqual(expected.ok ? expected.value.strings : undefined);
      }
    },
  );

  test('refuses what did not come from the catalogue', () => {
    const [plain] = carried.instruments;
    expect(() =>
      instrumentFromPlain({ ...(plain as (typeof carried.instruments)[number]), tunings: [] }),
    ).toThrow('has a tuning');
  });
});
