import { describe, expect, test } from 'vitest';
import { STEPS, scaleOf } from '../given.ts';
import { seventhsOf, triadsOf } from './chords.ts';

const kindsOf = (chords: ReturnType<typeof triadsOf>) => chords.map(({ kind }) => kind).join(' ');

// Chords on the degrees of major and minor: Kostka and Payne, Tonal Harmony, chapter 4 (recalled).
describe('the triads', () => {
  test.each([
    ['major', STEPS.ionian, 'maj min min maj maj min dim'],
    ['natural minor', STEPS.aeolian, 'min dim maj min min maj maj'],
    ['harmonic minor', STEPS.harmonicMinor, 'min dim aug min maj maj dim'],
    ['melodic minor', STEPS.melodicMinor, 'min min aug maj maj dim dim'],
  ])('of %s are its textbook row', (_name, steps, kinds) => {
    expect(kindsOf(triadsOf(scaleOf('A', steps)))).toBe(kinds);
  });

  test('are spelled in thirds', () => {
    expect(triadsOf(scaleOf('A', STEPS.harmonicMinor)).map(({ notes }) => notes.join(' '))).toEqual([
      'A C E',
      'B D F',
      'C E G#',
      'D F A',
      'E G# B',
      'F A C',
      'G# B D',
    ]);
  });

  test('stand on the degrees in order', () => {
    expect(triadsOf(scaleOf('C', STEPS.ionian)).map(({ degree }) => degree)).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });
});

describe('the seventh chords', () => {
  test.each([
    ['major', STEPS.ionian, 'maj7 m7 m7 maj7 7 m7 m7b5'],
    ['harmonic minor', STEPS.harmonicMinor, 'm(maj7) m7b5 maj7#5 m7 7 maj7 dim7'],
    ['melodic minor', STEPS.melodicMinor, 'm(maj7) m7 maj7#5 7 7 m7b5 m7b5'],
  ])('of %s are its textbook row', (_name, steps, kinds) => {
    expect(kindsOf(seventhsOf(scaleOf('A', steps)))).toBe(kinds);
  });

  test('carry their notes and their semitones', () => {
    expect(seventhsOf(scaleOf('A', STEPS.harmonicMinor))[6]).toEqual({
      degree: 7,
      notes: ['G#', 'B', 'D', 'F'],
      semitones: [0, 3, 6, 9],
      kind: 'dim7',
    });
  });
});

describe('a chord that has no usual name', () => {
  test('is written as its own formula', () => {
    const scale = scaleOf('C', '1211115');
    expect(triadsOf(scale)[0]).toMatchObject({ notes: ['C', 'Eb', 'Gbb'], kind: '1 b3 bb5' });
    expect(seventhsOf(scale)[0]).toMatchObject({ kind: '1 b3 bb5 bbbb7' });
  });
});
