import { describe, expect, test } from 'vitest';
import { findInstrument, findMode } from './find.ts';
import { searchModes } from './search.ts';
import { suggestFamilies, suggestInstruments, suggestModes } from './suggest.ts';

describe('suggestModes', () => {
  test.each([
    ['dorain', 'Dorian'],
    ['mixolidian', 'Mixolydian'],
    ['phrigian dominant', 'Phrygian dominant'],
    ['super locrain', 'altered'],
    ['dorian mode', 'Dorian'],
    ['neapolitan', 'Neapolitan major'],
    ['22122211', 'Ionian'],
  ])('%s may mean %s', (text, name) => {
    expect(suggestModes(text, 1).map((entry) => entry.name)).toEqual([name]);
  });

  test.each(['', '  ', 'xyzzyquux', 'q'.repeat(80), '😀'.repeat(20)])('has none for %j', (text) => {
    expect(suggestModes(text)).toEqual([]);
  });

  test('gives at most as many as asked, five where nobody says', () => {
    expect(suggestModes('lydian')).toHaveLength(5);
    expect(suggestModes('lydian', 2)).toHaveLength(2);
  });
});

describe('suggestFamilies and suggestInstruments', () => {
  test('speak of families and instruments', () => {
    expect(suggestFamilies('harmonic', 2).map(({ name }) => name)).toEqual([
      'harmonic minor',
      'harmonic major',
    ]);
    expect(suggestFamilies('melodik minor', 1).map(({ slug }) => slug)).toEqual(['melodic-minor']);
    expect(suggestInstruments('mandolyn', 1).map(({ id }) => id)).toEqual(['mandolin']);
    expect(suggestInstruments('guitar7', 1).map(({ id }) => id)).toEqual(['guitar-7']);
    expect(suggestInstruments('bas', 1).map(({ id }) => id)).toEqual(['bass-4']);
  });
});

describe('text of two million letters', () => {
  const long = 'dorian '.repeat(300_000);

  test('is answered in well under a second by every look-up', () => {
    const begun = performance.now();
    expect(findMode(long)).toBeUndefined();
    expect(findInstrument(long)).toBeUndefined();
    suggestModes(long);
    suggestFamilies(long);
    suggestInstruments(long);
    searchModes({ name: long, contains: [long] });
    expect(performance.now() - begun).toBeLessThan(500);
  });
});
