import { degreeIn, modesFrom } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { modeOf } from './in-core.ts';
import { brightness } from './tables/brightness.ts';

/** Names by habit where the rule finds another base, or writes the moved degree out. */
const namedByHabit: Readonly<Record<string, string>> = {
  'Lydian augmented': 'Lydian #5',
  // One moved degree from Aeolian as from Locrian, and Aeolian comes first.
  'Locrian nat2': 'Aeolian b5',
};

const firstModes: Readonly<Record<string, string>> = {
  major: '1 2 3 4 5 6 7',
  'melodic minor': '1 2 b3 4 5 6 7',
  'harmonic minor': '1 2 b3 4 5 b6 7',
  'harmonic major': '1 2 3 4 5 b6 7',
};

describe('the brightness of modes (A. Neely, 2010)', () => {
  test.each(brightness)('of %s, mode %i, %s (%s), is %i', (family, number, name, formula, sum) => {
    const mode = modeOf(formula);
    expect(mode.brightness).toBe(sum);
    expect(degreeIn(modeOf(firstModes[family] ?? ''), mode)).toBe(number);
    expect(mode.systematicName).toBe(namedByHabit[name] ?? name);
  });

  test.each(Object.entries(firstModes))('orders the modes of %s (%s) as printed', (family, formula) => {
    const printed = brightness.filter(([of]) => of === family).map(([, , , written]) => written);
    const ordered = modesFrom(modeOf(formula)).toSorted((a, b) => b.brightness - a.brightness);
    expect(ordered.map((mode) => mode.formula.join(' '))).toEqual(printed);
  });

  test('leaves only two of the 28 printed names outside the rule of systematic names', () => {
    const outside = brightness.filter(([, , name, formula]) => modeOf(formula).systematicName !== name);
    expect(brightness).toHaveLength(28);
    expect(outside.map(([, , name]) => name)).toEqual(Object.keys(namedByHabit));
  });
});
