import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, valueIn } from '../given.ts';
import { formatMidi } from '../pitch/pitch.ts';
import type { Instrument } from './instrument.ts';
import { readTuning } from './read-tuning.ts';
import { openStringNames, parseTuning } from './tuning.ts';

/** The open strings that are guessed for letters on an instrument. */
function guess(letters: string, instrument?: Pick<Instrument, 'tunings'>): string {
  const { tuning, guessed } = valueIn(readTuning(letters, instrument ? { instrument } : {}));
  expect(guessed).toBe(true);
  return tuning.id;
}

// Every tuning here is common practice (no one source).
describe('the octaves of letters, where the instrument has as many strings', () => {
  test.each([
    ['guitar', 'DADGAD', 'D2-A2-D3-G3-A3-D4'],
    ['guitar', 'CGCGCE', 'C2-G2-C3-G3-C4-E4'],
    ['guitar', 'DGDGBD', 'D2-G2-D3-G3-B3-D4'],
    ['guitar', 'EbAbDbGbBbEb', 'Eb2-Ab2-Db3-Gb3-Bb3-Eb4'],
    ['guitar', 'BF#BEG#C#', 'B1-F#2-B2-E3-G#3-C#4'],
    ['bass', 'EADG', 'E1-A1-D2-G2'],
    ['bass', 'BEAD', 'B0-E1-A1-D2'],
    ['sevenString', 'AEADGBE', 'A1-E2-A2-D3-G3-B3-E4'],
    ['banjo', 'gDGBD', 'G4-D3-G3-B3-D4'],
    ['banjo', 'gCGCD', 'G4-C3-G3-C4-D4'],
    ['dulcimer', 'DAA', 'D3-A3-A3/A3'],
  ] as const)('are on a %s in %s those nearest to its own: %s', (name, letters, id) => {
    expect(guess(letters, INSTRUMENTS[name])).toBe(id);
  });

  test('are, half-way between two, the lower', () => {
    expect(guess('Bb Eb Ab Db F Bb', INSTRUMENTS.guitar)).toBe('Bb1-Eb2-Ab2-Db3-F3-Bb3');
  });

  test('go for the strings of a course too', () => {
    expect(guess('GDAD', INSTRUMENTS.mandolin)).toBe('G3/G3-D4/D4-A4/A4-D5/D5');
    const inOctaves = { tunings: [valueIn(parseTuning('G3/G4-C4/C5-E4/E4'))] as const };
    expect(guess('F C Eb', inOctaves)).toBe('F3/F4-C4/C5-Eb4/Eb4');
    expect(guess('F/F C/C E/E', inOctaves)).toBe('F3/F4-C4/C5-E4/E4');
    expect(guess('F/C C/G E/B', inOctaves)).toBe('F3/C5-C4/G4-E4/B3');
  });

  test('are those of its own tuning of these letters, where it has one', () => {
    const texts = ['E2-A2-D3-G3-B3-E4', 'C2-G2-D3-A3-E4-B4', 'E3-A3-D4-G4-B3-E4'] as const;
    const [standard, fifths, high] = texts.map((text) => valueIn(parseTuning(text)));
    if (!standard || !fifths || !high) throw new Error('three tunings');
    const instrument = { tunings: [standard, fifths, high] as const };
    expect(guess('CGDAEB', instrument)).toBe(fifths.id);
    expect(guess('EADGBE', instrument)).toBe(standard.id);
  });

  test('are never farther than a tritone from the standard string', () => {
    const letters = fc.array(fc.integer({ min: 0, max: 11 }), { minLength: 6, maxLength: 6 });
    const [standard] = INSTRUMENTS.guitar.tunings;
    fc.assert(
      fc.property(letters, (pitchClasses) => {
        const text = pitchClasses.map((one) => formatMidi(one + 60).replace('4', '')).join(' ');
        const { tuning } = valueIn(readTuning(text, { instrument: INSTRUMENTS.guitar }));
        for (const [at, [{ midi }]] of tuning.courses.entries()) {
          const off = midi - (standard.courses[at]?.[0].midi ?? Number.NaN);
          expect(off).toBeGreaterThanOrEqual(-6);
          expect(off).toBeLessThan(6);
        }
      }),
    );
  });
});

describe('the octaves of letters, where it has more or fewer strings', () => {
  test.each([
    ['guitar', 'BEADGBE', 'B1-E2-A2-D3-G3-B3-E4'],
    ['guitar', 'EADGBEA', 'E2-A2-D3-G3-B3-E4-A4'],
    ['guitar', 'F# B E A D G B E', 'F#1-B1-E2-A2-D3-G3-B3-E4'],
    ['guitar', 'EADG', 'E2-A2-D3-G3'],
    ['guitar', 'DGBE', 'D3-G3-B3-E4'],
    ['guitar', 'CGDAE', 'C2-G2-D3-A3-E4'],
    ['bass', 'BEADG', 'B0-E1-A1-D2-G2'],
    ['bass', 'EADGC', 'E1-A1-D2-G2-C3'],
    ['bass', 'BEADGC', 'B0-E1-A1-D2-G2-C3'],
    ['bass', 'C', 'C3'],
    ['mandolin', 'CGDAE', 'C3-G3-D4-A4-E5'],
    ['banjo', 'DGBD', 'D3-G3-B3-D4'],
  ] as const)('climb on a %s from string to string: %s is %s', (name, letters, id) => {
    expect(guess(letters, INSTRUMENTS[name])).toBe(id);
  });

  test('climb by less than an octave, or stay', () => {
    const letters = fc.array(fc.constantFrom('A', 'Bb', 'C', 'D#', 'E', 'G'), {
      minLength: 1,
      maxLength: 10,
    });
    fc.assert(
      fc.property(letters, (names) => {
        const read = readTuning(names.join(' '));
        if (!read.ok) return;
        const midis = read.value.tuning.courses.map(([{ midi }]) => midi);
        for (const [at, midi] of midis.entries()) {
          const off = midi - (midis[at - 1] ?? midi);
          expect(off).toBeGreaterThanOrEqual(0);
          expect(off).toBeLessThan(12);
        }
        expect(openStringNames(read.value.tuning).map((name) => name.replace(/-?\d$/, ''))).toEqual(names);
      }),
    );
  });

  test('stand beside a guitar where no instrument is named', () => {
    expect(guess('EADGBE')).toBe('E2-A2-D3-G3-B3-E4');
    expect(guess('GCEA')).toBe('G3-C4-E4-A4');
  });
});
