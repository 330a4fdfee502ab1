import { describe, expect, test } from 'vitest';
import { modeOf, STEPS } from '../given.ts';
import { alterationsOf, formatDegree, formatNamedDegree } from './formula.ts';

describe('a degree', () => {
  test.each([
    [1, 0, '1', 'nat1'],
    [6, 0, '6', 'nat6'],
    [3, -1, 'b3', 'b3'],
    [4, 1, '#4', '#4'],
    [7, -2, 'bb7', 'bb7'],
    [4, 2, '##4', '##4'],
    [7, -5, 'bbbbb7', 'bbbbb7'],
  ])('%i altered by %i is %s in a formula and %s in a name', (degree, alteration, formula, name) => {
    expect(formatDegree(degree, alteration)).toBe(formula);
    expect(formatNamedDegree(degree, alteration)).toBe(name);
  });
});

// Church modes as in Kostka and Payne, Tonal Harmony (recalled); the harmonic minor rows are read off the
// notes of the textbook scale, counted in semitones.
describe('the formula', () => {
  test.each([
    ['Ionian', STEPS.ionian, '1 2 3 4 5 6 7'],
    ['Dorian', STEPS.dorian, '1 2 b3 4 5 6 b7'],
    ['Phrygian', STEPS.phrygian, '1 b2 b3 4 5 b6 b7'],
    ['Lydian', STEPS.lydian, '1 2 3 #4 5 6 7'],
    ['Mixolydian', STEPS.mixolydian, '1 2 3 4 5 6 b7'],
    ['Aeolian', STEPS.aeolian, '1 2 b3 4 5 b6 b7'],
    ['Locrian', STEPS.locrian, '1 b2 b3 4 b5 b6 b7'],
    ['harmonic minor', STEPS.harmonicMinor, '1 2 b3 4 5 b6 7'],
    ['Phrygian dominant', STEPS.phrygianDominant, '1 b2 3 4 5 b6 b7'],
    ['the seventh mode of harmonic minor', STEPS.seventhOfHarmonicMinor, '1 b2 b3 b4 b5 b6 bb7'],
    ['six semitones and a leap of six', '1111116', '1 b2 bb3 bb4 bbb5 bbbb6 bbbbb7'],
    ['a leap of six and six semitones', '6111111', '1 ####2 ###3 ###4 ##5 #6 7'],
  ])('of %s is what its steps add up to', (_name, steps, formula) => {
    expect(modeOf(steps).formula.join(' ')).toBe(formula);
  });

  test('says zero for every degree of the major scale', () => {
    expect(alterationsOf([0, 2, 4, 5, 7, 9, 11])).toEqual([0, 0, 0, 0, 0, 0, 0]);
  });
});
