import { UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { numbersOf, rotationsOf, stepsOf } from './by-hand.ts';
import { modeBySteps, modeOf } from './in-core.ts';
import { melas, swaras } from './tables/melas.ts';

const degreeOfSwara = new Map(swaras.map(([swara, , degree]) => [swara, degree]));
const semitonesOfSwara = new Map(swaras.map(([swara, semitones]) => [swara, semitones]));

/**
 * The rule of numbering: M1 before M2; within each, the six pairs of R and G; within each, the six pairs of D
 * and N.
 */
function swarasByRule(): readonly string[] {
  const pairs = ['1 1', '1 2', '1 3', '2 2', '2 3', '3 3'].map((pair) => pair.split(' '));
  const rows: string[] = [];
  for (const ma of ['M1', 'M2']) {
    for (const [r, g] of pairs) {
      for (const [d, n] of pairs) rows.push(`S R${r} G${g} ${ma} P D${d} N${n}`);
    }
  }
  return rows;
}

describe('the 72 melas', () => {
  test('are numbered 1 to 72 by the rule of their swaras', () => {
    expect(melas.map(([number]) => number)).toEqual(Array.from({ length: 72 }, (_, at) => at + 1));
    expect(melas.map(([, , written]) => written)).toEqual(swarasByRule());
  });

  test.each(melas)('mela %i, %s, %s, is %s semitones', (_number, _name, written, semitones) => {
    const formula = written
      .split(' ')
      .map((swara) => degreeOfSwara.get(swara) ?? '?')
      .join(' ');
    const sounding = written.split(' ').map((swara) => semitonesOfSwara.get(swara));
    const mode = modeOf(formula);
    expect(sounding).toEqual(numbersOf(semitones));
    expect(mode.semitones).toEqual(numbersOf(semitones));
    expect(mode.formula.join(' ')).toBe(formula);
    expect(mode.id).toBe(stepsOf(numbersOf(semitones)).join(''));
  });

  test('are exactly the modes whose fifth is perfect and which hold one of the two fourths, not both', () => {
    const held = UNIVERSE.modes.filter(
      ({ formula, semitones }) => formula[4] === '5' && semitones.includes(5) !== semitones.includes(6),
    );
    const ids = melas.map(([, , , semitones]) => stepsOf(numbersOf(semitones)).join(''));
    expect(held.map((mode) => mode.id).toSorted()).toEqual(ids.toSorted());
  });

  test('lie in 36 families, counted by core and by comparing rotations', () => {
    const steps = melas.map(([, , , semitones]) => stepsOf(numbersOf(semitones)));
    const byRotation = new Set(steps.map((one) => rotationsOf(one).map(String).toSorted()[0]));
    const byCore = new Set(steps.map((one) => modeBySteps(one.join('')).familyId));
    expect(byRotation.size).toBe(36);
    expect(byCore.size).toBe(36);
  });
});
