import type { Neck, PlayedNote } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { neckOf } from './given.ts';
import { OPEN, pieceOf } from './given-piece.ts';
import { remarkInWords, tabStaff } from './tab-staff.ts';

const [anyNote] = pieceOf().notes;

/** Tunings from string 1 down, as text. */
function tuningOf(neck: Neck): string {
  return tabStaff(neck)
    .tuning.map(({ letter, alteration, octave }) => {
      return letter + (alteration < 0 ? 'b' : '#').repeat(Math.abs(alteration)) + octave;
    })
    .join(' ');
}

/** The number on a string of the tablature staff for a fret of the neck. */
function numberOf(neck: Neck, string: number, fret: number): number | undefined {
  return tabStaff(neck).fretOf({ ...(anyNote as PlayedNote), string, fret });
}

const partialFrets = [
  ...[2, 4, 5, 7, 9, 10].map((semitones, at) => ({ fret: at + 1, semitones })),
  { fret: 6.5, semitones: 11 },
  { fret: 7, semitones: 12 },
];
const guitar = neckOf(OPEN.guitar);
const capoed = neckOf(OPEN.guitar, {}, { capoFret: 3 });
const partly = neckOf(OPEN.guitar, {}, { capoFret: 2, capoStrings: [3, 4, 5] });
const shortStrings = [{ string: 5, startsAtFret: 5 }];
const banjo = neckOf(OPEN.banjo, { shortStrings });
const capoedBanjo = neckOf(OPEN.banjo, { shortStrings }, { capoFret: 2 });
const dulcimer = neckOf('D3-A3-D4', { frets: 7, partialFrets });
const capoedDulcimer = neckOf('D3-A3-D4', { frets: 7, partialFrets }, { capoFret: 1 });

// MusicXML 4.0: staff-tuning is the tuning without the capo, and capo raises it by half-steps.
describe('the tuning of a tablature staff', () => {
  test.each([
    ['a guitar', guitar, 'E4 B3 G3 D3 A2 E2', 0],
    ['a guitar in flats', neckOf('Eb2-Ab2-Db3-Gb3-Bb3-Eb4'), 'Eb4 Bb3 Gb3 Db3 Ab2 Eb2', 0],
    ['a guitar with a capo', capoed, 'E4 B3 G3 D3 A2 E2', 3],
    ['a guitar with a capo over some strings', partly, 'E4 B3 G3 D3 A2 E2', 0],
    ['a banjo, its short string at the pitch at which it is open', banjo, 'D4 B3 G3 D3 G4', 0],
    ['a banjo with a capo below its short string', capoedBanjo, 'D4 B3 G3 D3 F4', 2],
    ['a dulcimer', dulcimer, 'D4 A3 D3', 0],
    ['a dulcimer with a capo', capoedDulcimer, 'E4 B3 E3', 0],
  ])('of %s', (_name, neck, tuning, capo) => {
    expect(tuningOf(neck)).toBe(tuning);
    expect(tabStaff(neck).capo).toBe(capo);
  });
});

describe('a fret is numbered', () => {
  test.each([
    ['as on the neck', guitar, 6, 5, 5],
    ['0 where the string is open', guitar, 6, 0, 0],
    ['from a capo over all strings', capoed, 6, 5, 2],
    ['0 at a capo over all strings', capoed, 6, 0, 0],
    ['as on the neck where a capo leaves strings out', partly, 4, 5, 5],
    ['by the fret of the capo where it alone stops the string', partly, 4, 0, 2],
    ['0 where the capo leaves the string out', partly, 6, 0, 0],
    ['from the nut of the long strings on a short one', banjo, 5, 7, 7],
    ['from the capo on a short string, too', capoedBanjo, 5, 7, 5],
    ['0 where a short string is open', capoedBanjo, 5, 0, 0],
    ['as a dulcimer player counts', dulcimer, 1, 7, 7],
    ['not at all where it is an added one', dulcimer, 1, 6.5, undefined],
    ['as on the neck above the capo of a dulcimer', capoedDulcimer, 1, 4, 4],
  ])('%s', (_how, neck, string, fret, expected) => {
    expect(numberOf(neck, string, fret)).toBe(expected);
  });
});

describe('what a tablature staff cannot show is said', () => {
  test.each([
    ['of a guitar: nothing', guitar, []],
    ['of a guitar with a capo: nothing', capoed, []],
    ['of a capo over some strings', partly, ['Capo at fret 2, over strings 3, 4, 5 only']],
    ['of a capo where frets are missing', capoedDulcimer, ['Capo at fret 1']],
    [
      'of courses',
      neckOf('G3/G3-D4/D4-A4/A4-E5/E5'),
      ['Courses G3/G3 D4/D4 A4/A4 E5/E5: the first string of each is written'],
    ],
  ])('%s', (_what, neck, remarks) => {
    expect(tabStaff(neck).remarks.map(remarkInWords)).toEqual(remarks);
  });
});
