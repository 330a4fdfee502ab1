import { describe, expect, test } from 'vitest';
import type * as z from 'zod';
import { readAs, saidOf } from './given.ts';
import * as requests from './requests.ts';

const { RoundQuery, ModesQuery, RelatedQuery, SearchQuery, CompareQuery, ScalePath } = requests;

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

describe('chords', () => {
  test.each([
    ['Am,E7', ['Am', 'E7']],
    ['Am E7', ['Am', 'E7']],
    [' Am , E7 ,', ['Am', 'E7']],
    ['G7(b9,b13) Cmaj7', ['G7(b9,b13)', 'Cmaj7']],
    ['C 1 b3 bb5,Db', ['C 1 b3 bb5', 'Db']],
    ['C 1 3 #5 F', ['C 1 3 #5', 'F']],
    ['C  1  b3 F', ['C  1  b3', 'F']],
  ])('%s are %j', (text, symbols) => {
    expect(readAs(SearchQuery, 'chords', text)).toEqual(symbols);
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
