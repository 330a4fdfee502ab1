import { UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { modeKey } from './name-key.ts';
import { slugOf } from './slug.ts';

describe('slugOf', () => {
  test.each([
    ['Dorian #4', 'dorian-sharp4'],
    ['Locrian b4 bb7', 'locrian-b4-bb7'],
    ['Locrian nat6', 'locrian-nat6'],
    ['Locrian ♮6', 'locrian-nat6'],
    ['Lydian ##4 ###5', 'lydian-doublesharp4-triplesharp5'],
    ['Lydian ####2', 'lydian-quadruplesharp2'],
    ['Enigmatic (descending)', 'enigmatic-descending'],
    ['Rōmání / minor', 'romani-minor'],
    ['Lydian-Mixolydian', 'lydian-mixolydian'],
  ])('%s is %s', (name, slug) => {
    expect(slugOf(name)).toBe(slug);
  });

  test('leads back to the name it was made from', () => {
    for (const { systematicName } of UNIVERSE.modes) {
      expect(modeKey(slugOf(systematicName))).toBe(modeKey(systematicName));
    }
  });
});
