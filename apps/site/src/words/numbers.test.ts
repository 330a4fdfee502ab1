import { expect, test } from 'vitest';
import { capitalised, counted, joined, numberWord, ordinal, ordinalWord, withMinus } from './numbers.ts';

test.each([
  [1, '1st'],
  [2, '2nd'],
  [3, '3rd'],
  [4, '4th'],
  [11, '11th'],
  [12, '12th'],
  [13, '13th'],
  [21, '21st'],
])('%i is the %s', (place, words) => {
  expect(ordinal(place)).toBe(words);
});

test('places and counts have words', () => {
  expect(ordinalWord(5)).toBe('fifth');
  expect(numberWord(6)).toBe('six');
  expect(numberWord(24)).toBe('24');
});

test('lists end with and', () => {
  expect([joined([]), joined(['a']), joined(['a', 'b']), joined(['a', 'b', 'c'])]).toEqual([
    '',
    'a',
    'a and b',
    'a, b and c',
  ]);
});

test('nouns follow their count', () => {
  expect([counted(1, 'mode'), counted(7, 'mode')]).toEqual(['1 mode', '7 modes']);
  expect([1, 66].map((count) => counted(count, 'family', 'families'))).toEqual(['1 family', '66 families']);
  expect(capitalised('harmonic minor')).toBe('Harmonic minor');
});

test('a minus is a minus, not a hyphen', () => {
  expect([withMinus(-5), withMinus(0), withMinus(13)]).toEqual(['−5', '0', '13']);
});
