import { CATALOGUE } from '@stillroot/catalog';
import { EVERYDAY_ROOTS } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { searchFile } from '../facts/search-index.ts';
import { searchResultsHtml } from '../markup/search-results.ts';
import * as german from '../words/de/names.ts';
import { SEARCH as GERMAN } from '../words/de/search.ts';
import { SEARCH as ENGLISH } from '../words/en/search.ts';
import * as spanish from '../words/es/names.ts';
import { SEARCH as SPANISH } from '../words/es/search.ts';
import { nameNote } from '../words/note-names.ts';
import { modeMeant, type SearchResult, search } from './find.ts';
import { readingsOf } from './readings.ts';
import { readyIndex } from './search-index.ts';

const INDEXES = {
  english: readyIndex(searchFile()),
  german: readyIndex(searchFile(german)),
  romance: readyIndex(searchFile(spanish)),
} as const;

type Naming = keyof typeof INDEXES;

const find = (text: string, naming: Naming): SearchResult => search(text, INDEXES[naming], naming);
const first = (text: string, naming: Naming): string | undefined => {
  const [hit] = find(text, naming).modes;
  const name = hit && INDEXES[naming].file.modes[hit.mode.index]?.[2];
  return name && (hit.scale ? `${hit.scale.root.name} ${name}` : name);
};
const instruments = (text: string, naming: Naming): readonly string[] =>
  find(text, naming).instruments.map(({ instrument: [id], tuning }) => (tuning ? `${id} ${tuning[0]}` : id));

describe.each([
  ['german', 'H dorisch', 'B Dorian'],
  ['german', 'Fis dorisch', 'F# Dorian'],
  ['german', 'B dorisch', 'Bb Dorian'],
  ['german', 'dorisch in Fis', 'F# Dorian'],
  ['german', 'dorisch auf H', 'B Dorian'],
  ['german', 'a-Moll', 'A Aeolian'],
  ['german', 'fis-Moll', 'F# Aeolian'],
  ['german', 'es-Moll', 'Eb Aeolian'],
  ['german', 'C-Dur', 'C Ionian'],
  ['german', 'As-Dur', 'Ab Ionian'],
  ['german', 'Des-Dur-Tonleiter', 'Db Ionian'],
  ['german', 'dorischer Modus in H', 'B Dorian'],
  ['german', 'Fis harmonisch Moll', 'F# harmonic minor'],
  ['german', 'Runde von harmonisch Moll ab Fis', 'F# harmonic minor'],
  ['german', 'vierter Modus von a-Moll harmonisch', 'D Dorian #4'],
  ['german', 'H dorsich', 'B Dorian'],
  ['german', 'F# dorian', 'F# Dorian'],
  ['german', 'B flat Dorian', 'Bb Dorian'],
  ['romance', 'do mayor', 'C Ionian'],
  ['romance', 'SOL mayor', 'G Ionian'],
  ['romance', 'la menor armónica', 'A harmonic minor'],
  ['romance', 'fa# dórico', 'F# Dorian'],
  ['romance', 'fa♯ dórico', 'F# Dorian'],
  ['romance', 'si bemol mayor', 'Bb Ionian'],
  ['romance', 'fa sostenido dórico', 'F# Dorian'],
  ['romance', 'dórico en fa#', 'F# Dorian'],
  ['romance', 'dórico sobre la', 'A Dorian'],
  ['romance', 'dórico en si bemol', 'Bb Dorian'],
  ['romance', 'ré dórico', 'D Dorian'],
  ['romance', 'modo dórico en re', 'D Dorian'],
  ['romance', 'escala de mi menor', 'E Aeolian'],
  ['romance', 'escala menor armónica de la', 'A harmonic minor'],
  ['romance', 'ronda de la menor armónica', 'A harmonic minor'],
  ['romance', 'ronda de la menor armónica desde re', 'D harmonic minor'],
  ['romance', 'cuarto modo de mi menor armónica', 'A Dorian #4'],
  ['romance', 'F# dórico', 'F# Dorian'],
  ['english', 'C sharp minor', 'C# Aeolian'],
  ['english', 'B flat Dorian', 'Bb Dorian'],
  ['english', 'dorian in f-sharp', 'F# Dorian'],
] as const)('in %s names', (naming, text, found) => {
  test(`${text} finds ${found}`, () => {
    expect(first(text, naming)).toBe(found);
  });
});

describe('notes', () => {
  test.each([
    ['german', 'E F Gis A H C D', 'E Phrygian dominant'],
    ['german', 'A H C D E F Gis', 'A harmonic minor'],
    ['german', 'C E G B', 'C Mixolydian'],
    ['romance', 'mi la si do# re', 'E Mixolydian'],
    ['romance', 'la si do re mi fa sol#', 'A harmonic minor'],
    ['romance', 'A B C D E F G#', 'A harmonic minor'],
  ] as const)('%s: %s', (naming, text, found) => {
    expect(find(text, naming).asked.for).toBe('notes');
    expect(first(text, naming)).toBe(found);
  });

  test('of every church mode on every root, as German, do re mi and English have them', () => {
    const modes = CATALOGUE.modes.filter(({ mode }) => mode.base.moved.length === 0);
    expect(modes).toHaveLength(7);
    for (const { mode, name } of modes)
      for (const root of EVERYDAY_ROOTS)
        for (const naming of ['german', 'romance'] as const) {
          const [letter = '', sign = ''] = [root.name.charAt(0), root.name.slice(1)];
          const named = nameNote(letter, sign.replace('b', '♭').replace('#', '♯'), naming);
          const meant = modeMeant(`${named} ${name}`, INDEXES[naming], naming);
          expect([meant?.mode.id, meant?.root?.name], `${named} ${name}`).toEqual([mode.id, root.name]);
        }
  });

  test.each([
    ['german', 'H E A D G H E', 'guitar-7 standard'],
    ['german', 'HEADGHE', 'guitar-7 standard'],
    ['german', 'BEADGBE', 'guitar-7 standard'],
    ['german', 'H0-E1-A1-D2-G2', 'bass-5 low-b'],
    ['german', 'Drop H', 'guitar-6 drop-b'],
    ['german', 'Drop B', 'guitar-6 drop-b'],
    ['german', 'Drop Cis', 'guitar-6 drop-c-sharp'],
    ['romance', 'mi la re sol si mi', 'guitar-6 standard'],
    ['romance', 'drop re', 'guitar-6 drop-d'],
    ['romance', 'bajo drop re', 'bass-4 drop-d'],
  ] as const)('are open strings (%s): %s', (naming, text, found) => {
    expect(instruments(text, naming)[0]).toBe(found);
  });
});

describe('words that are notes as well', () => {
  test.each([
    ['romance', 'la guitarra', 'guitar-6'],
    ['romance', 'mi guitarra', 'guitar-6'],
    ['romance', 'la bandurria', 'bandurria'],
    ['german', 'E-Bass', 'bass-4'],
    ['german', 'low B', 'guitar-7'],
  ] as const)('are no notes before an instrument (%s): %s', (naming, text, found) => {
    expect(instruments(text, naming)[0]).toBe(found);
    expect(find(text, naming).modes).toEqual([]);
  });

  test.each([
    ['romance', 'cuarto modo de la menor armónica', 'Dorian #4'],
    ['romance', 'la escala frigia', 'Phrygian'],
    ['romance', 'dórico en la guitarra', 'Dorian'],
    ['german', '4. Modus des harmonischen Moll', 'Dorian #4'],
    ['german', 'T T H T T T H', 'Ionian'],
    ['german', 'G G H G G G H', 'Ionian'],
  ] as const)('are none where they belong to something else (%s): %s', (naming, text, found) => {
    expect(first(text, naming)).toBe(found);
  });

  test.each([
    ['german', 'H phrygisch auf Bass ab Bund 7', 'B Phrygian', 'bass-4', 7],
    ['german', 'phrygisch in H auf der Mandoline', 'B Phrygian', 'mandolin', undefined],
    ['romance', 'mi frigio en bajo desde el traste 7', 'E Phrygian', 'bass-4', 7],
    ['romance', 'mi frigio en el bajo', 'E Phrygian', 'bass-4', undefined],
    ['romance', 'mi menor guitarra', 'E Aeolian', 'guitar-6', undefined],
  ] as const)('on an instrument (%s): %s', (naming, text, found, on, fret) => {
    const result = find(text, naming);
    expect([first(text, naming), result.on?.instrument[0], result.fret]).toEqual([found, on, fret]);
  });
});

test('what was read in other names is told in English ones, where the page has those', () => {
  const [own, english] = [find('Fis dorisch', 'german'), find('F# dorian', 'german')];
  expect([own.inEnglish, english.inEnglish]).toEqual(['F# dorisch', undefined]);
  expect(searchResultsHtml(own, INDEXES.german)).toContain('<b>F♯ dorisch</b>');
  expect(searchResultsHtml(own, INDEXES.german, 'german')).not.toContain('<b>F♯');
  expect(searchResultsHtml(english, INDEXES.german)).not.toContain('<b>F♯');
});

describe('a German B', () => {
  test('is told to be B flat, and the English one is offered', () => {
    expect(find('B dorisch', 'german').withEnglishB).toBe('H dorisch');
    expect(find('C E G B', 'german').withEnglishB).toBe('C E G H');
    const html = searchResultsHtml(find('B dorisch', 'german'), INDEXES.german);
    expect(html).toContain('?q=H%20dorisch"');
  });

  test.each(['H dorisch', 'Fis dorisch', 'BEADGBE', 'Drop B', 'dorisch', 'Bb dorisch'])(
    'is not in %s',
    (text) => {
      expect(find(text, 'german').withEnglishB).toBeUndefined();
      expect(searchResultsHtml(find(text, 'german'), INDEXES.german)).not.toContain('data-try');
    },
  );
});

describe('instruments by their everyday names, the usual one first', () => {
  test.each([
    ['romance', 'bajo', ['bass-4', 'bass-5', 'bass-6']],
    ['romance', 'bajo de 5 cuerdas', ['bass-5']],
    ['romance', 'guitarra', ['guitar-6']],
    ['romance', 'guitarra de 7 cuerdas', ['guitar-7']],
    ['romance', 'ukelele', ['ukulele-soprano']],
    ['romance', 'laúd', ['laud', 'lute-renaissance-6']],
    ['german', 'Bass', ['bass-4', 'bass-5', 'bass-6']],
    ['german', 'Gitarre', ['guitar-6', 'guitar-7', 'guitar-8']],
    ['german', 'Siebensaiter', ['guitar-7']],
    ['german', '7-saitige Gitarre', ['guitar-7']],
    ['german', 'fünfsaitiger Bass', ['bass-5']],
    ['german', 'Laute', ['lute-renaissance-6']],
  ] as const)('%s: %s', (naming, text, [...ids]) => {
    expect(instruments(text, naming).slice(0, ids.length)).toEqual(ids);
    expect(find(text, naming).modes).toEqual([]);
  });
});

describe('the examples of the page', () => {
  test.each([
    ['english', ENGLISH],
    ['german', GERMAN],
    ['romance', SPANISH],
  ] as const)('find what the page says beside them (%s)', (naming, { examples }) => {
    const { name, alias, aliasMeans, place, root, notes, fewNotes, instrument, where } = examples;
    expect([name, alias, place, root, notes, fewNotes].map((text) => first(text, naming))).toEqual([
      'Phrygian dominant',
      aliasMeans,
      'Dorian #4',
      'F# Dorian #4',
      'A harmonic minor',
      'C Mixolydian',
    ]);
    expect(instruments(instrument, naming)[0]).toBe('bass-5');
    const result = find(where, naming);
    expect([first(where, naming), result.on?.instrument[0], result.fret]).toEqual([
      'E Phrygian',
      'bass-4',
      7,
    ]);
  });
});

describe('readings', () => {
  test.each(['1 b2 3 4 5 b6 b7', '#4 b7', 'b7'])('degrees are no notes to a German reader: %s', (text) => {
    expect(readingsOf(text, 'german')).toEqual([{ text }]);
  });

  test.each(['dorian', 'H dorian', 'a b c', 'la menor', '1 b2 3', 'E F G#'])(
    'an English text is read as it stands: %s',
    (text) => {
      expect(readingsOf(text, 'english')).toEqual([{ text }]);
    },
  );

  test.each(['', '   ', 'constructor', '__proto__', '\u0000', 'la '.repeat(60), 'H'.repeat(500)])(
    'anything is read within a moment: %.9j',
    (text) => {
      const start = Date.now();
      for (const naming of ['german', 'romance'] as const) expect(() => find(text, naming)).not.toThrow();
      expect(Date.now() - start).toBeLessThan(2000);
    },
  );
});
