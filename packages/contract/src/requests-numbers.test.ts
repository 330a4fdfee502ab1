import { describe, expect, test } from 'vitest';
import type * as z from 'zod';
import { readAs, saidOf } from './given.ts';
import * as requests from './requests.ts';

const { RoundQuery, FingeringsQuery, ModesQuery, RelatedQuery, SearchQuery } = requests;

const numbers: readonly (readonly [string, z.ZodType, 'whole' | 'decimal', number, number, string])[] = [
  ['capo', RoundQuery, 'decimal', 0, 36, 'the fret a capo lies on, 0 for none'],
  ['frets', RoundQuery, 'whole', 1, 36, "the last fret, where it is not the instrument's own"],
  [
    'fret',
    RoundQuery,
    'decimal',
    0,
    36,
    'the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut',
  ],
  ['columns', RoundQuery, 'whole', 1, 7, 'how many necks stand beside one another in a picture'],
  [
    'reach',
    RoundQuery,
    'decimal',
    40,
    200,
    'how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size',
  ],
  [
    'tempo',
    RoundQuery,
    'decimal',
    20,
    400,
    'beats a minute; the lower number of the meter says what a beat is',
  ],
  ['limit', FingeringsQuery, 'whole', 1, 20, 'the most answers'],
  ['limit', ModesQuery, 'whole', 1, 462, 'the most answers'],
  ['limit', SearchQuery, 'whole', 1, 500, 'the most answers'],
  ['limit', RelatedQuery, 'whole', 1, 500, 'the most scales by shared notes'],
  ['shared', RelatedQuery, 'whole', 0, 7, 'the fewest notes in common'],
];

const NOT_NUMBERS: readonly unknown[] = [
  '',
  ' ',
  'NaN',
  'Infinity',
  '-Infinity',
  '1e3',
  '-1',
  '-0',
  '+5',
  '0x10',
  '1,5',
  '5 ',
  ' 5',
  '5;',
  '5\n',
  '5.',
  '.5',
  '٥',
  '９',
  'five',
  'null',
  'undefined',
  'true',
  '[object Object]',
  '9'.repeat(400),
  '1.0000000000000001',
  ['5'],
  ['5', '6'],
  [],
  {},
  null,
  5,
  Number.NaN,
  true,
];

describe('a number', () => {
  test.each(numbers)(
    '%s is refused, with what is right, where it is none',
    (name, schema, kind, from, to, what) => {
      const said = `${name}: a ${kind === 'whole' ? 'whole ' : ''}number from ${from} to ${to}: ${what}`;
      const alsoWrong = [from - 1, to + 1, from - 0.5, to + 0.5, 99999].map(String);
      const fractions = kind === 'whole' ? ['5.5', '5.0'] : ['50.1234'];
      for (const value of [...NOT_NUMBERS, ...alsoWrong, ...fractions]) {
        const messages = new Set(saidOf(schema, name, value));
        expect(messages, JSON.stringify(value)).toEqual(new Set([said]));
      }
    },
  );

  test.each(numbers)(
    '%s is read as a number, from the least to the most',
    (name, schema, _kind, from, to) => {
      for (const value of [from, to, from + 1]) expect(readAs(schema, name, String(value))).toBe(value);
    },
  );

  test.each(numbers.filter(([, , kind]) => kind === 'decimal'))('%s may have decimals', (name, schema) => {
    const within = ['capo', 'fret'].includes(name) ? 6 : 99;
    expect(readAs(schema, name, `${within}.5`)).toBe(within + 0.5);
    expect(readAs(schema, name, `${within}.125`)).toBe(within + 0.125);
  });
});

describe('a number of semitones', () => {
  test.each(['-24', '-2', '0', '7', '24'])('%s may be up or down', (value) => {
    expect(readAs(RoundQuery, 'transpose', value)).toBe(Number(value));
  });

  test.each(['-25', '25', '1.5', '+2', '--2', '', 'down', 'NaN', '- 2', ['2']])('%j is refused', (value) => {
    expect(saidOf(RoundQuery, 'transpose', value)).toEqual([
      'transpose: a whole number from -24 to 24: semitones by which every string is tuned up, or down below zero',
    ]);
  });
});

describe('numbers in one parameter', () => {
  test('are strings that a capo covers, or the lengths of the outer strings', () => {
    expect(readAs(RoundQuery, 'capoStrings', '1,2,14')).toEqual([1, 2, 14]);
    expect(readAs(RoundQuery, 'scaleLength', '648')).toEqual([648]);
    expect(readAs(RoundQuery, 'scaleLength', '686.5-648')).toEqual([686.5, 648]);
  });

  test.each(['', '0', '15', '1,,2', '1;2', '1,2,', 'all', '1,2,3,4,5,6,7,8,9,10,11,12,13,14,1', ['1']])(
    'strings %j are refused',
    (value) => {
      expect(saidOf(RoundQuery, 'capoStrings', value)).toEqual([
        'capoStrings: whole numbers from 1 to 14, parted by commas: the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent',
      ]);
    },
  );

  test.each(['', '199', '1201', '648-', '-648', '648-100', '648-648-648', 'NaN', '6 48', ['648']])(
    'lengths %j are refused',
    (value) => {
      expect(saidOf(RoundQuery, 'scaleLength', value)).toEqual([
        'scaleLength: one length from 200 to 1200, or two joined by a hyphen: the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648',
      ]);
    },
  );
});
