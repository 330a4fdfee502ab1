import { describe, expect, test } from 'vitest';
import { choosesAnything } from './choice-keys.ts';
import { carryChoices, readChoices, writeChoices } from './choices.ts';

const WHOLE =
  'instrument=bass-4&tuning=drop-d&transpose=-2&capo=6.5&capoStrings=1%2C2&frets=24&scaleLength=864-813&labels=notes&hand=left&style=three-per-string&answer=2&fret=5&open=never&handSize=large&reach=110&order=brightness&sharing=own-areas&compare=base&names=german&accidentals=ascii';

describe('choices in an address', () => {
  test('everything that can be chosen is written as it was read', () => {
    expect(writeChoices(readChoices(new URLSearchParams(WHOLE))).toString()).toBe(WHOLE);
  });

  test('defaults are left out', () => {
    const plain = new URLSearchParams(
      'transpose=0&capo=0&hand=right&style=position&answer=1&open=near-the-nut&handSize=medium&order=parent&sharing=one-area&compare=above&names=english&accidentals=signs',
    );
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

  test('what cannot be read is kept aside, and nothing else is lost', () => {
    const choices = readChoices(new URLSearchParams('capo=2x&style=sideways&tuning=DADGAD&transpose=1e2'));
    expect(choices.unread).toEqual({ capo: '2x', style: 'sideways', transpose: '1e2' });
    expect(writeChoices(choices).toString()).toBe('tuning=DADGAD');
  });

  test.each([
    ['capo=6%C2%BD', 'capo=6.5'],
    ['capo=6,5', 'capo=6.5'],
    ['transpose=%E2%88%922', 'transpose=-2'],
  ])('numbers are read as people write them: %s', (typed, written) => {
    expect(writeChoices(readChoices(new URLSearchParams(typed))).toString()).toBe(written);
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

  test('what a link chooses already stays, and nothing of another instrument is added', () => {
    const left = new URLSearchParams('instrument=bass-4&tuning=drop-d&hand=left&answer=3');
    expect(carryChoices('/rounds/major/e/?instrument=bass-4', left, origin)).toBe(
      '/rounds/major/e/?instrument=bass-4&tuning=drop-d&hand=left',
    );
    expect(carryChoices('/rounds/major/e/?instrument=guitar-7', left, origin)).toBe(
      '/rounds/major/e/?instrument=guitar-7&hand=left',
    );
    expect(carryChoices('/rounds/major/e/?instrument=bass-4&tuning=bead', left, origin)).toBe(
      '/rounds/major/e/?instrument=bass-4&tuning=bead&hand=left',
    );
  });

  test.each(['/modes/dorian/a/?instrument=guitar-7', '/v1/rounds/major/C.svg', 'https://example.com/'])(
    '%s stays as it is',
    (href) => {
      expect(carryChoices(href, choices, origin)).toBe(href);
    },
  );
});
