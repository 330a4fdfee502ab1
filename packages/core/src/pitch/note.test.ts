import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { formatNote, parseNote, pitchClassOfNote } from './note.ts';

describe('a note name', () => {
  test.each([
    ['C', 0, 0, 0],
    ['Cb', 0, -1, 11],
    ['B#', 6, 1, 0],
    ['F#', 3, 1, 6],
    ['Fs', 3, 1, 6],
    ['Gss', 4, 2, 9],
    ['Fx', 3, 2, 7],
    ['F##', 3, 2, 7],
    ['Bbb', 6, -2, 9],
    ['Ebbb', 2, -3, 1],
    ['A###', 5, 3, 0],
    ['F♯', 3, 1, 6],
    ['B♭', 6, -1, 10],
    ['B𝄫', 6, -2, 9],
    ['F𝄪', 3, 2, 7],
    ['b', 6, 0, 11],
    ['bb', 6, -1, 10],
    ['bbb', 6, -2, 9],
    [' G# ', 4, 1, 8],
  ])('%s is letter %i altered by %i, pitch class %i', (text, letterIndex, alteration, pitchClass) => {
    const note = valueIn(parseNote(text));
    expect(note).toEqual({ letterIndex, alteration });
    expect(pitchClassOfNote(note)).toBe(pitchClass);
  });

  test.each([
    [6, -2, 'Bbb'],
    [0, 0, 'C'],
    [3, 2, 'F##'],
    [0, -8, 'Cbbbbbbbb'],
    [6, 8, 'B########'],
  ])('of letter %i altered by %i is written %s', (letterIndex, alteration, name) => {
    expect(formatNote(letterIndex, alteration)).toBe(name);
  });

  test('is read back as it is written', () => {
    for (let letterIndex = 0; letterIndex < 7; letterIndex += 1) {
      for (let alteration = -3; alteration <= 3; alteration += 1) {
        expect(parseNote(formatNote(letterIndex, alteration))).toEqual({
          ok: true,
          value: { letterIndex, alteration },
        });
      }
    }
  });
});

describe('a note name is refused', () => {
  const expected = 'a letter from A to G, then b or # (or s for #), such as A, Bb, F#';

  test.each([
    ['empty', ''],
    ['spaces', '   '],
    ['constructor', 'constructor'],
    ['__proto__', '__proto__'],
    ['toString', 'toString'],
    ['a letter past G', 'H'],
    ['a valid name with a tail', 'F#minor'],
    ['a valid name with an octave', 'F#4'],
    ['two names', 'A B'],
    ['a sharp and a flat', 'A#b'],
    ['sharps of two kinds', 'A#s'],
    ['four flats', 'Abbbb'],
    ['a full-width sharp', 'F＃'],
    ['a Cyrillic soft sign for a flat', 'Bь'],
    ['a Cyrillic letter for A', 'А'],
    ['a raised b', 'Bᵇ'],
    ['an equals sign', 'F='],
    ['a line break inside', 'A\n#'],
    ['a null byte', 'A\0'],
  ])('where it is %s', (_what, text) => {
    expect(problemIn(parseNote(text, 'notes[0]'))).toEqual({ field: 'notes[0]', value: text, expected });
  });

  test('where it is very long, and only its beginning is shown', () => {
    expect(problemIn(parseNote(`A${'b'.repeat(100_000)}`))).toEqual({
      field: 'note',
      value: `A${'b'.repeat(56)}...`,
      expected,
    });
  });
});
