import { describe, expect, test } from 'vitest';
import { modeOf, STEPS } from '../given.ts';
import { type Mode, UNIVERSE } from '../mode/universe.ts';
import { neighboursOf, routeBetween } from './neighbours.ts';

function movement(a: Mode, b: Mode): number {
  return a.semitones.reduce((sum, semitone, at) => sum + Math.abs(semitone - (b.semitones[at] ?? 0)), 0);
}

describe('the neighbours', () => {
  test('of Ionian are the nine modes one semitone in one degree away, by degree, down before up', () => {
    expect(
      neighboursOf(modeOf(STEPS.ionian)).map(({ mode, moved }) => [mode.formula.join(' '), moved]),
    ).toEqual([
      ['1 b2 3 4 5 6 7', { degree: 2, by: -1 }],
      ['1 #2 3 4 5 6 7', { degree: 2, by: 1 }],
      ['1 2 b3 4 5 6 7', { degree: 3, by: -1 }],
      ['1 2 3 #4 5 6 7', { degree: 4, by: 1 }],
      ['1 2 3 4 b5 6 7', { degree: 5, by: -1 }],
      ['1 2 3 4 #5 6 7', { degree: 5, by: 1 }],
      ['1 2 3 4 5 b6 7', { degree: 6, by: -1 }],
      ['1 2 3 4 5 #6 7', { degree: 6, by: 1 }],
      ['1 2 3 4 5 6 b7', { degree: 7, by: -1 }],
    ]);
  });

  test('of every mode are exactly those at distance 1, found by measuring all 462', () => {
    for (const mode of UNIVERSE.modes) {
      const near = UNIVERSE.modes.filter((other) => movement(mode, other) === 1).map(({ id }) => id);
      expect(
        neighboursOf(mode)
          .map((one) => one.mode.id)
          .toSorted(),
      ).toEqual(near.toSorted());
    }
  });

  test('are found once', () => {
    expect(neighboursOf(modeOf(STEPS.dorian))).toBe(neighboursOf(modeOf(STEPS.dorian)));
  });
});

describe('a route', () => {
  test('from a mode to itself is that mode alone', () => {
    const dorian = modeOf(STEPS.dorian);
    expect(routeBetween(dorian, dorian)).toEqual([{ mode: dorian, moved: undefined }]);
  });

  test('moves one semitone a step and is as long as the distance', () => {
    for (let at = 0; at < 462; at += 7) {
      const [from, to] = [UNIVERSE.modes[at] as Mode, UNIVERSE.modes[461 - at] as Mode];
      const route = routeBetween(from, to);
      expect(route).toHaveLength(movement(from, to) + 1);
      expect([route[0]?.mode, route.at(-1)?.mode]).toEqual([from, to]);
      for (const [step, { mode, moved }] of route.entries()) {
        const before = route[step - 1]?.mode;
        expect(before ? movement(before, mode) : 0).toBe(before ? 1 : 0);
        if (before && moved) {
          const by = (mode.semitones[moved.degree - 1] ?? 0) - (before.semitones[moved.degree - 1] ?? 0);
          expect(by).toBe(moved.by);
        }
      }
    }
  });

  // From Lydian to Locrian by lowering one degree at a time, the order of the circle of fifths.
  test('prefers the modes it is told are welcome', () => {
    const church = new Set<string>([
      STEPS.lydian,
      STEPS.ionian,
      STEPS.mixolydian,
      STEPS.dorian,
      STEPS.aeolian,
    ]);
    church.add(STEPS.phrygian);
    const route = routeBetween(modeOf(STEPS.lydian), modeOf(STEPS.locrian), ({ id }) =>
      Number(church.has(id)),
    );
    expect(route.map(({ mode }) => mode.systematicName)).toEqual([
      'Lydian',
      'Ionian',
      'Mixolydian',
      'Dorian',
      'Aeolian',
      'Phrygian',
      'Locrian',
    ]);
    expect(route.map(({ moved }) => moved?.degree)).toEqual([undefined, 4, 7, 3, 6, 2, 5]);
  });

  test('has the highest sum of preference of all shortest chains, compared with every one of them', () => {
    const preference = ({ index }: Mode) => (index * 37) % 11;
    const [from, to] = [modeOf(STEPS.ionian), modeOf(STEPS.seventhOfHarmonicMinor)];
    const bestFrom = (mode: Mode): number => {
      if (mode === to) return 0;
      const nearer = UNIVERSE.modes.filter(
        (other) => movement(mode, other) === 1 && movement(other, to) === movement(mode, to) - 1,
      );
      return Math.max(...nearer.map((other) => preference(other) + bestFrom(other)));
    };
    const worth = routeBetween(from, to, preference)
      .slice(1)
      .reduce((sum, { mode }) => sum + preference(mode), 0);
    expect(worth).toBe(bestFrom(from));
  });
});
