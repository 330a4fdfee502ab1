import { describe, expect, test } from 'vitest';
import type * as z from 'zod';
import * as requests from './requests.ts';

const { RoundQuery, FingeringsQuery, ModesQuery, RelatedQuery, SearchQuery, CompareQuery, ScalePath } =
  requests;

/** What is said about one parameter when it alone is given beside what must be. */
function saidOf(schema: z.ZodType, name: string, value: unknown): readonly string[] {
  const base = schema === SearchQuery ? { notes: 'A' } : schema === CompareQuery ? { a: 'x', b: 'y' } : {};
  const { error } = schema.safeParse({ ...base, [name]: value });
  return (error?.issues ?? []).map(({ path, message }) => `${path.join('.')}: ${message}`);
}

/** What a parameter is read as, among what must be given. */
function readAs(schema: z.ZodType, name: string, value: unknown): unknown {
  const base = schema === SearchQuery ? { notes: 'A' } : schema === CompareQuery ? { a: 'x', b: 'y' } : {};
  return (schema.parse({ ...base, [name]: value }) as Readonly<Record<string, unknown>>)[name];
}

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

describe('a choice', () => {
  test.each([
    ['style', 'one of position, three-per-string, one-string, two-octaves, whole-range, across-the-neck'],
    ['open', 'one of near-the-nut, anywhere, never'],
    ['handSize', 'one of small, medium, large'],
    ['sharing', 'one of one-area, own-areas'],
    ['labels', 'one of degrees, notes, fingers'],
    ['hand', 'one of right, left'],
    ['order', 'one of parent, brightness, fewest-moves'],
    [
      'pattern',
      'one of up, down, up-and-down, thirds, fourths, groups-of-three, groups-of-four, random-walk, degree-and-root',
    ],
    ['spelling', 'one of strict, readable'],
  ])('of %s is refused, with what there is, where it is none of them', (name, said) => {
    for (const value of [
      '',
      'Left',
      ' up',
      'constructor',
      '__proto__',
      '0',
      '9'.repeat(400),
      ['up', 'down'],
      ['up'],
      {},
      null,
    ]) {
      expect(saidOf(RoundQuery, name, value)).toEqual([`${name}: ${said}`]);
    }
    for (const value of said.replace('one of ', '').split(', '))
      expect(readAs(RoundQuery, name, value)).toBe(value);
  });
});

describe('what is played', () => {
  test.each([
    ['meter', '7/8', { beats: 7, unit: 8 }],
    ['meter', '12/16', { beats: 12, unit: 16 }],
    ['drone', 'true', true],
    ['drone', 'false', false],
    ['vamp', 'true', true],
    ['vamp', 'false', false],
    ['vamp', '1,4', [1, 4]],
    ['seed', '4294967295', 4_294_967_295],
  ])('%s=%s is read', (name, value, read) => {
    expect(readAs(RoundQuery, name, value)).toEqual(read);
  });

  test.each([
    ['meter', ['', '4', '1/4', '13/8', '4/3', '4/4/4', '٤/٤', '__proto__', '-4/4', ['4/4']]],
    ['drone', ['', 'yes', '1', 'TRUE', ['true']]],
    ['vamp', ['', 'yes', '0', '8', '1,', '1,,4', '1,2,3,4,5,6,7,1,2,3,4,5,6,7,1,2,3', ['1']]],
    ['seed', ['', '0', '-1', '4294967296', '1e3', '1.5']],
    ['bars', ['0', '65', 'NaN']],
    ['countIn', ['5', '-1']],
    ['repeats', ['0', '17']],
    ['rest', ['49']],
    ['value', ['', 'crotchet', 'constructor']],
  ])('%s is refused where it is none of what it may be', (name, values) => {
    for (const value of values) {
      const said = saidOf(RoundQuery, name, value);
      expect(said, JSON.stringify(value)).toHaveLength(1);
      expect(said[0]).toMatch(new RegExp(`^${name}: .{4}`));
    }
  });
});

describe('a name', () => {
  const names: readonly (readonly [string, z.ZodType, string])[] = [
    ['mode', ScalePath, 'a mode: its steps (2131212), its slug (phrygian-dominant), or a name'],
    ['root', ScalePath, 'a root: A, Bb, F%23 or Fs'],
    ['instrument', RoundQuery, 'an instrument id or name'],
    ['a', CompareQuery, 'a mode'],
    ['notes', SearchQuery, 'notes the scale must hold, the likely root first: A,B,C,D,E,F,G%23'],
  ];

  test.each(names)(
    '%s is refused, with what is right, where it is empty, too long or given twice',
    (name, schema, what) => {
      const said = (value: unknown) =>
        saidOf(schema, name, value).filter((line) => line.startsWith(`${name}: `));
      for (const value of ['', ' ', '\t\n', ['A', 'B'], ['A'], {}, null, 7]) {
        expect(new Set(said(value)), JSON.stringify(value)).toEqual(new Set([`${name}: ${what}`]));
      }
      expect(said('9'.repeat(400))).toEqual([`${name}: ${what}; at most 200 characters`]);
      expect(said('x'.repeat(201))).toHaveLength(1);
      expect(said('x'.repeat(200))).toEqual([]);
    },
  );

  test('is read without the spaces around it, and otherwise as it came', () => {
    expect(ScalePath.parse({ mode: ' Dorian ', root: 'F#' })).toEqual({ mode: 'Dorian', root: 'F#' });
    expect(ScalePath.parse({ mode: 'constructor', root: '__proto__' })).toEqual({
      mode: 'constructor',
      root: '__proto__',
    });
  });
});

describe('a list', () => {
  test.each([
    ['A,B,C', ['A', 'B', 'C']],
    ['A B  C', ['A', 'B', 'C']],
    [' A, ,B,, C ,', ['A', 'B', 'C']],
    ['F#', ['F#']],
  ])('%j has its items between commas or spaces', (value, items) => {
    expect(readAs(SearchQuery, 'notes', value)).toEqual(items);
    expect(readAs(ModesQuery, 'contains', value)).toEqual(items);
  });

  test.each([[','], [', ,'], [' , ']])('%j is refused, for it has none', (value) => {
    expect(saidOf(SearchQuery, 'notes', value)).toHaveLength(1);
    expect(saidOf(ModesQuery, 'contains', value)).toEqual(['contains: degrees the mode must have: b3,%234']);
  });
});

describe('a query', () => {
  test('of nothing is a query of what is usual', () => {
    expect(RoundQuery.parse({})).toEqual({
      instrument: 'guitar-6',
      transpose: 0,
      capo: 0,
      style: 'position',
      open: 'near-the-nut',
      handSize: 'medium',
      sharing: 'one-area',
      labels: 'degrees',
      hand: 'right',
      order: 'parent',
      columns: 1,
      pattern: 'up',
      value: 'quarter',
      tempo: 80,
      meter: { beats: 4, unit: 4 },
      countIn: 0,
      repeats: 1,
      rest: 0,
      drone: false,
      vamp: false,
      seed: 1,
      spelling: 'strict',
    });
    expect(ModesQuery.parse({})).toEqual({ limit: 20, offset: 0 });
    expect(RelatedQuery.parse({})).toEqual({ shared: 6, limit: 40, offset: 0 });
  });

  test('that must have something says which is missing', () => {
    const missing = (schema: z.ZodType) =>
      schema.safeParse({}).error?.issues.map(({ path }) => path.join('.'));
    expect(missing(CompareQuery)).toEqual(['a', 'b']);
    expect(missing(requests.RouteQuery)).toEqual(['from', 'to']);
    expect(missing(SearchQuery)).toEqual(['notes']);
  });

  test('with several mistakes is told all of them at once', () => {
    const { error } = RoundQuery.safeParse({
      capo: '-1',
      tempo: 'fast',
      hand: 'both',
      instrument: '',
      colour: 'red',
    });
    const paths = error?.issues.map(({ path, code }) => path.join('.') || code);
    expect(paths?.toSorted()).toEqual(['capo', 'hand', 'instrument', 'tempo', 'unrecognized_keys']);
  });
});
