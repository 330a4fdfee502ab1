import { describe, expect, test } from 'vitest';
import { modeOf, STEPS, scaleOf } from '../given.ts';
import { pitchClassesOf } from '../mode/spelling.ts';
import { UNIVERSE } from '../mode/universe.ts';
import { degreeIn, familyOf, modesFrom, parentScale, relativeScales } from './relatives.ts';

const nameOf = (scale: { root: { name: string }; mode: { systematicName: string } }) =>
  `${scale.root.name} ${scale.mode.systematicName}`;

describe('the modes of a family', () => {
  test('of the major scale, counted from Ionian, are the church modes in order', () => {
    expect(modesFrom(modeOf(STEPS.ionian)).map(({ systematicName }) => systematicName)).toEqual([
      'Ionian',
      'Dorian',
      'Phrygian',
      'Lydian',
      'Mixolydian',
      'Aeolian',
      'Locrian',
    ]);
  });

  test.each([
    [STEPS.harmonicMinor, STEPS.phrygianDominant, 5],
    [STEPS.harmonicMinor, STEPS.seventhOfHarmonicMinor, 7],
    [STEPS.phrygianDominant, STEPS.harmonicMinor, 4],
    [STEPS.ionian, STEPS.aeolian, 6],
    [STEPS.aeolian, STEPS.ionian, 3],
    [STEPS.locrian, STEPS.locrian, 1],
  ])('seen from %s, %s stands on degree %i', (head, mode, degree) => {
    expect(degreeIn(modeOf(head), modeOf(mode))).toBe(degree);
    expect(modesFrom(modeOf(head))[degree - 1]).toBe(modeOf(mode));
    expect(familyOf(modeOf(mode))).toBe(familyOf(modeOf(head)));
  });
});

describe('relative scales', () => {
  test('of A harmonic minor begin its seven notes on each of them', () => {
    expect(relativeScales(scaleOf('A', STEPS.harmonicMinor)).map(nameOf)).toEqual([
      'A Aeolian nat7',
      'B Locrian nat6',
      'C Ionian #5',
      'D Dorian #4',
      'E Phrygian nat3',
      'F Lydian #2',
      'G# Locrian b4 bb7',
    ]);
  });

  test('share all seven pitch classes, in every mode', () => {
    for (const mode of UNIVERSE.modes) {
      const scale = scaleOf('Eb', mode.id);
      const sorted = pitchClassesOf(scale).toSorted().join();
      for (const relative of relativeScales(scale)) {
        expect(pitchClassesOf(relative).toSorted().join()).toBe(sorted);
      }
    }
  });

  test('take the kinder twin of a root beyond the 21', () => {
    const scale = scaleOf('Ab', STEPS.seventhOfHarmonicMinor);
    expect(scale.notes.join(' ')).toBe('Ab Bbb Cb Dbb Ebb Fb Gbb');
    expect(relativeScales(scale).map(({ root }) => root.name)).toEqual([
      'Ab',
      'A',
      'Cb',
      'C',
      'D',
      'Fb',
      'F',
    ]);
  });
});

// Relative keys: common practice, no source.
describe('the parent scale', () => {
  test.each([
    ['A', STEPS.phrygianDominant, STEPS.harmonicMinor, 'D Aeolian nat7'],
    ['A', STEPS.dorian, STEPS.ionian, 'G Ionian'],
    ['F#', STEPS.locrian, STEPS.ionian, 'G Ionian'],
    ['G#', STEPS.seventhOfHarmonicMinor, STEPS.harmonicMinor, 'A Aeolian nat7'],
    ['C', STEPS.ionian, STEPS.aeolian, 'A Aeolian'],
    ['C', STEPS.ionian, STEPS.ionian, 'C Ionian'],
  ])('of %s %s, headed by %s, is %s', (root, steps, head, parent) => {
    expect(nameOf(parentScale(scaleOf(root, steps), modeOf(head)))).toBe(parent);
  });
});
