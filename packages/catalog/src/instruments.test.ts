import { describe, expect, test } from 'vitest';
import { CATALOGUE } from './catalogue.ts';
import { findInstrument } from './find.ts';

describe('instruments', () => {
  const openMidi = (id: string) =>
    findInstrument(id)?.tunings[0].courses.map(([principal]) => principal.midi);

  // Wikipedia, Guitar tunings, Bass guitar tuning, Seven-string guitar, Ukulele, Mandolin; MIDI 1.0, C4 = 60.
  test.each([
    ['guitar-6', [40, 45, 50, 55, 59, 64]],
    ['guitar-7', [35, 40, 45, 50, 55, 59, 64]],
    ['bass-4', [28, 33, 38, 43]],
    ['bass-5', [23, 28, 33, 38, 43]],
    ['ukulele-soprano', [67, 60, 64, 69]],
    ['mandolin', [55, 62, 69, 76]],
    ['banjo-5', [67, 50, 55, 59, 62]],
  ])('%s is tuned to %j, low side first', (id, midi) => {
    expect(openMidi(id)).toEqual(midi);
  });

  test('hold the short string of the banjo, the pairs of the mandolin and the frets of the dulcimer', () => {
    expect(findInstrument('banjo')?.shortStrings).toEqual([{ string: 5, startsAtFret: 5 }]);
    expect(findInstrument('mandolin')?.tunings[0].courses.map((course) => course.length)).toEqual([
      2, 2, 2, 2,
    ]);
    // Wikipedia, Appalachian dulcimer: the open string, its Mixolydian scale, and 6+ for the major seventh.
    const firstOctave = findInstrument('dulcimer')?.partialFrets?.filter(({ fret }) => fret <= 7);
    expect(firstOctave?.map(({ semitones }) => semitones)).toEqual([2, 4, 5, 7, 9, 10, 11, 12]);
  });

  test('take two frets a finger on the short necks in fifths alone', () => {
    const wide = CATALOGUE.instruments.filter(({ handFrame }) => handFrame === 'two-frets-per-finger');
    expect(wide.map(({ id }) => id)).toEqual(['mandolin', 'mandola']);
    for (const { scaleLengthMm } of wide) expect(scaleLengthMm).toBeLessThan(500);
  });

  test('cite sources', () => {
    for (const { sources, handFrameSources } of CATALOGUE.instruments) {
      expect(sources.length).toBeGreaterThan(0);
      expect(handFrameSources.length).toBeGreaterThan(0);
    }
  });
});
