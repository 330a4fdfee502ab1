import { CATALOGUE } from '@stillroot/catalog';
import { openStringNames } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { readChoices } from './choices.ts';
import { neckFrom, playingFrom } from './neck-from.ts';

function chosen(query: string) {
  return neckFrom(readChoices(new URLSearchParams(query)), CATALOGUE.instruments, 'guitar-6');
}

describe('neckFrom', () => {
  test('nothing chosen is the usual instrument in its usual tuning', () => {
    const { neck, problems } = chosen('');
    expect(neck.instrument.id).toBe('guitar-6');
    expect(problems).toEqual([]);
  });

  test('a bass in drop D has its lowest string on D', () => {
    const { neck, problems } = chosen('instrument=bass-4&tuning=drop-d');
    expect(openStringNames(neck.tuning)).toEqual(['D1', 'A1', 'D2', 'G2']);
    expect(problems).toEqual([]);
  });

  test('open strings typed by hand are a tuning', () => {
    const { neck } = chosen('tuning=B1-E2-A2-D3-G3-B3-E4');
    expect(neck.strings).toHaveLength(7);
  });

  test.each([
    ['instrument=zither', 'instrument'],
    ['tuning=B1-H2', 'tuning[1]'],
    ['tuning=nonsense', 'tuning'],
    ['capo=40', 'capo'],
    ['capo=1.5', 'capo'],
    ['reach=999', 'reach'],
    ['transpose=0.5', 'transpose'],
    ['frets=99', 'frets'],
    ['scaleLength=9', 'scaleLength'],
    ['scaleLength=648-0', 'scaleLength'],
    ['scaleLength=long', 'scaleLength'],
    ['capo=2&capoStrings=9', 'capoStrings'],
    ['capoStrings=all', 'capoStrings'],
    ['style=sideways', 'style'],
    ['capo=2x', 'capo'],
    ['capo=abc', 'capo'],
    ['fret=abc', 'fret'],
    ['fret=-3', 'fret'],
    ['fret=30', 'fret'],
    ['reach=0', 'reach'],
    ['reach=wide', 'reach'],
    ['frets=0', 'frets'],
    ['transpose=1e9', 'transpose'],
    ['answer=best', 'answer'],
  ])('%s is a problem of the field %s, and the rest is still drawn', (query, field) => {
    const { neck, problems } = chosen(query);
    expect(problems.map((problem) => problem.field)).toEqual([field]);
    expect(neck.instrument.id).toBe('guitar-6');
  });

  // The neck of the usual guitar has 22 frets, of which the last holds no capo (data/instruments/guitar-6.json).
  test.each([
    ['capo=abc', 'abc', { kind: 'capo-fret', highest: 21 }],
    ['fret=abc', 'abc', { kind: 'fret', highest: 22 }],
    ['fret=30', '30', { kind: 'fret', highest: 22 }],
    ['fret=23&frets=24&capo=x', 'x', { kind: 'capo-fret', highest: 23 }],
    ['reach=0', '0', { kind: 'length-mm', from: 40, to: 200 }],
    ['scaleLength=9', '9', { kind: 'length-mm', from: 200, to: 1200 }],
    ['hand=third', 'third', { kind: 'one-of', choices: ['right', 'left'] }],
  ])('%s is told with what would be right', (query, value, expectation) => {
    expect(chosen(query).problems).toMatchObject([{ value, expectation }]);
  });

  test('what can be had stands beside what cannot, each of which is told', () => {
    const { neck, problems } = chosen('tuning=dadgad&capo=40&frets=24&scaleLength=686-648&capoStrings=x');
    expect(problems.map(({ field }) => field)).toEqual(['capoStrings', 'capo']);
    expect(neck.tuning.id).toBe('dadgad');
    expect(neck.slots).toHaveLength(25);
    expect(neck.strings.map(({ scaleLengthMm }) => Math.round(scaleLengthMm))).toEqual([
      648, 656, 663, 671, 678, 686,
    ]);
  });

  test('letters alone are read with their octaves guessed', () => {
    const { neck, reading } = chosen('tuning=DADGAD');
    expect(openStringNames(neck.tuning)).toEqual(['D2', 'A2', 'D3', 'G3', 'A3', 'D4']);
    expect(reading).toMatchObject({ notation: 'letters', guessed: true });
    expect(chosen('tuning=dadgad').reading).toBeUndefined();
  });

  test('every string is tuned down alike, and the result is known by its name where it has one', () => {
    const { neck } = chosen('tuning=E2-A2-D3-G3-B3-E4&transpose=-2');
    expect(openStringNames(neck.tuning)).toEqual(['D2', 'G2', 'C3', 'F3', 'A3', 'D4']);
  });

  test('a partial capo lies on the strings that were asked for', () => {
    expect(chosen('capo=2&capoStrings=1-3,5').neck.capoStrings).toEqual([1, 2, 3, 5]);
  });

  test('a capo lies at a half fret where there is one', () => {
    const { neck, problems } = chosen('instrument=dulcimer-mountain&capo=6%C2%BD');
    expect([neck.capoFret, problems]).toEqual([6.5, []]);
  });
});

describe('playingFrom', () => {
  test.each([
    ['', 120],
    ['handSize=small', 106],
    ['handSize=large', 135],
    ['handSize=large&reach=110', 110],
    ['handSize=small&reach=999', 106],
  ])('%s reaches %s mm', (query, reachMm) => {
    expect(playingFrom(readChoices(new URLSearchParams(query))).reachMm).toBe(reachMm);
  });
});

describe('a tuning in other names', () => {
  test.each([
    ['tuning=H1-E2-A2-D3-G3-H3-E4&names=german', 'B1 E2 A2 D3 G3 B3 E4'],
    ['tuning=B1-E2&names=german', 'B1 E2'],
    ['tuning=mi2-la2-re3&names=romance', 'E2 A2 D3'],
    ['tuning=Drop+D', 'D2 A2 D3 G3 B3 E4'],
    ['tuning=open+g', 'D2 G2 D3 G3 B3 D4'],
  ])('%s', (query, strings) => {
    const { neck, problems } = chosen(query);
    expect([openStringNames(neck.tuning).join(' '), problems]).toEqual([strings, []]);
  });
});
