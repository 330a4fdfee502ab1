import { readTuning } from '@stillroot/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { englishTunings, tuningInOwnNames } from './typed-tuning.ts';

// Open strings: common practice, no source. Names of notes: the tables cited in note-names.ts.
describe('a tuning in the names of', () => {
  test.each([
    ['german', 'H E A D G H E', 'B E A D G B E'],
    ['german', 'H1-E2-A2-D3-G3-H3-E4', 'B1-E2-A2-D3-G3-B3-E4'],
    ['german', 'Dis Gis Cis Fis Ais Dis', 'D# G# C# F# A# D#'],
    ['german', 'Es As Des Ges B Es', 'Eb Ab Db Gb Bb Eb'],
    ['german', "E A d g h e'", "E A d g b e'"],
    ['german', 'E A d g h e1', "E A d g b e'"],
    ['german', 'E1 A1 D G', ',E ,A D G'],
    ['german', 'H2 E1 A1 D G', ',,B ,E ,A D G'],
    ['german', 'EE AA D G', 'EE AA D G'],
    ['german', 'HH EE AA D', 'BB EE AA D'],
    ['german', ',E ,A D G', ',E ,A D G'],
    ['german', 'EADGHE', 'E A D G B E'],
    ['german', 'DADFisAD', 'D A D F# A D'],
    ['german', 'BEADGBE', 'BEADGBE'],
    ['german', 'G3/G3-H3/H3', 'G3/G3-B3/B3'],
    ['german', 'DADGAD', 'DADGAD'],
    ['romance', 'mi la re sol si mi', 'E A D G B E'],
    ['romance', 'mi2-la2-re3-sol3-si3-mi4', 'E2-A2-D3-G3-B3-E4'],
    ['romance', 'Mi, La, Ré, Sol', 'E, A, D, G'],
    ['romance', 'mib lab reb solb sib mib', 'Eb Ab Db Gb Bb Eb'],
    ['romance', 'mi bemol la bemol re bemol', 'Eb Ab Db'],
    ['romance', 're la re fa sostenido la re', 'D A D F# A D'],
    ['romance', 'milaresolsimi', 'E A D G B E'],
    ['dutch', 'B E A D G B E', 'B E A D G B E'],
    ['dutch', 'Bes1-Es2', 'Bb1-Eb2'],
    ['scandinavian', 'H E A D Fiss H', 'B E A D F# B'],
    ['numbers', '40 45 50 55 59 64', 'E2 A2 D3 G3 B3 E4'],
    ['numbers', '4 9 2 7 11 4', 'E A D G B E'],
    ['english', 'E flat A flat', 'Eb Ab'],
  ] as const)('%s: %s', (naming, text, english) => {
    expect(englishTunings(text, naming)[0]).toBe(english);
    expect(readTuning(english).ok).toBe(true);
  });

  test('a word that is no note stays where it was', () => {
    expect(englishTunings('H E X D', 'german')[0]).toBe('B E X D');
    expect(englishTunings('E2 A D3', 'german')).toEqual(['E2 A D3']);
    expect(englishTunings('drop d', 'romance')).toEqual(['drop d']);
  });

  test('a B may be either, in letters apart the own one first', () => {
    expect(englishTunings('B E A D', 'german')).toEqual(['Bb E A D', 'B E A D']);
    expect(englishTunings('BEAD', 'german')).toEqual(['BEAD', 'Bb E A D']);
  });
});

test('a tuning in own names is read as it was', () => {
  const note = fc.tuple(
    fc.constantFrom(...'CDEFGAB'),
    fc.constantFrom('', 'b', '#', 'bb', '##'),
    fc.integer({ min: 0, max: 8 }),
  );
  fc.assert(
    fc.property(
      fc.array(note, { minLength: 2, maxLength: 14 }),
      fc.constantFrom('german', 'romance', 'dutch', 'scandinavian', 'english'),
      fc.constantFrom('-', ' ', '/'),
      fc.boolean(),
      (notes, naming, between, hasOctaves) => {
        const english = notes
          .map(([letter, sign, octave]) => letter + sign + (hasOctaves ? octave : ''))
          .join(between);
        expect(englishTunings(tuningInOwnNames(english, naming), naming)).toContain(english);
      },
    ),
  );
});

test.each([
  ['B1-E2-A2', 'german', 'H1-E2-A2'],
  ['Bb E A', 'german', 'B E A'],
  ['C-1-G-1', 'romance', 'do-1-sol-1'],
  ['B E-1', 'romance', 'si mi-1'],
  ['E2-A2', 'numbers', '40-45'],
  ['BEADGBE', 'german', 'BEADGBE'],
  ["E A d g b e'", 'german', "E A d g b e'"],
] as const)('%s in %s names is %s', (text, naming, own) => {
  expect(tuningInOwnNames(text, naming)).toBe(own);
});
