import { parseRoot, type Root, spell, UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { baseWords, degreeWords, moveNotes, movesWords, moveWords } from './degrees.ts';

function modeOf(steps: string) {
  const mode = UNIVERSE.modesById.get(steps);
  if (!mode) throw new Error(`no mode ${steps}`);
  return mode;
}

function rootOf(name: string): Root {
  const root = parseRoot(name);
  if (!root.ok) throw new Error(root.problem.expected);
  return root.value;
}

describe('degreeWords', () => {
  test.each([
    [4, 1, 'raised 4th'],
    [2, -1, 'lowered 2nd'],
    [6, 0, 'natural 6th'],
    [7, -2, 'doubly lowered 7th'],
    [3, 3, 'triply raised 3rd'],
    [2, 4, 'quadruply raised 2nd'],
  ])('degree %i altered by %i is a %s', (degree, alteration, words) => {
    expect(degreeWords(degree, alteration)).toBe(words);
  });
});

describe('baseWords', () => {
  // The degrees of the harmonic minor family are those of its formulas (Kostka and Payne, Tonal Harmony; recalled).
  test.each([
    ['2122212', 'Dorian'],
    ['2131212', 'Dorian with a raised 4th'],
    ['1221312', 'Locrian with a natural 6th'],
    ['2122131', 'Aeolian with a natural 7th'],
    ['1212213', 'Locrian with a lowered 4th and a doubly lowered 7th'],
  ])('the mode of steps %s is %s', (steps, words) => {
    const { base, alterations } = modeOf(steps);
    expect(baseWords(base, alterations)).toBe(words);
  });

  test('every mode but the seven church modes says what is moved', () => {
    const plain = UNIVERSE.modes.filter(
      ({ base, alterations }) => !baseWords(base, alterations).includes(' with a '),
    );
    expect(plain.map(({ base }) => base.name).toSorted()).toEqual([
      'Aeolian',
      'Dorian',
      'Ionian',
      'Locrian',
      'Lydian',
      'Mixolydian',
      'Phrygian',
    ]);
  });
});

describe('moves', () => {
  test.each([
    [{ degree: 6, by: -1 }, '6 falls a semitone'],
    [{ degree: 5, by: 2 }, '5 rises a tone'],
    [{ degree: 7, by: -3 }, '7 falls three semitones'],
  ])('%o reads %s', (moved, words) => {
    expect(moveWords(moved)).toBe(words);
  });

  test('several moves of one kind are said together', () => {
    const moved = [
      { degree: 4, by: -1 },
      { degree: 6, by: -1 },
      { degree: 7, by: 1 },
    ];
    expect(movesWords(moved)).toBe('4 and 6 fall a semitone, 7 rises a semitone');
  });

  test('a moved note is named before and after, with signs', () => {
    const [before, after] = ['2122131', '1221312'].map((steps) => spell(modeOf(steps), rootOf('A')));
    if (!before || !after) throw new Error('two scales');
    expect(moveNotes({ degree: 2, by: -1 }, before, after)).toBe('B → B♭');
    expect(moveNotes({ degree: 7, by: -1 }, before, after)).toBe('G♯ → G');
  });
});
