import { seventhsOf, triadsOf } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { readNote, soundsOf } from './by-hand.ts';
import { scaleOf } from './in-core.ts';
import { chordedScales, chordSemitones } from './tables/degree-chords.ts';

const byTriads = chordedScales.map(({ scale, formula, triads }) => [scale, formula, triads] as const);
const bySevenths = chordedScales
  .filter(({ sevenths }) => sevenths !== '')
  .map(({ scale, formula, sevenths }) => [scale, formula, sevenths] as const);

describe('chords on the degrees, as printed', () => {
  test('are given for eight scales, with sevenths for seven', () => {
    expect(byTriads).toHaveLength(8);
    expect(bySevenths).toHaveLength(7);
  });

  test.each(byTriads)('the triads of %s, %s, are %s', (_scale, formula, triads) => {
    const chords = triadsOf(scaleOf('A', formula));
    expect(chords.map(({ kind }) => kind).join(' ')).toBe(triads);
    expect(chords.map(({ degree }) => degree)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(chords.map(({ semitones }) => semitones.join(' '))).toEqual(
      triads.split(' ').map((kind) => chordSemitones[kind]),
    );
  });

  test.each(bySevenths)('the seventh chords of %s, %s, are %s', (_scale, formula, sevenths) => {
    const chords = seventhsOf(scaleOf('A', formula));
    expect(chords.map(({ kind }) => kind).join(' ')).toBe(sevenths);
    expect(chords.map(({ semitones }) => semitones.join(' '))).toEqual(
      sevenths.split(' ').map((kind) => chordSemitones[kind]),
    );
  });

  test.each(bySevenths)('the seventh chords of %s, %s, are spelled in thirds on every degree', (...row) => {
    const scale = scaleOf('Eb', row[1]);
    for (const [at, { notes, semitones }] of seventhsOf(scale).entries()) {
      expect(notes[0]).toBe(scale.notes[at]);
      const bottom = readNote(notes[0] ?? '');
      expect(notes.map((note) => (readNote(note).letter - bottom.letter + 7) % 7)).toEqual([0, 2, 4, 6]);
      const above = soundsOf(notes.join(' ')).map((one) => (one - bottom.pitchClass + 12) % 12);
      expect(above).toEqual(semitones);
    }
  });
});

describe('the variety of chords in the major scale (J. Clough and G. Myerson, 1985)', () => {
  const major = scaleOf('C', '1 2 3 4 5 6 7');

  test('a shape of three notes, 1 3 5, comes in three species', () => {
    expect(new Set(triadsOf(major).map(({ kind }) => kind)).size).toBe(3);
  });

  test('a shape of four notes, 1 3 5 7, comes in four species', () => {
    expect(new Set(seventhsOf(major).map(({ kind }) => kind)).size).toBe(4);
  });
});
