import { CATALOGUE } from '@stillroot/catalog';
import { openStringNames } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { readChoices } from './choices.ts';
import { neckFrom } from './neck-from.ts';

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
  ])('%s is a problem of the field %s, and the rest is still drawn', (query, field) => {
    const { neck, problems } = chosen(query);
    expect(problems.map((problem) => problem.field)).toEqual([field]);
    expect(neck.instrument.id).toBe('guitar-6');
  });
});
