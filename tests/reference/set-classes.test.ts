import { commonCount, familyOf, setOf, UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { intervalVectorOf, numbersOf, rotationsOf, semitonesOfSteps } from './by-hand.ts';
import { everyPlacement, modeBySteps, modeOf } from './in-core.ts';
import { namedClasses, rahnPrimeForms, setClasses } from './tables/set-classes.ts';

type Order = (a: readonly number[], b: readonly number[]) => number;

/** Smallest span first, then packed to the left: the first interval that differs decides (Forte). */
const packedFromTheLeft: Order = (a, b) => {
  const span = (a[6] ?? 0) - (b[6] ?? 0);
  const at = a.findIndex((semitone, place) => semitone !== b[place]);
  return span || (a[at] ?? 0) - (b[at] ?? 0);
};

/** Smallest span first, then the next largest interval from the right (Rahn). */
const packedFromTheRight: Order = (a, b) => {
  const at = a.findLastIndex((semitone, place) => semitone !== b[place]);
  return (a[at] ?? 0) - (b[at] ?? 0);
};

/** The best packed of a family's modes and of their mirror images. */
function primeFormOf(steps: string, order: Order): string {
  const { modes } = familyOf(modeBySteps(steps));
  const both = modes.flatMap((mode) => [mode.semitones, semitonesOfSteps(mode.steps.toReversed())]);
  return (both.toSorted(order)[0] ?? []).join(' ');
}

const formsOf = (name: string, a: string, b: string | undefined) =>
  b === undefined
    ? [[name, a] as const]
    : ([
        [`${name}A`, a],
        [`${name}B`, b],
      ] as const);
const forms = setClasses.flatMap(([name, , , , a, b]) => formsOf(name, a, b));

describe('the 38 set classes of seven notes (A. Forte, 1973)', () => {
  test('hold the 66 families, one for each form: 10 classes of one and 28 of two', () => {
    expect(setClasses).toHaveLength(38);
    expect(setClasses.filter(([, , , , , b]) => b === undefined)).toHaveLength(10);
    const families = forms.map(([, steps]) => modeBySteps(steps).familyId);
    expect(families.toSorted()).toEqual(UNIVERSE.families.map((family) => family.id).toSorted());
  });

  test.each(setClasses)('%s has the prime form %s and the interval vector %s', (...row) => {
    const [name, primeForm, vector, , a, b] = row;
    for (const steps of b === undefined ? [a] : [a, b]) {
      expect(primeFormOf(steps, packedFromTheLeft)).toBe(primeForm);
      expect(primeFormOf(steps, packedFromTheRight)).toBe(rahnPrimeForms[name] ?? primeForm);
      for (const mode of familyOf(modeBySteps(steps)).modes) {
        expect(intervalVectorOf(mode.semitones).join(' ')).toBe(vector);
      }
    }
  });

  test.each(setClasses)('%s: form A holds the prime form %s, form B is its mirror image', (...row) => {
    const [, primeForm, , , a, b] = row;
    const { modes } = familyOf(modeBySteps(a));
    expect(modes.map((mode) => mode.semitones)).toContainEqual(numbersOf(primeForm));
    const mirrored = rotationsOf([...a].map(Number).toReversed()).map((steps) => steps.join(''));
    expect(mirrored.includes(a)).toBe(b === undefined);
    expect(mirrored).toContain(b ?? a);
  });

  test('share an interval vector exactly where they are Z-related', () => {
    for (const [name, , vector, partner] of setClasses) {
      const alike = setClasses.filter(([other, , its]) => its === vector && other !== name);
      expect(alike.map(([other]) => other)).toEqual(partner === undefined ? [] : [partner]);
      expect(name.includes('Z')).toBe(partner !== undefined);
    }
  });

  test.each(namedClasses)('%s, %s, belongs to %s', (_name, formula, label) => {
    const [, steps] = forms.find(([its]) => its === label) ?? [label, ''];
    expect(modeOf(formula).familyId).toBe(modeBySteps(steps).familyId);
  });
});

describe('common tones under transposition (J. Straus, Introduction to Post-Tonal Theory, 71-74)', () => {
  const published: readonly (readonly [string, readonly number[], number, number])[] = [
    ['4-3', [0, 1, 3, 4], 1, 2],
    ['4-3', [0, 1, 3, 4], 11, 2],
    ['4-3', [0, 1, 3, 4], 3, 2],
    ['4-3', [0, 1, 3, 4], 9, 2],
    ['4-3', [0, 1, 3, 4], 2, 1],
    ['4-3', [0, 1, 3, 4], 4, 1],
    ['4-3', [0, 1, 3, 4], 5, 0],
    ['4-3', [0, 1, 3, 4], 6, 0],
    ['3-9 (Open Music Theory)', [0, 2, 7], 2, 1],
    ['3-9 (Open Music Theory)', [0, 2, 7], 10, 1],
  ];

  test.each(published)('%s, %j, moved by %i semitones shares %i', (_name, set, by, shared) => {
    const moved = set.map((pitchClass) => (pitchClass + by) % 12);
    expect(commonCount(setOf(set), setOf(moved))).toBe(shared);
  });

  test('the major scale shares 7 2 5 4 3 6 2 6 3 4 5 2 notes with itself moved by 0 to 11', () => {
    const placed = everyPlacement.filter(({ mode }) => mode === modeOf('1 2 3 4 5 6 7'));
    const shared = placed.map(({ set }) => commonCount(set, setOf([0, 2, 4, 5, 7, 9, 11])));
    expect(shared.join(' ')).toBe('7 2 5 4 3 6 2 6 3 4 5 2');
  });

  test.each(setClasses)('%s (%s) shares what its vector %s says, twice that at the tritone', (...row) => {
    const [, , vector, , a] = row;
    const counts = numbersOf(vector);
    const expected = Array.from({ length: 12 }, (_, by) => {
      const intervalClass = Math.min(by, 12 - by);
      if (by === 0) return 7;
      return (counts[intervalClass - 1] ?? Number.NaN) * (intervalClass === 6 ? 2 : 1);
    });
    const placed = everyPlacement.filter(({ mode }) => mode.id === a);
    expect(placed.map(({ pitchClass }) => pitchClass)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect(placed.map(({ set }) => commonCount(set, setOf(modeBySteps(a).semitones)))).toEqual(expected);
  });
});
