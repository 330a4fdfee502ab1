import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { EVERYDAY_ROOTS, parseRoot, ROOTS, ROOTS_BY_PITCH_CLASS } from './root.ts';

describe('the roots', () => {
  test('are 21, letter by letter from C, flat before natural before sharp', () => {
    expect(ROOTS.map(({ name }) => name).join(' ')).toBe(
      'Cb C C# Db D D# Eb E E# Fb F F# Gb G G# Ab A A# Bb B B#',
    );
    expect(ROOTS.map(({ index }) => index)).toEqual([...Array(21).keys()]);
  });

  test('in everyday use are the 17 that no other natural sounds like', () => {
    expect(EVERYDAY_ROOTS.map(({ name }) => name).join(' ')).toBe(
      'C C# Db D D# Eb E F F# Gb G G# Ab A A# Bb B',
    );
  });

  test.each([
    [0, 'C B#'],
    [1, 'C# Db'],
    [2, 'D'],
    [4, 'E Fb'],
    [8, 'G# Ab'],
    [11, 'Cb B'],
  ])('of pitch class %i are %s', (pitchClass, names) => {
    expect(ROOTS_BY_PITCH_CLASS[pitchClass]?.map(({ name }) => name).join(' ')).toBe(names);
  });
});

describe('a root', () => {
  test.each([
    ['A', 'A'],
    ['a', 'A'],
    ['b', 'B'],
    ['bb', 'Bb'],
    ['Fs', 'F#'],
    ['F#', 'F#'],
    ['f-sharp', 'F#'],
    ['F-Sharp', 'F#'],
    ['b-flat', 'Bb'],
    ['E♭', 'Eb'],
    [' C♯ ', 'C#'],
    ['Es', 'E#'],
  ])('is read from %s as %s', (text, name) => {
    expect(valueIn(parseRoot(text)).name).toBe(name);
  });

  test('is read back from its name and from its address', () => {
    for (const root of ROOTS) {
      expect(valueIn(parseRoot(root.name))).toBe(root);
      expect(valueIn(parseRoot(root.slug))).toBe(root);
    }
  });
});

describe('a root is refused', () => {
  const expected =
    'one of the 21 roots: a letter from A to G, alone or with one b or # (F# may be written Fs)';

  test.each([
    ['empty', ''],
    ['spaces', '  '],
    ['constructor', 'constructor'],
    ['__proto__', '__proto__'],
    ['a double flat', 'Bbb'],
    ['a double sharp', 'Fx'],
    ['a valid root with a tail', 'A minor'],
    ['a valid address with a tail', 'f-sharp-minor'],
    ['a natural in an address', 'a-natural'],
    ['a full-width sharp', 'F＃'],
    ['an octave', 'A4'],
    ['not a letter of music', 'H'],
  ])('where it is %s', (_what, text) => {
    expect(problemIn(parseRoot(text))).toEqual({ field: 'root', value: text, expected });
  });

  test('where it is very long', () => {
    const { value, expected: said } = problemIn(parseRoot('f-sharp'.repeat(10_000), 'from'));
    expect(value).toHaveLength(60);
    expect(said).toBe(expected);
  });
});
