import { describe, expect, test } from 'vitest';
import { slipsBetween, slipsToBeginning } from './slips.ts';

describe('slips between two words', () => {
  // Levenshtein's distance on the textbook pair (3), and optimal string alignment where it differs from
  // Damerau's unrestricted distance: CA to ABC is 3, not 2 (both recalled from the literature).
  test.each([
    ['kitten', 'sitting', 3],
    ['ca', 'abc', 3],
    ['dorain', 'dorian', 1],
    ['phrigian', 'phrygian', 1],
    ['dominent', 'dominant', 1],
    ['', 'abc', 3],
    ['abc', '', 3],
    ['same', 'same', 0],
  ])('%s and %s: %i', (typed, meant, slips) => {
    expect(slipsBetween(typed, meant, 9)).toBe(slips);
    expect(slipsBetween(meant, typed, 9)).toBe(slips);
  });

  test('are counted no further than asked', () => {
    expect(slipsBetween('lydian', 'locrian', 1)).toBe(2);
    expect(slipsBetween('a', 'abcdefgh', 2)).toBe(3);
  });
});

test.each([
  ['phrig', 'phrygian', 1],
  ['phryg', 'phrygian', 0],
  ['dorina', 'dorian #4', 1],
  ['xyz', 'phrygian', 3],
])('from %s to a beginning of %s: %i', (typed, meant, slips) => {
  expect(slipsToBeginning(typed, meant, 2)).toBe(slips);
});
