import { describe, expect, test } from 'vitest';
import { asciiAccidentals, type Naming, nameNote, renameNotes } from './note-names.ts';

const LETTERS = [...'CDEFGAB'];
const ACCIDENTALS = ['𝄫', '♭', '', '♯', '𝄪'];

/** LilyPond Notation Reference, "Note names in other languages": from double flat to double sharp, C to B. */
const LILYPOND: readonly (readonly [Naming, string])[] = [
  [
    'german',
    `Ceses Ces C Cis Cisis  Deses Des D Dis Disis  Eses Es E Eis Eisis  Feses Fes F Fis Fisis
     Geses Ges G Gis Gisis  Asas As A Ais Aisis  Heses B H His Hisis`,
  ],
  [
    'dutch',
    `Ceses Ces C Cis Cisis  Deses Des D Dis Disis  Eses Es E Eis Eisis  Feses Fes F Fis Fisis
     Geses Ges G Gis Gisis  Ases As A Ais Aisis  Beses Bes B Bis Bisis`,
  ],
  [
    'scandinavian',
    `Cessess Cess C Ciss Cississ  Dessess Dess D Diss Dississ  Essess Ess E Eiss Eississ
     Fessess Fess F Fiss Fississ  Gessess Gess G Giss Gississ  Assess Ass A Aiss Aississ
     Hessess B H Hiss Hississ`,
  ],
];

describe('nameNote', () => {
  test.each(LILYPOND)('%s names are those of the table', (naming, table) => {
    const names = LETTERS.flatMap((letter) => ACCIDENTALS.map((sign) => nameNote(letter, sign, naming)));
    expect(names).toEqual(table.split(/\s+/));
  });

  // Guidonian syllables as Romance languages name the notes (common practice, no source).
  test('Romance names keep the signs', () => {
    expect(LETTERS.map((letter) => nameNote(letter, '', 'romance')).join(' ')).toBe('do re mi fa sol la si');
    expect(nameNote('F', '♯', 'romance')).toBe('fa♯');
    expect(nameNote('B', '𝄫', 'romance')).toBe('si𝄫');
  });

  // Forte, The Structure of Atonal Music (1973): C = 0, enharmonic notes alike. MIDI 1.0: middle C is 60.
  test.each([
    ['C', '', undefined, '0'],
    ['B', '♯', undefined, '0'],
    ['C', '♭', undefined, '11'],
    ['F', '𝄪', undefined, '7'],
    ['C', '', 4, '60'],
    ['E', '', 2, '40'],
    ['C', '♭', 4, '59'],
    ['B', '♯', 3, '60'],
  ])('%s%s in octave %s is number %s', (letter, sign, octave, number) => {
    expect(nameNote(letter, sign, 'numbers', octave)).toBe(number);
  });

  test('alterations beyond double ones repeat the ending', () => {
    expect(nameNote('F', '𝄪♯', 'german')).toBe('Fisisis');
    expect(nameNote('E', '𝄫♭', 'german')).toBe('Eseses');
    expect(nameNote('B', '𝄫♭', 'german')).toBe('Heseses');
  });
});

describe('renameNotes', () => {
  test.each([
    ['A B C D E F G♯', 'all', 'A H C D E F Gis'],
    ['B♭ → B', 'all', 'B → H'],
    ['Six-string guitar, Drop D (D2 A2 B♭3)', 'pitches', 'Six-string guitar, Drop D (D2 A2 B3)'],
    ['B Dorian ♯4, Drop B (B1 E2)', 'leading', 'H Dorian ♯4, Drop B (H1 E2)'],
    ['F♯/G♭', 'all', 'Fis/Ges'],
    ['b♭-Moll, c♯-Moll, B♭-Dur, E', 'all', 'b-Moll, cis-Moll, B-Dur, E'],
    ['B-Dur', 'leading', 'H-Dur'],
    ['Bright and dark: ♭3 and 𝄫7, a B', 'all', 'Bright and dark: ♭3 and 𝄫7, a H'],
  ] as const)('%s, %s', (text, which, renamed) => {
    expect(renameNotes(text, 'german', which)).toBe(renamed);
  });

  test('English is what the pages are written in', () => {
    expect(renameNotes('A B♭ C', 'english', 'all')).toBe('A B♭ C');
  });
});

test('accidentals in ASCII are those of the data', () => {
  expect(asciiAccidentals('B♭ Dorian ♮6 𝄫7 F𝄪')).toBe('Bb Dorian nat6 bb7 F##');
});
