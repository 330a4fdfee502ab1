import { gzipSync } from 'node:zlib';
import { CATALOGUE, findMode } from '@stillroot/catalog';
import { EVERYDAY_ROOTS, pitchClassesOf, spell, UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { searchFile } from '../facts/search-index.ts';
import { searchResultsHtml } from '../markup/search-results.ts';
import { modeMeant, type SearchResult, search } from './find.ts';
import { placedIn } from './placed.ts';
import { readyIndex } from './search-index.ts';

const file = searchFile();
const index = readyIndex(file);
const nameOf = ({ modes }: SearchResult): string | undefined => {
  const [first] = modes;
  return first && file.modes[first.mode.index]?.[2];
};

test('the stored index is small enough to be fetched at the first letter', () => {
  expect(gzipSync(JSON.stringify(file)).length).toBeLessThan(16_000);
});

describe('by name', () => {
  test('every mode is found first by the name it displays, by its slug and by its steps', () => {
    for (const { mode, name, slug } of CATALOGUE.modes) {
      expect(search(name, index).modes[0]?.mode.id, name).toBe(mode.id);
      expect(modeMeant(slug, index)?.mode.id, slug).toBe(mode.id);
      expect(modeMeant(mode.id, index)?.mode.id).toBe(mode.id);
    }
  });

  test('every alias finds its mode, and says by which name', () => {
    for (const { mode, aliases } of CATALOGUE.modes)
      for (const alias of aliases) {
        const hit = search(alias, index).modes.find((one) => one.mode === mode);
        expect(hit, alias).toBeDefined();
      }
    expect(search('acoustic', index).modes[0]?.alias).toBe('acoustic');
  });

  test('every family and every instrument is found by its name', () => {
    for (const { slug, name } of CATALOGUE.families)
      expect(search(name, index).families.map(([, found]) => found)).toContain(slug);
    for (const { id, name } of CATALOGUE.instruments)
      expect(search(name, index).instruments[0]?.instrument[0], name).toBe(id);
  });

  test.each([
    ['phrigian dominent', 'Phrygian dominant'],
    ['dorain', 'Dorian'],
    ['dominant phrygian', 'Phrygian dominant'],
    ['superlocrian', 'altered'],
    ['mixolidian', 'Mixolydian'],
    ['frigian', 'Phrygian'],
    ['dorian sharp 4', 'Dorian #4'],
    ['lydian dom', 'Lydian dominant'],
    ['half diminished', 'Locrian nat2'],
  ])('%s finds %s', (text, name) => {
    expect(nameOf(search(text, index))).toBe(name);
  });

  test('a degree is no slip of another', () => {
    expect(search('dorian b4', index).modes.map(({ mode }) => mode.id)).not.toContain(
      findMode('Dorian #4')?.mode.id,
    );
  });

  test('open strings may be typed with their octaves', () => {
    const [first] = search('B0-E1-A1-D2-G2', index).instruments;
    expect([first?.instrument[0], first?.tuning?.[0]]).toEqual(['bass-5', 'low-b']);
  });

  test('a tuning is found with its instrument, by name and by its strings', () => {
    const [dropD] = search('bass drop d', index).instruments;
    expect([dropD?.instrument[0], dropD?.tuning?.[0]]).toEqual(['bass-4', 'drop-d']);
    expect(search('DADGAD', index).instruments[0]?.tuning?.[0]).toBe('dadgad');
  });

  test.each(['', '   ', 'constructor', 'hasOwnProperty', 'qqqqqqq', '\u0000', '<script>'])(
    '%j finds nothing and harms nothing',
    (text) => {
      const { modes, families, instruments } = search(text, index);
      expect([modes, families, instruments]).toEqual([[], [], []]);
    },
  );
});

describe('by a place in a family', () => {
  // Any theory handbook's modes of harmonic and melodic minor and of major; common practice, no source.
  test.each([
    ['4th mode of harmonic minor', 'Dorian #4'],
    ['harmonic minor 4th mode', 'Dorian #4'],
    ['the fourth mode of the harmonic minor scale', 'Dorian #4'],
    ['Harmonic minor, mode 4', 'Dorian #4'],
    ['mode IV of harmonic minor', 'Dorian #4'],
    ['IV of harmonic minor', 'Dorian #4'],
    ['mode 5 harmonic minor', 'Phrygian dominant'],
    ['seventh mode of jazz minor', 'altered'],
    ['first mode of major', 'Ionian'],
    ['sixth mode of Dorian', 'Locrian'],
    ['fifth mode of harmnic minor', 'Phrygian dominant'],
  ])('%s finds %s alone', (text, name) => {
    const { modes } = search(text, index);
    expect(modes.map(({ mode }) => mode)).toEqual([findMode(name)?.mode]);
    expect(modes[0]?.scale).toBeUndefined();
    expect(modeMeant(text, index)).toEqual({ mode: findMode(name)?.mode, root: undefined });
  });

  test.each([
    ['4th mode of A harmonic minor', 'D', 'D E F G# A B C'],
    ['A harmonic minor 4th mode', 'D', 'D E F G# A B C'],
    ['A 4th mode of harmonic minor', 'A', 'A B C D# E F# G'],
    ['4th mode of harmonic minor in A', 'A', 'A B C D# E F# G'],
    ['harmonic minor 4th mode on A', 'A', 'A B C D# E F# G'],
  ])('%s stands on %s', (text, root, notes) => {
    const [first] = search(text, index).modes;
    expect([first?.scale?.root.name, first?.scale?.notes.join(' ')]).toEqual([root, notes]);
  });

  test.each(['round of harmonic minor from D', 'the round of harmonic minor on D'])(
    '%s finds the family, and the scale on its root',
    (text) => {
      const { asked, families, modes } = search(text, index);
      expect([asked.root?.name, families[0]?.[1]]).toEqual(['D', 'harmonic-minor']);
      expect(modes[0]?.scale?.notes.join(' ')).toBe('D E F G A Bb C#');
    },
  );

  test.each([
    ['E phrygian on bass from fret 7', 'bass-4', 7, 'E F G A B C D'],
    ['bass E phrygian 7th fret', 'bass-4', 7, 'E F G A B C D'],
    ['4th mode of A harmonic minor at fret 5', undefined, 5, 'D E F G# A B C'],
    ['A dorian fret 0', undefined, 0, 'A B C D E F# G'],
  ])('%s is found there', (text, instrument, fret, notes) => {
    const result = search(text, index);
    expect([result.on?.instrument[0], result.fret]).toEqual([instrument, fret]);
    expect(result.modes[0]?.scale?.notes.join(' ')).toBe(notes);
    const link = /href="([^"]+)"/.exec(searchResultsHtml(result, index))?.[1] ?? '';
    const { searchParams } = new URL(link.replaceAll('&amp;', '&'), 'https://example.org');
    expect([searchParams.get('instrument') ?? undefined, searchParams.get('fret')]).toEqual([
      instrument,
      String(fret),
    ]);
  });

  test('a round on an instrument is found with its scale', () => {
    const { families, on } = search('round of harmonic minor from A on bass', index);
    expect([families[0]?.[1], on?.instrument[0]]).toEqual(['harmonic-minor', 'bass-4']);
  });

  test('in German and Spanish, where the index has their names', () => {
    const withNames = readyIndex({
      ...file,
      families: file.families.map((family) =>
        family[1] === 'harmonic-minor' ? [...family, 'harmonisches Moll', 'menor armónica'] : family,
      ),
    });
    for (const text of [
      'vierter Modus von harmonisch Moll',
      '4. Modus des harmonischen Moll',
      'harmonisches Moll, 4. Modus',
      'cuarto modo de la menor armónica',
      '4.º modo de la menor armónica',
      'menor armónica modo 4',
    ])
      expect(modeMeant(text, withNames)?.mode, text).toBe(findMode('Dorian #4')?.mode);
  });

  test.each([
    'mode',
    '8th mode of harmonic minor',
    '4th mode',
    'mode 4',
    '4th mode of qqqqqq',
    'dorian mode',
  ])('%j tells no place in a family', (text) => {
    expect(placedIn(text) && search(text, index).modes.length === 1).toBeFalsy();
  });
});

describe('on an instrument', () => {
  test.each([
    ['Dorian on D mandolin', 'dorian', 'D', 'mandolin'],
    ['mandolin D Dorian', 'dorian', 'D', 'mandolin'],
    ['A phrygian dominant on five-string bass', 'phrygian dominant', 'A', 'bass-5'],
    ['A Phrygian dominant seven string drop A', 'phrygian dominant', 'A', 'guitar-7 drop-a'],
    ['a phrygian dominant seven string drop a', 'phrygian dominant', 'A', 'guitar-7 drop-a'],
    ['dorian on a mandolin', 'dorian', undefined, 'mandolin'],
    ['harmonic minor bass', 'harmonic minor', undefined, 'bass-4'],
  ])('%s finds the scale there', (text, name, root, instrument) => {
    const { modes, on } = search(text, index);
    expect(modes[0]?.mode).toBe(findMode(name)?.mode);
    expect(modes[0]?.scale?.root.name).toBe(root);
    expect([on?.instrument[0], on?.tuning?.[0]].filter(Boolean).join(' ')).toBe(instrument);
  });

  test('only where both are named', () => {
    for (const text of ['mandolin', 'A Dorian', 'dorian banana', 'low B', 'drop A'])
      expect(search(text, index).on, text).toBeUndefined();
  });
});

describe('by notes', () => {
  test('the seven notes of any scale find it first, and its six relatives', () => {
    for (const mode of UNIVERSE.modes.filter(({ index: at }) => at % 5 === 3)) {
      for (const root of EVERYDAY_ROOTS.filter((_, at) => at % 8 === mode.index % 8)) {
        const { readable } = spell(mode, root);
        const { modes } = search(readable.join(' '), index);
        expect(modes).toHaveLength(7);
        expect([modes[0]?.mode.id, modes[0]?.scale?.root.name]).toEqual([mode.id, root.name]);
      }
    }
  });

  test('a few notes find every scale that holds them, the best known on the first note first', () => {
    const { modes } = search('C E G Bb', index);
    expect(nameOf(search('C E G Bb', index))).toBe('Mixolydian');
    for (const { scale } of modes)
      expect(scale && pitchClassesOf(scale)).toEqual(expect.arrayContaining([0, 4, 7, 10]));
  });

  test('notes that no scale holds together find those that lack the fewest', () => {
    const { modes } = search('C C# D D# E F F# G', index);
    expect(new Set(modes.map(({ missing }) => missing))).toEqual(new Set([1]));
  });
});

describe('by formula and by steps', () => {
  test('every formula finds its mode alone', () => {
    for (const { mode } of CATALOGUE.modes)
      expect(search(mode.formula.join(' '), index).modes.map((hit) => hit.mode.id)).toEqual([mode.id]);
  });

  test('degrees find every mode that has them, and first those that write them so', () => {
    const { modes } = search('#4 b7', index);
    expect(nameOf(search('#4 b7', index))).toBe('Lydian dominant');
    for (const { mode } of modes) expect(mode.semitones).toEqual(expect.arrayContaining([6, 10]));
    expect(modes).toHaveLength(UNIVERSE.modes.filter(({ set }) => set & (1 << 6) && set & (1 << 10)).length);
  });

  test('with a root, the scale stands on it', () => {
    expect(search('1312122 in F#', index).modes[0]?.scale?.notes.join(' ')).toBe('F# G A# B C# D E');
  });
});
