import { expect, test } from 'vitest';
import * as de from './de/numbers.ts';
import * as en from './en/numbers.ts';
import * as es from './es/numbers.ts';
import { fretWords } from './measures.ts';

// ISO 80000-1 (7.3.2): the decimal sign is a comma or a point on the line. German and Spanish have the comma
// (DIN 1333; Real Academia Española, Ortografía; both recalled).
test.each([
  [863.6, '863.6 mm', '863,6 mm'],
  [648, '648 mm', '648 mm'],
  [48.46, '48.5 mm', '48,5 mm'],
])('%f millimetres', (lengthMm, english, other) => {
  expect(en.lengthWords(lengthMm)).toBe(english);
  expect([de, es].map(({ lengthWords }) => lengthWords(lengthMm))).toEqual([other, other]);
});

test('in a column every length has its tenth', () => {
  expect([en, de, es].map(({ tenths }) => tenths(0, true))).toEqual(['0.0', '0,0', '0,0']);
});

test('half a fret is a half', () => {
  expect([fretWords(6.5), fretWords(13.5), fretWords(12)]).toEqual(['6½', '13½', '12']);
});
