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

  test.each(['', '  ', '---'])('has none for %j, which asks nothing', (text) => {
    expect(suggestModes(text)).toEqual([]);
  });

  test.each(['xyzzyquux', 'q'.repeat(80), 'zz top'])('always names somebody for %j', (text) => {
    expect(suggestModes(text, 3)).toHaveLength(3);
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

  test('is found nowhere, and every look-up answers', () => {
    expect(findMode(long)).toBeUndefined();
    expect(findInstrument(long)).toBeUndefined();
    expect(suggestModes(long)).toHaveLength(5);
    expect(suggestFamilies(long)).toHaveLength(5);
    expect(suggestInstruments(long)).toHaveLength(5);
    expect(searchModes({ name: long, contains: [long] })).toEqual([]);
  });
});
