import { describe, expect, test } from 'vitest';
import { CATALOGUE } from './catalogue.ts';
import { searchModes } from './search.ts';

const namesOf = (search: Parameters<typeof searchModes>[0]) => searchModes(search).map(({ name }) => name);

describe('searchModes', () => {
  test('puts the whole name first, then beginnings, then parts', () => {
    expect(namesOf({ name: 'dorian', limit: 3 })).toEqual(['Dorian', 'Dorian #4', 'Dorian b2']);
    expect(namesOf({ name: 'dominant', limit: 2 })).toEqual(['Lydian dominant', 'Phrygian dominant']);
    expect(namesOf({ name: 'jazz minor', limit: 1 })).toEqual(['melodic minor']);
  });

  test('forgives a slip in a whole name', () => {
    expect(namesOf({ name: 'phrigian dominnt' })).toContain('Phrygian dominant');
  });

  test.each([
    [
      ['b3', '#4', 'b7'],
      ['Dorian #4', 'Aeolian #4'],
    ],
    [['♭2', '3', '♭6', '♭7'], ['Phrygian dominant']],
    [['bb7', 'b4'], ['Locrian b4 bb7']],
  ])('the modes of %j begin with %j', (contains, names) => {
    expect(namesOf({ contains, limit: names.length })).toEqual(names);
  });

  test('counts exactly the modes that have a degree or a semitone', () => {
    const having = (contains: (number | string)[]) => searchModes({ contains, limit: 462 });
    expect(having(['b3'])).toHaveLength(CATALOGUE.modes.filter(({ mode }) => mode.semitones[2] === 3).length);
    // Six of eleven semitones are chosen; with one of them given, five of ten: C(10,5).
    expect(having([3])).toHaveLength(252);
    expect(having([15])).toEqual(having([3]));
    expect(having([])).toHaveLength(462);
  });

  test.each([
    [{ name: 'xyzzyquux' }],
    [{ name: '---' }],
    [{ contains: ['b9'] }],
    [{ contains: [Number.NaN] }],
    [{ contains: [1.5] }],
    [{ contains: ['constructor'] }],
  ])('%j finds nothing', (search) => {
    expect(searchModes(search)).toEqual([]);
  });

  test('gives at most as many as asked, twenty where nobody says', () => {
    expect(searchModes({})).toHaveLength(20);
    expect(searchModes({ limit: 0 })).toEqual([]);
    expect(searchModes({ limit: -1 })).toEqual([]);
  });
});
