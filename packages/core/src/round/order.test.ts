import { describe, expect, test } from 'vitest';
import { modeOf, STEPS } from '../given.ts';
import { type Mode, UNIVERSE } from '../mode/universe.ts';
import { ORDERS, orderModes } from './order.ts';

const names = (modes: readonly Mode[]) => modes.map(({ systematicName }) => systematicName).join(', ');

/** Moved notes, then semitones moved, as one number that sorts alike. */
function costOf(modes: readonly Mode[]): number {
  return modes.reduce((sum, mode, at) => {
    const before = modes[at - 1];
    if (before === undefined) return sum;
    const moves = mode.semitones.map((semitone, degree) =>
      Math.abs(semitone - (before.semitones[degree] ?? 0)),
    );
    return sum + 1000 * moves.filter((by) => by > 0).length + moves.reduce((all, by) => all + by, 0);
  }, 0);
}

function permutations<T>(items: readonly T[]): readonly (readonly T[])[] {
  if (items.length === 0) return [[]];
  return items.flatMap((item, at) =>
    permutations([...items.slice(0, at), ...items.slice(at + 1)]).map((rest) => [item, ...rest]),
  );
}

describe('the modes of the major scale', () => {
  const head = modeOf(STEPS.ionian);

  test('by parent degree begin with Ionian', () => {
    expect(names(orderModes(head, 'parent'))).toBe(
      'Ionian, Dorian, Phrygian, Lydian, Mixolydian, Aeolian, Locrian',
    );
  });

  test('by brightness go down the circle of fifths', () => {
    expect(names(orderModes(head, 'brightness'))).toBe(
      'Lydian, Ionian, Mixolydian, Dorian, Aeolian, Phrygian, Locrian',
    );
  });

  test('with the fewest moves change one note by one semitone at each of six turns', () => {
    expect(costOf(orderModes(head, 'fewest-moves'))).toBe(6 * 1001);
  });
});

describe('the modes of harmonic minor', () => {
  const head = modeOf(STEPS.harmonicMinor);

  test('by parent degree begin with harmonic minor', () => {
    expect(names(orderModes(head, 'parent'))).toBe(
      'Aeolian nat7, Locrian nat6, Ionian #5, Dorian #4, Phrygian nat3, Lydian #2, Locrian b4 bb7',
    );
  });

  // Alterations added up by hand.
  test('by brightness go from Lydian #2 to the seventh mode', () => {
    const modes = orderModes(head, 'brightness');
    expect(names(modes)).toBe(
      'Lydian #2, Ionian #5, Dorian #4, Aeolian nat7, Phrygian nat3, Locrian nat6, Locrian b4 bb7',
    );
    expect(modes.map(({ brightness }) => brightness)).toEqual([2, 1, -1, -2, -3, -4, -7]);
  });
});

describe('the order with the fewest moves', () => {
  test.each([
    ['major', STEPS.ionian],
    ['harmonic minor', STEPS.harmonicMinor],
    ['melodic minor', STEPS.melodicMinor],
    ['double harmonic', '1312131'],
    ['the densest cluster', '6111111'],
    ['an uneven family', '4113111'],
    ['a family where fewer notes cost more semitones', '5111211'],
  ])('of %s is the least of all 5,040 permutations', (_name, steps) => {
    const head = modeOf(steps);
    const order = orderModes(head, 'fewest-moves');
    const costs = permutations(orderModes(head, 'parent')).map((modes) => ({ modes, cost: costOf(modes) }));
    const least = costs.reduce((min, { cost }) => Math.min(min, cost), Number.POSITIVE_INFINITY);
    expect(costs).toHaveLength(5040);
    expect(costOf(order)).toBe(least);
    const headCanBeFirst = costs.some(({ modes, cost }) => cost === least && modes[0] === head);
    expect(order[0] === head).toBe(headCanBeFirst);
  });
});

describe('every order', () => {
  test.each(ORDERS)('%s has each mode of each family once', (order) => {
    for (const { modes } of UNIVERSE.families) {
      const [head] = modes;
      if (head) expect(new Set(orderModes(head, order))).toEqual(new Set(modes));
    }
  });
});
