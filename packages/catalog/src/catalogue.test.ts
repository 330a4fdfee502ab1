import { UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { CATALOGUE, familyEntryOf, modeEntryOf, modePreference } from './catalogue.ts';
import { findFamily, findMode } from './find.ts';

describe('modes', () => {
  test('are all 462, in the order of the universe, each with a name and a slug of its own', () => {
    expect(CATALOGUE.modes.map(({ mode }) => mode)).toEqual(UNIVERSE.modes);
    expect(new Set(CATALOGUE.modes.map(({ slug }) => slug)).size).toBe(462);
    expect(new Set(CATALOGUE.modes.map(({ name }) => name)).size).toBe(462);
    for (const entry of CATALOGUE.modes) expect(modeEntryOf(entry.mode)).toBe(entry);
  });

  test('carry no alias twice and never their own displayed name', () => {
    for (const { name, aliases, mode } of CATALOGUE.modes) {
      expect(new Set([name, ...aliases]).size).toBe(aliases.length + 1);
      expect([name, ...aliases]).toContain(mode.systematicName);
    }
  });

  test('give the sources of every name', () => {
    for (const { names } of CATALOGUE.modes) {
      for (const { sources } of names) expect(sources.length).toBeGreaterThan(0);
    }
    const fifth = findMode('Phrygian dominant');
    expect(fifth?.names.find(({ name }) => name === 'Vakulabharanam')).toMatchObject({
      tradition: 'Carnatic mela 14',
      isRecalled: false,
    });
    expect(findMode('Dorian')?.names.find(({ name }) => name === 'Kafi')?.tradition).toBe('Hindustani thaat');
  });

  test('show the names that sources dispute, on every mode concerned', () => {
    const disputed = (steps: string) => findMode(steps)?.conflicts.map(({ name }) => name);
    expect(disputed('1212222')).toEqual(['super Locrian', 'altered']);
    expect(disputed('1212213')).toEqual(['super Locrian', 'Locrian bb7']);
    expect(disputed('2122212')).toEqual([]);
  });
});

describe('families', () => {
  test('are all 66, each with a slug of its own and seven modes from its head upwards', () => {
    expect(CATALOGUE.families).toHaveLength(66);
    expect(new Set(CATALOGUE.families.map(({ slug }) => slug)).size).toBe(66);
    for (const entry of CATALOGUE.families) {
      expect(entry.modes.map(({ degree }) => degree)).toEqual([1, 2, 3, 4, 5, 6, 7]);
      expect(entry.modes[0]).toBe(entry.head);
      expect(new Set(entry.modes.map(({ mode }) => mode))).toEqual(new Set(entry.family.modes));
      for (const { mode } of entry.modes) expect(familyEntryOf(mode)).toBe(entry);
    }
  });

  test('begin with those the trade names, in a musical order', () => {
    expect(CATALOGUE.families.slice(0, 5).map(({ name }) => name)).toEqual([
      'major',
      'harmonic minor',
      'melodic minor',
      'harmonic major',
      'double harmonic',
    ]);
    const named = CATALOGUE.families.map(({ isTradeNamed }) => isTradeNamed);
    expect(named.indexOf(false)).toBe(14);
    expect(named.lastIndexOf(true)).toBe(13);
  });

  test('without a trade name are named after their simplest mode, the simplest families first', () => {
    const unnamed = CATALOGUE.families.slice(14);
    const moved = unnamed.map(({ head }) => head.mode.base.moved.length);
    expect(moved).toEqual(moved.toSorted((a, b) => a - b));
    for (const { name, slug, head, modes } of unnamed) {
      expect([name, slug]).toEqual([head.mode.systematicName, head.slug]);
      const fewest = Math.min(...modes.map(({ mode }) => mode.base.moved.length));
      expect(head.mode.base.moved).toHaveLength(fewest);
    }
    // Mela 63, Latangi, 1 2 3 #4 5 b6 7, is one degree away from Lydian (worked by hand).
    expect(findFamily('2221131')).toMatchObject({ name: 'Lydian b6', slug: 'lydian-b6' });
  });

  // Glarean, Dodecachordon (1547), for the first six; Powers, The New Grove, for Locrian.
  test('major holds the church modes in the order of the degrees', () => {
    expect(findFamily('major')?.modes.map(({ name }) => name)).toEqual([
      'Ionian',
      'Dorian',
      'Phrygian',
      'Lydian',
      'Mixolydian',
      'Aeolian',
      'Locrian',
    ]);
  });

  // Common practice, no source; the fourth and fifth as in Wikipedia, Ukrainian Dorian and Phrygian dominant.
  test('harmonic minor holds the modes that players know', () => {
    expect(
      findFamily('harmonic minor')?.modes.map(({ name, mode }) => [name, mode.formula.join(' ')]),
    ).toEqual([
      ['harmonic minor', '1 2 b3 4 5 b6 7'],
      ['Locrian nat6', '1 b2 b3 4 b5 6 b7'],
      ['Ionian #5', '1 2 3 4 #5 6 7'],
      ['Dorian #4', '1 2 b3 #4 5 6 b7'],
      ['Phrygian dominant', '1 b2 3 4 5 b6 b7'],
      ['Lydian #2', '1 #2 3 #4 5 6 7'],
      ['Locrian b4 bb7', '1 b2 b3 b4 b5 b6 bb7'],
    ]);
  });

  // Wikipedia, Jazz scale, Acoustic scale, Altered scale.
  test('melodic minor holds the modes of jazz', () => {
    expect(findFamily('melodic minor')?.modes.map(({ name }) => name)).toEqual([
      'melodic minor',
      'Dorian b2',
      'Lydian augmented',
      'Lydian dominant',
      'Mixolydian b6',
      'Locrian nat2',
      'altered',
    ]);
  });
});

describe('names of other traditions', () => {
  // Venkatamakhin's numbering: 36 for the sharp fourth, then six pairs of second and third, then six of
  // sixth and seventh, each pair in the order below.
  test('every mela lies where its number says', () => {
    const pairs = [
      [1, 2],
      [1, 3],
      [1, 4],
      [2, 3],
      [2, 4],
      [3, 4],
    ] as const;
    const melas = new Map(
      CATALOGUE.modes.flatMap(({ mode, names }) =>
        names.flatMap(({ tradition }): [number, readonly number[]][] => {
          const number = /^Carnatic mela (\d+)$/.exec(tradition ?? '')?.[1];
          return number === undefined ? [] : [[Number(number), mode.semitones]];
        }),
      ),
    );
    for (let number = 1; number <= 72; number += 1) {
      const at = number - 1;
      const [second, third] = pairs[Math.floor((at % 36) / 6)] ?? pairs[0];
      const [sixth, seventh] = pairs[at % 6] ?? pairs[0];
      const fourth = number > 36 ? 6 : 5;
      expect(melas.get(number)).toEqual([0, second, third, fourth, 7, sixth + 7, seventh + 7]);
    }
  });

  // Wikipedia, Thaat: small letters for flat degrees, a capital M for the sharp fourth.
  test.each([
    ['Bilawal', 'SRGmPDN'],
    ['Kalyan', 'SRGMPDN'],
    ['Khamaj', 'SRGmPDn'],
    ['Bhairav', 'SrGmPdN'],
    ['Purvi', 'SrGMPdN'],
    ['Marwa', 'SrGMPDN'],
    ['Kafi', 'SRgmPDn'],
    ['Asavari', 'SRgmPdn'],
    ['Bhairavi', 'SrgmPdn'],
    ['Todi', 'SrgMPdN'],
  ])('thaat %s is %s', (name, sargam) => {
    const semitones = [...sargam].map((letter) => 'SrRgGmMPdDnN'.indexOf(letter));
    expect(findMode(name)?.mode.semitones).toEqual(semitones);
  });
});

describe('modePreference', () => {
  test('puts what every player knows above other trade names, and those above the rest', () => {
    const preferenceOf = (name: string) => {
      const entry = findMode(name);
      return entry && modePreference(entry.mode);
    };
    expect(preferenceOf('Dorian')).toBe(2);
    expect(preferenceOf('altered')).toBe(2);
    expect(preferenceOf('Hungarian minor')).toBe(1);
    expect(preferenceOf('Lydian b6')).toBe(0);
  });
});
