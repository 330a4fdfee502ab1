import {
  buildUniverse,
  CHURCH_MODE_NAMES,
  type Mode,
  modesFrom,
  parentScale,
  pitchClassesOf,
  relativeScales,
  rotate,
  spell,
  UNIVERSE,
} from '@stillroot/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rotationsOf, semitonesOfFormula, semitonesOfSteps } from '../reference/by-hand.ts';
import { modeBySteps, rootOf } from '../reference/in-core.ts';

const churchFormulas: Readonly<Record<string, string>> = {
  Ionian: '1 2 3 4 5 6 7',
  Dorian: '1 2 b3 4 5 6 b7',
  Phrygian: '1 b2 b3 4 5 b6 b7',
  Lydian: '1 2 3 #4 5 6 7',
  Mixolydian: '1 2 3 4 5 6 b7',
  Aeolian: '1 2 b3 4 5 b6 b7',
  Locrian: '1 b2 b3 4 b5 b6 b7',
};

/** The rule of bases by sorting all seven candidates: fewest moved degrees, least movement, then the order. */
function baseByRule(mode: Mode): string {
  const candidates = Object.entries(churchFormulas).map(([name, formula], order) => {
    const church = semitonesOfFormula(formula);
    const sizes = mode.semitones.map((semitone, at) => Math.abs(semitone - (church[at] ?? Number.NaN)));
    const moved = sizes.filter((size) => size > 0).length;
    return { name, order, moved, movement: sizes.reduce((sum, size) => sum + size, 0) };
  });
  const [best] = candidates.toSorted(
    (a, b) => a.moved - b.moved || a.movement - b.movement || a.order - b.order,
  );
  return best?.name ?? '';
}

/** The formula that a systematic name stands for: its base with the named degrees put in place. */
function formulaFromName(name: string): string {
  const [base = '', ...named] = name.split(' ');
  const degrees = (churchFormulas[base] ?? '').split(' ');
  for (const degree of named) {
    const plain = degree.replace('nat', '');
    degrees[Number(plain.replace(/[b#]/g, '')) - 1] = plain;
  }
  return degrees.join(' ');
}

const everyMode = fc.constantFrom(...UNIVERSE.modes);

describe('every mode', () => {
  test('has steps that sum to 12, degrees that follow from them and a formula that says the same', () => {
    for (const mode of UNIVERSE.modes) {
      expect(mode.steps.reduce((sum, step) => sum + step, 0)).toBe(12);
      expect(mode.steps.every((step) => step >= 1)).toBe(true);
      expect(mode.id).toBe(mode.steps.join(''));
      expect(mode.semitones).toEqual(semitonesOfSteps(mode.steps));
      expect(semitonesOfFormula(mode.formula.join(' '))).toEqual(mode.semitones);
    }
  });

  test('has an id and a systematic name of its own', () => {
    expect(new Set(UNIVERSE.modes.map((mode) => mode.id)).size).toBe(462);
    expect(new Set(UNIVERSE.modes.map((mode) => mode.systematicName)).size).toBe(462);
  });

  test('stands at its own index and is found by its id', () => {
    for (const [at, mode] of UNIVERSE.modes.entries()) {
      expect(mode.index).toBe(at);
      expect(UNIVERSE.modesById.get(mode.id)).toBe(mode);
    }
  });

  test('lies in the family of each of its rotations', () => {
    for (const mode of UNIVERSE.modes) {
      const found = rotationsOf(mode.steps).map((steps) => modeBySteps(steps.join('')));
      expect(new Set(found.map((one) => one.familyId))).toEqual(new Set([mode.familyId]));
      expect(modesFrom(mode)).toEqual(found);
      for (let by = 0; by < 7; by += 1) expect(rotate(mode.steps, by)).toEqual(found[by]?.steps);
    }
  });

  test('is read from the base that the rule gives', () => {
    for (const mode of UNIVERSE.modes) expect(mode.base.name).toBe(baseByRule(mode));
    expect(Object.keys(churchFormulas)).toEqual(CHURCH_MODE_NAMES);
  });

  test('is told by its systematic name, which names exactly the degrees that moved', () => {
    for (const mode of UNIVERSE.modes) {
      expect(formulaFromName(mode.systematicName)).toBe(mode.formula.join(' '));
      const base = (churchFormulas[mode.base.name] ?? '').split(' ');
      const moved = mode.formula.filter((degree, at) => degree !== base[at]);
      expect(mode.systematicName.split(' ')).toHaveLength(1 + moved.length);
    }
  });

  test('has a brightness that is the sum of its alterations', () => {
    for (const mode of UNIVERSE.modes) {
      const signs = mode.formula.join('');
      expect(mode.brightness).toBe(signs.split('#').length - signs.split('b').length);
    }
  });
});

describe('every family', () => {
  test('is headed by its one brightest mode', () => {
    for (const { id, modes } of UNIVERSE.families) {
      const [brightest, second] = modes.toSorted((a, b) => b.brightness - a.brightness);
      expect(brightest?.id).toBe(id);
      expect(modes[0]).toBe(brightest);
      expect(second?.brightness).toBeLessThan(brightest?.brightness ?? Number.NaN);
    }
  });

  test('comes before the families whose head is darker', () => {
    const heads = UNIVERSE.families.map(({ modes }) => modes[0]?.brightness ?? Number.NaN);
    expect(heads).toEqual(heads.toSorted((a, b) => b - a));
  });

  test('is built the same a second time', () => {
    expect(buildUniverse().modes).toEqual(UNIVERSE.modes);
  });
});

describe('any mode on any everyday root', () => {
  const anyRoot = fc.constantFrom('C', 'D', 'E', 'F', 'G', 'A', 'B', 'Bb', 'Eb', 'F#', 'C#');

  test('has seven relatives with its notes, each the parent of it', () => {
    fc.assert(
      fc.property(everyMode, anyRoot, (mode, root) => {
        const scale = spell(mode, rootOf(root));
        const notes = pitchClassesOf(scale).toSorted();
        const relatives = relativeScales(scale);
        expect(relatives[0]).toBe(scale);
        expect(relatives.map((one) => one.root.pitchClass)).toEqual(pitchClassesOf(scale));
        for (const relative of relatives) {
          expect(pitchClassesOf(relative).toSorted()).toEqual(notes);
          const parent = parentScale(scale, relative.mode);
          expect(parent).toBe(relative);
          expect(parentScale(parent, scale.mode).root.pitchClass).toBe(scale.root.pitchClass);
        }
      }),
      { numRuns: 300 },
    );
  });
});
