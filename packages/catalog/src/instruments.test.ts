import { buildNeck } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { CATALOGUE } from './catalogue.ts';
import { findInstrument } from './find.ts';
import { INSTRUMENT_KINDS, KIND_NAMES } from './instrument-kind.ts';

/** Those of MusicXML's list of sounds, sounds.xml, whose names begin with `pluck` and name fretted ones. */
const MUSICXML_SOUNDS = `balalaika.prima bandurria banjo banjo.tenor banjolele bass.electric bouzouki
  bouzouki.irish cavaquinho charango cittern cuatro domra dulcimer guitar guitar.electric guitar.requinto
  guitar.steel-string laud lute mandocello mandola mandolin mandolin.octave pipa tres ukulele
  ukulele.tenor vihuela vihuela.mexican`
  .split(/\s+/)
  .map((name) => `pluck.${name}`);

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

  test('are at least 45, with at least 130 tunings', () => {
    expect(CATALOGUE.instruments.length).toBeGreaterThanOrEqual(45);
    expect(CATALOGUE.instruments.flatMap(({ tunings }) => tunings).length).toBeGreaterThanOrEqual(130);
  });

  test('stand by kind, and every kind has some', () => {
    const kinds = CATALOGUE.instruments.map(({ kind }) => kind);
    expect([...new Set(kinds)]).toEqual(INSTRUMENT_KINDS);
    expect(kinds).toEqual(
      kinds.toSorted((a, b) => INSTRUMENT_KINDS.indexOf(a) - INSTRUMENT_KINDS.indexOf(b)),
    );
    expect(new Set(Object.values(KIND_NAMES)).size).toBe(INSTRUMENT_KINDS.length);
  });

  test('have a neck that core can build in every tuning, up to the most frets that are made', () => {
    for (const instrument of CATALOGUE.instruments) {
      for (const tuning of instrument.tunings) {
        expect(buildNeck(instrument, tuning).ok).toBe(true);
        expect(buildNeck(instrument, tuning, { frets: instrument.fretsRange.to }).ok).toBe(true);
      }
    }
  });

  test.each(CATALOGUE.instruments.map(({ id, musicXmlSound }) => [id, musicXmlSound]))(
    '%s has the sound %s of MusicXML',
    (_, sound) => {
      expect(MUSICXML_SOUNDS).toContain(sound);
    },
  );

  // Wikipedia, Lute: tied gut frets. That they were often not equal is recalled.
  test('with tied frets say that they are served as equal temperament', () => {
    const tied = CATALOGUE.instruments.filter(({ kind }) => kind === 'lute');
    expect(tied.map(({ id }) => id)).toEqual(['lute-renaissance-6', 'vihuela-renaissance']);
    for (const { note } of tied) expect(note).toMatch(/tied gut.*served as equal temperament/);
  });

  test('cite a source at a tuning where it is another than that of the instrument', () => {
    const tunings = findInstrument('guitar')?.tunings;
    expect(tunings?.find(({ id }) => id === 'standard')?.sources).toBeUndefined();
    expect(tunings?.find(({ id }) => id === 'dadgad')?.sources?.map(({ id }) => id)).toEqual([
      'guitar-tuning-lists',
    ]);
  });

  test('take two frets a finger on the short necks in fifths alone', () => {
    const wide = CATALOGUE.instruments.filter(({ handFrame }) => handFrame === 'two-frets-per-finger');
    expect(wide.map(({ id }) => id)).toEqual(['mandolin', 'mandola', 'domra-4']);
    for (const { scaleLengthMm } of wide) expect(scaleLengthMm).toBeLessThan(500);
  });

  test('cite sources', () => {
    for (const { sources, handFrameSources } of CATALOGUE.instruments) {
      expect(sources.length).toBeGreaterThan(0);
      expect(handFrameSources.length).toBeGreaterThan(0);
    }
  });
});

describe('instruments that are not served', () => {
  test('say why in whole sentences, with their sources', () => {
    expect(CATALOGUE.notServed.map(({ id }) => id)).toEqual([
      'baglama',
      'oud',
      'guitarron',
      'bass-fretless',
      'banjo-fretless',
    ]);
    for (const { reason, sources } of CATALOGUE.notServed) {
      expect(reason).toMatch(/^[A-Z].{40,}\.$/);
      expect(sources.length).toBeGreaterThan(0);
    }
  });
});
