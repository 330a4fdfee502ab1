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
