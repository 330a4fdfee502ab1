import { parseNote, parsePitch } from '@stillroot/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asciiAccidentals, type Naming, nameNote } from './note-names.ts';
import { englishNote, notesOfRun, withoutAccidentalWords } from './note-reading.ts';

const SPELLED = ['english', 'german', 'romance', 'dutch', 'scandinavian'] as const;
const NAMINGS: readonly Naming[] = [...SPELLED, 'numbers'];
const ACCIDENTALS = ['𝄫', '♭', '', '♯', '𝄪'];

/** All 35 notes of a letter and up to two accidentals. */
const NOTES = [...'CDEFGAB'].flatMap((letter) => ACCIDENTALS.map((sign) => [letter, sign] as const));
const note = fc.constantFrom(...NOTES);
const octave = fc.option(fc.integer({ min: -1, max: 9 }), { nil: undefined });
const english = (letter: string, sign: string, register: number | undefined): string =>
  asciiAccidentals(letter + sign) + (register ?? '');

describe('reading is the other way round of naming', () => {
  test('35 notes in every octave and none come back as they were', () => {
    fc.assert(
      fc.property(
        note,
        octave,
        fc.constantFrom(...SPELLED),
        fc.constantFrom(asciiAccidentals, (text: string) => text),
        ([letter, sign], register, naming, written) => {
          const named = written(nameNote(letter, sign, naming, register));
          expect(englishNote(named, naming)).toBe(
            // Syllables begin small, and stand for capitals.
            english(letter, sign, register),
          );
        },
      ),
    );
  });

  test('a name that is read is named so again, in numbers as well', () => {
    fc.assert(
      fc.property(note, octave, fc.constantFrom(...NAMINGS), ([letter, sign], register, naming) => {
        const named = nameNote(letter, sign, naming, register);
        // The notes below 12 of MIDI are called as the twelve pitch classes are.
        fc.pre(
          naming !== 'numbers' || register === undefined || (Number(named) >= 12 && Number(named) <= 127),
        );
        const [, name = '', accidental = '', digits] =
          /^([A-G])([b#]*)(-?\d+)?$/.exec(englishNote(named, naming) ?? '') ?? [];
        const signed = accidental.replace('bb', '𝄫').replace('##', '𝄪').replace('b', '♭').replace('#', '♯');
        expect(nameNote(name, signed, naming, digits === undefined ? undefined : Number(digits))).toBe(named);
      }),
    );
  });

  // MIDI 1.0: middle C is 60.
  test('every number is the note of that number', () => {
    for (let midi = 12; midi <= 127; midi += 1) {
      const pitch = parsePitch(englishNote(String(midi), 'numbers') ?? '');
      expect(pitch.ok && pitch.value.midi).toBe(midi);
    }
    expect(englishNote('128', 'numbers')).toBeUndefined();
  });

  test('small letters stay small, for notations in which that counts', () => {
    expect(englishNote('h', 'german')).toBe('b');
    expect(englishNote('b', 'german')).toBe('bb');
    expect(englishNote('fis', 'dutch')).toBe('f#');
    expect(englishNote('mi', 'romance')).toBe('E');
  });
});

/** LilyPond Notation Reference, "Note names in other languages": C to B with up to one accidental. */
test.each([
  ['german', 'Ces C Cis Des D Dis Es E Eis Fes F Fis Ges G Gis As A Ais B H His'],
  ['dutch', 'Ces C Cis Des D Dis Es E Eis Fes F Fis Ges G Gis As A Ais Bes B Bis'],
  ['scandinavian', 'Cess C Ciss Dess D Diss Ess E Eiss Fess F Fiss Gess G Giss Ass A Aiss B H Hiss'],
  // Spanish in the same table has do re mi with b and s; signs are common practice, no source.
  ['romance', 'dob do do# reb re re# mib mi mi# fab fa fa# solb sol sol# lab la la# sib si si#'],
] as const)('%s names of the table are those notes', (naming, table) => {
  const notes = table.split(' ').map((name) => englishNote(name, naming));
  expect(notes.join(' ')).toBe('Cb C C# Db D D# Eb E E# Fb F F# Gb G G# Ab A A# Bb B B#');
});

test.each([
  ['H♭', 'german', 'Bb'],
  ['F#', 'german', 'F#'],
  ['Es', 'scandinavian', 'Eb'],
  ['Fis3', 'scandinavian', 'F#3'],
  ['ré', 'romance', 'D'],
  ['Lax', 'romance', 'A##'],
  ['SOL♯3', 'romance', 'G#3'],
  ['C-1', 'german', 'C-1'],
  ['Asas', 'german', 'Abb'],
  ['Heses', 'german', 'Bbb'],
] as const)('%s (%s) is %s', (text, naming, name) => {
  expect(englishNote(text, naming)).toBe(name);
  expect(parseNote(name.replace(/-?\d$/, '')).ok).toBe(true);
});

test.each([
  ['H', 'english'],
  ['H', 'dutch'],
  ['Fis', 'english'],
  ['B#', 'german'],
  ['As', 'romance'],
  ['dó#x', 'romance'],
  ['', 'german'],
  ['constructor', 'german'],
  ['__proto__', 'romance'],
  ['Hi', 'german'],
  ['Moll', 'german'],
] as const)('%j is no note (%s)', (text, naming) => {
  expect(englishNote(text, naming)).toBeUndefined();
});

test.each([
  ['EADGHE', 'german', 'E A D G H E'],
  ['EsAsDesGesBEs', 'german', 'Es As Des Ges B Es'],
  ['milaresolsimi', 'romance', 'mi la re sol si mi'],
  ['MiLaReSolSiMi', 'romance', 'Mi La Re Sol Si Mi'],
  ['eadghe', 'german', undefined],
  ['EADGBX', 'german', undefined],
  ['EH', 'german', undefined],
] as const)('%s run together (%s) are %s', (text, naming, notes) => {
  expect(notesOfRun(text, naming)?.join(' ')).toBe(notes);
});

test.each([
  ['C sharp minor', 'C# minor'],
  ['B flat Dorian', 'Bb Dorian'],
  ['dorian in f-sharp', 'dorian in f#'],
  ['E double flat', 'Ebb'],
  ['si bemol mayor', 'sib mayor'],
  ['fa sostenido dórico', 'fa# dórico'],
  ['dórico en si bemol', 'dórico en sib'],
  ['re doble bemol', 'rebb'],
  ['dorian with a sharp 4', 'dorian with a sharp 4'],
  ['dorian with a sharp fourth', 'dorian with a sharp fourth'],
  ['dorian sharp 4', 'dorian sharp 4'],
  ['Locrian double flat 7', 'Locrian double flat 7'],
  ['sharp', 'sharp'],
])('%s is %s', (text, plain) => {
  expect(withoutAccidentalWords(text)).toBe(plain);
});
