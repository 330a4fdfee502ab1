import { CATALOGUE, plainCatalogue } from '@stillroot/catalog';
import { expect, test } from 'vitest';
import { findInstruments } from './find-instruments.ts';

const { instruments } = plainCatalogue(CATALOGUE);
const found = (text: string): readonly string[] => findInstruments(text, instruments);

test('nothing typed fits everything', () => {
  expect(found('')).toEqual(instruments.map(({ id }) => id));
  expect(found('strings')).toHaveLength(instruments.length);
});

test.each([
  'bass five strings low B',
  'bass, 5 strings',
  '5-string bass low b',
  'bass five',
  'LOW B BASS FIVE',
])('%s finds the five-string bass, and no guitar', (text) => {
  expect(found(text)).toContain('bass-5');
  expect(found(text).filter((id) => id.startsWith('guitar'))).toEqual([]);
});

test('five strings or courses and a low B are told from other low notes', () => {
  expect(found('five strings low B')).toEqual(['bass-5', 'viola-caipira', 'cuatro-puertorriqueno']);
});

test.each(['5 Saiten, tiefes B', '5 cuerdas, B grave', '5 Saiten B tief'])(
  '%s says the same in another language',
  (text) => {
    expect(found(text)).toEqual(found('five strings low B'));
  },
);

test('a high note is no low one', () => {
  expect(found('5 Saiten, hohes C')).toEqual(found('five strings high C'));
  expect(found('5 cuerdas, C agudo')).toEqual(found('five strings high C'));
  expect(found('five strings high C')).not.toEqual(found('five strings low C'));
});

test.each([
  ['DADGAD', 'guitar-6'],
  ['d a d g a d', 'guitar-6'],
  ['mandolin', 'mandolin'],
  ['mandlin', 'mandolin'],
  ['dulcimer', 'dulcimer-mountain'],
  ['eight strings four courses mandolin', 'mandolin'],
])('%s finds %s', (text, id) => {
  expect(found(text)).toContain(id);
});

test('every instrument is found by its name and by its id', () => {
  for (const { id, name } of instruments) {
    expect(found(name)).toContain(id);
    expect(found(id)).toContain(id);
  }
});

test.each(['xylophone', 'guitar thirteen strings', '<script>'])('%s finds nothing', (text) => {
  expect(found(text)).toEqual([]);
});

test.each([
  ['german', 'tiefes H', 'bass-5'],
  ['german', 'H E A D G', 'bass-5'],
  ['german', 'HEADG', 'bass-5'],
  ['german', 'low B', 'bass-5'],
  ['romance', 'si mi la re sol', 'bass-5'],
  ['dutch', 'B E A D G', 'bass-5'],
] as const)('in %s names %s finds %s, and no ukulele', (naming, text, id) => {
  const ids = findInstruments(text, instruments, naming);
  expect(ids).toContain(id);
  expect(ids).not.toContain('ukulele-tenor');
});
