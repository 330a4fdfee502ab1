import { describe, expect, test } from 'vitest';
import { carryChoices, choosesAnything, readChoices, writeChoices } from './choices.ts';

const WHOLE =
  'instrument=bass-4&tuning=drop-d&capo=2&labels=notes&hand=left&style=three-per-string&fret=5&reach=110&order=brightness';

describe('choices in an address', () => {
  test('everything that can be chosen is written as it was read', () => {
    expect(writeChoices(readChoices(new URLSearchParams(WHOLE))).toString()).toBe(WHOLE);
  });

  test('defaults are left out', () => {
    const plain = new URLSearchParams('capo=0&hand=right&style=position&order=parent');
    expect(writeChoices(readChoices(plain)).toString()).toBe('');
  });

  test('fret 0, the open position, is a choice', () => {
    expect(writeChoices(readChoices(new URLSearchParams('fret=0'))).toString()).toBe('fret=0');
  });

  test.each([
    'labels=__proto__',
    'hand=constructor',
    'style=',
    'capo=-3',
    'fret=NaN',
    'reach=1e999',
    '%%%=%',
    '{"a":',
  ])('what cannot be read is not chosen: %s', (text) => {
    expect(writeChoices(readChoices(new URLSearchParams(text))).toString()).toBe('');
  });

  test('a tuning typed by hand keeps its slashes and hyphens', () => {
    const query = writeChoices(readChoices(new URLSearchParams({ tuning: 'G3/G3-D4/D4-A4/A4-E5/E5' })));
    expect(query.get('tuning')).toBe('G3/G3-D4/D4-A4/A4-E5/E5');
  });

  test('only choices count as choices', () => {
    expect(choosesAnything(new URLSearchParams('utm=1'))).toBe(false);
    expect(choosesAnything(new URLSearchParams('capo=2'))).toBe(true);
  });
});

describe('carryChoices', () => {
  const choices = new URLSearchParams('instrument=bass-4');
  const origin = 'https://example.org';

  test('a page of this site takes them along', () => {
    expect(carryChoices('/modes/dorian/a/', choices, origin)).toBe('/modes/dorian/a/?instrument=bass-4');
    expect(carryChoices('/modes/#Dorian', choices, origin)).toBe('/modes/?instrument=bass-4#Dorian');
  });

  test.each(['/modes/dorian/a/?instrument=guitar-7', '/v1/rounds/major/C.svg', 'https://example.com/'])(
    '%s stays as it is',
    (href) => {
      expect(carryChoices(href, choices, origin)).toBe(href);
    },
  );
});
