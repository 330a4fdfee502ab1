import { describe, expect, test } from 'vitest';
import { askedBy } from './asked.ts';
import { wordsOf } from './words-of.ts';

describe('words', () => {
  test.each([
    ['Dorian ♯4', ['dorian', '#4']],
    ['dorian-sharp4', ['dorian', '#4']],
    ['locrian-b4-bb7', ['locrian', 'b4', 'bb7']],
    ['Locrian double flat 7', ['locrian', 'bb7']],
    ['lydian-doublesharp5', ['lydian', '##5']],
    ['Locrian natural 6', ['locrian', 'nat6']],
    ['Lócrian (𝄫7)', ['locrian', 'bb7']],
    ['   ', []],
  ])('%j are %j', (text, words) => {
    expect(wordsOf(text)).toEqual(words);
  });
});

describe('what is asked for', () => {
  test.each([
    ['A B C D E F G#', 'notes', 7],
    ['a, b♭, c♯', 'notes', 3],
    ['DADGAD', 'notes', 6],
    ['Am E7', 'notes', 7],
    ['Dm7, G7(b9), Cmaj7', 'notes', 13],
    ['B C7', 'notes', 7],
    ['C-E-G-Bb', 'notes', 4],
  ])('%s are notes', (text, kind, count) => {
    const asked = askedBy(text);
    expect(asked.for).toBe(kind);
    expect(asked.for === 'notes' && asked.notes).toHaveLength(count);
  });

  test.each([
    ['1 b2 3 4 5 b6 b7', [0, 1, 4, 5, 7, 8, 10]],
    ['1b2345b6b7', [0, 1, 4, 5, 7, 8, 10]],
    ['1 ♭2 ♭3 ♭4 ♭5 ♭6 𝄫7', [0, 1, 3, 4, 6, 8, 9]],
    ['b9 #11', [1, 6]],
    ['#4', [6]],
    ['nat6', [9]],
    ['0 1 4 5 7 8 10', [0, 1, 4, 5, 7, 8, 10]],
    ['1 2 3 5 6', [0, 2, 4, 7, 9]],
  ])('%s are degrees', (text, semitones) => {
    const asked = askedBy(text);
    expect(asked.for === 'degrees' && asked.degrees.map((one) => one.semitones)).toEqual(semitones);
  });

  test.each([
    ['1312122', '1312122'],
    ['1-3-1-2-1-2-2', '1312122'],
    ['T S T T T S T', '2122212'],
    ['wwhwwwh', '2212221'],
  ])('%s are steps', (text, steps) => {
    const asked = askedBy(text);
    expect(asked.for === 'steps' && asked.steps.join('')).toBe(steps);
  });

  // The names that these have: Phrygian dominant, Dorian #4, Lydian dominant, Locrian nat6, Locrian b4 bb7.
  test.each([
    ['phrygian with a major third', '1312122', undefined],
    ['Phrygian maj 3', '1312122', undefined],
    ['phrygian with a natural 3rd in F#', '1312122', 'F#'],
    ['phrygian 3', '1312122', undefined],
    ['dorian with a raised 4th', '2131212', undefined],
    ['dorian with a sharp fourth', '2131212', undefined],
    ['lydian with a minor seventh', '2221212', undefined],
    ['locrian with a natural sixth', '1221312', undefined],
    ['locrian with a diminished fourth and a diminished seventh', '1212213', undefined],
  ])('%s is the mode with the steps %s', (text, steps, root) => {
    const asked = askedBy(text);
    expect(asked.for === 'steps' && asked.steps.join('')).toBe(steps);
    expect(asked.root?.name).toBe(root);
  });

  test.each([
    'phrygian major',
    'dorian with',
    'dorian with a lowered 9th',
    'phrygian with a major',
    'ionian dim 3',
  ])('%s describes no mode', (text) => {
    expect(askedBy(text).for).toBe('name');
  });

  test.each([
    ['F# phrygian dominant', 'F#', ['phrygian', 'dominant']],
    ['dorian in f#', 'F#', ['dorian']],
    ['Dorisch #4 auf F#', 'F#', ['dorisch', '#4']],
    ['dórico desde Bb', 'Bb', ['dorico']],
    ['Bb Dorian #4', 'Bb', ['dorian', '#4']],
    ['phrygian dominant', undefined, ['phrygian', 'dominant']],
    ['a', undefined, ['a']],
    ['1 2 3 4 5 6 9 9', undefined, undefined],
  ])('%s names root %s and a mode', (text, root, words) => {
    const asked = askedBy(text);
    expect(asked.root?.name).toBe(root);
    if (words) expect(asked.for === 'name' && asked.words).toEqual(words);
  });

  test('steps on a root are steps', () => {
    const asked = askedBy('A 1312122');
    expect([asked.for, asked.root?.name]).toEqual(['steps', 'A']);
  });

  test.each(['', '   ', '2222222', 'constructor', '__proto__', 'H9 E2', '\u0000', '1'.repeat(500)])(
    '%j is no more than a name',
    (text) => {
      expect(askedBy(text).for).toBe('name');
    },
  );
});
