import { describe, expect, test } from 'vitest';
import { singular, termsOf } from './instrument-terms.ts';

/** Terms in short: `5 strings`, `=beadg`, `low-b`. */
const shortOf = (text: string) =>
  termsOf(text).map((term) => {
    if (term.says === 'count') return `${term.count} ${term.of}`;
    return term.says === 'notes' ? `=${term.letters}` : term.word;
  });

describe('termsOf', () => {
  test.each([
    ['five string bass, low B', ['5 strings', 'bass', 'low-b']],
    ['5-string', ['5 strings']],
    ['5string', ['5 strings']],
    ['5 st', ['5 strings']],
    ['twelve strings', ['12 strings']],
    ['six courses', ['6 courses']],
    ['bass 6', ['bass', '6 strings']],
    ['BEADG', ['=beadg']],
    ['d a d g a d guitar', ['=dadgad', 'guitar']],
    ['E2-A2-D3-G3-B3-E4', ['=eadgbe']],
    ['E♭ A♭ D♭ G♭ B♭ E♭', ['=ebabdbgbbbeb']],
    ['Drop C sharp', ['drop-c#']],
    ['open E-flat', ['open-eb']],
    ['C, drop C (g C G B D)', ['c', 'drop-c', '=gcgbd']],
    ["French: a g d' e'", ['french', '=agde']],
    ['the tuning of a Cebolão', ['cebolao']],
    ['Mandolins and basses', ['mandolin', 'basse']],
    ['low', ['low']],
    ['', []],
    ['- , ()', []],
  ])('%j says %j', (text, terms) => {
    expect(shortOf(text)).toEqual(terms);
  });

  test('reads no further than a name is long', () => {
    expect(termsOf('guitar '.repeat(100_000)).length).toBeLessThanOrEqual(12);
  });
});

describe('singular', () => {
  test.each([
    ['guitars', 'guitar'],
    ['bass', 'bass'],
    ['ukuleles', 'ukulele'],
  ])('%s is %s', (plural, word) => {
    expect(singular(plural)).toBe(word);
  });
});
