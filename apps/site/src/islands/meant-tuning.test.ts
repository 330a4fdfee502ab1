import { CATALOGUE, findInstrument } from '@stillroot/catalog';
import { invariant } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import type { Naming } from '../words/note-names.ts';
import { addressedTuning, typedTuning } from './meant-tuning.ts';

const { instruments } = CATALOGUE;
const instrumentOf = (id: string) => {
  const instrument = findInstrument(id);
  invariant(instrument !== undefined, `${id} is an instrument`);
  return instrument;
};
const typed = (text: string, naming: Naming, id = 'guitar-6') =>
  typedTuning(text, instrumentOf(id), instruments, naming);

describe('what is typed into the field', () => {
  // Names of tunings and their open strings: the catalogue, with its sources.
  test.each([
    ['drop d', 'english', 'drop-d'],
    ['Drop-D', 'english', 'drop-d'],
    ['open g', 'english', 'open-g'],
    ['standard', 'english', 'standard'],
    ['Drop C♯', 'english', 'drop-c-sharp'],
    ['Drop H', 'german', 'drop-b'],
    ['Drop B', 'german', 'drop-b'],
    ['Drop Cis', 'german', 'drop-c-sharp'],
    ['drop re', 'romance', 'drop-d'],
    ['open sol', 'romance', 'open-g'],
  ] as const)('%s (%s) is the tuning %s', (text, naming, id) => {
    expect(typed(text, naming)).toEqual({ tuning: id });
  });

  test.each([
    ['E A D G H E', 'german', 'E A D G B E'],
    ['H1-E2-A2-D3-G3-H3-E4', 'german', 'B1-E2-A2-D3-G3-B3-E4'],
    ['Dis Gis Cis Fis Ais Dis', 'german', 'D# G# C# F# A# D#'],
    ['mi la re sol si mi', 'romance', 'E A D G B E'],
    ['mi2-la2-re3-sol3-si3-mi4', 'romance', 'E2-A2-D3-G3-B3-E4'],
    ['40 45 50 55 59 64', 'numbers', 'E2 A2 D3 G3 B3 E4'],
    ['DADGAD', 'german', 'DADGAD'],
    ['E2-A2-D3-G3-B3-E4', 'romance', 'E2-A2-D3-G3-B3-E4'],
  ] as const)('%s (%s) is %s and nothing else', (text, naming, tuning) => {
    expect(typed(text, naming)).toEqual({ tuning });
  });

  test('a B is taken as a tuning has it, and else as its reader names notes; the other is told', () => {
    const six = typed('E A D G B E', 'german');
    expect(six).toEqual({ tuning: 'E A D G B E', other: 'E A D G Bb E' });
    expect(typed('B E A D G B E', 'german', 'guitar-7').tuning).toBe('B E A D G B E');
    // A tuning of another instrument.
    expect(typed('B E A D G', 'german').tuning).toBe('B E A D G');
    expect(typed('F B F B F B', 'german')).toEqual({ tuning: 'F Bb F Bb F Bb', other: 'F B F B F B' });
    expect(typed('E A D G B E', 'dutch')).toEqual({ tuning: 'E A D G B E' });
  });

  test.each([
    ['H E X D', 'german', 'H E X D'],
    ['H1 E2 X3', 'german', 'B1 E2 X3'],
    ['nonsense', 'romance', 'nonsense'],
    ['constructor', 'german', 'constructor'],
  ] as const)('what cannot be read is kept: %s (%s)', (text, naming, tuning) => {
    expect(typed(text, naming)).toEqual({ tuning });
  });
});

describe('what stands in an address', () => {
  const guitar = instrumentOf('guitar-6');

  test.each(['B1-E2-A2', 'B E A D', 'BEADGBE', 'drop-d', '', "E A d g b e'"])(
    '%s is in English names, whatever its reader calls notes',
    (text) => {
      for (const naming of ['english', 'german', 'romance', 'numbers'] as const)
        expect(addressedTuning(text, guitar, naming)).toBe(text);
    },
  );

  test.each([
    ['H1-E2-A2', 'german', 'B1-E2-A2'],
    ['mi la re', 'romance', 'E A D'],
    ['Drop D', 'english', 'drop-d'],
    ['drop re', 'romance', 'drop-d'],
    ['H1-E2-A2', 'english', 'H1-E2-A2'],
  ] as const)('but %s (%s) is %s', (text, naming, tuning) => {
    expect(addressedTuning(text, guitar, naming)).toBe(tuning);
  });
});
