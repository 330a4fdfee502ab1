import { buildNeck, type Instrument, openStringNames, parseTuning } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { pitchOf, unwrap } from './in-core.ts';
import { diatonicFrets, openStrings } from './tables/open-strings.ts';

describe('open strings, low to high', () => {
  test('are tabled for twelve instruments', () => {
    expect(new Set(openStrings.map(([instrument]) => instrument)).size).toBe(12);
  });

  test.each(openStrings)('of a %s in %s, %s, sound %s (%s)', (_instrument, _name, written, midi) => {
    const tuning = unwrap(parseTuning(written));
    const sounding = tuning.courses.map((course) => course.map((pitch) => pitch.midi).join('/'));
    expect(sounding.join('-')).toBe(midi);
    expect(tuning.id).toBe(written);
    const principal = written.split('-').map((course) => course.split('/')[0]);
    expect(openStringNames(tuning)).toEqual(principal);
  });

  // Re-entrant: a string sounds lower than the one before it.
  test.each(openStrings)(
    'of a %s in %s, %s, rise throughout unless re-entrant',
    (instrument, name, written) => {
      const midi = unwrap(parseTuning(written)).courses.map(([principal]) => principal.midi);
      const isReentrant = midi.some((one, at) => one < (midi[at - 1] ?? one));
      expect(isReentrant).toBe(instrument === 'five-string banjo' || name.includes('re-entrant'));
    },
  );
});

/** An instrument that has these strings and nothing special. */
function instrumentWith(written: string): Instrument {
  return {
    id: 'example',
    name: 'example',
    aliases: [],
    scaleLengthMm: 660,
    frets: 16,
    handFrame: 'one-finger-per-fret',
    shortStrings: [],
    tunings: [unwrap(parseTuning(written))],
  };
}

describe('necks that lack frets', () => {
  // General reference lists of five-string banjo tunings: the fifth peg is at fret 5.
  test('the short string of a banjo is open at fret 5 and sounds its pitch plus what lies above that', () => {
    const banjo: Instrument = {
      ...instrumentWith('G4-D3-G3-B3-D4'),
      shortStrings: [{ string: 5, startsAtFret: 5 }],
    };
    const fifth = unwrap(buildNeck(banjo, banjo.tunings[0])).strings[4];
    const open = pitchOf('G4').midi;
    expect(fifth?.openMidi).toBe(open);
    expect(fifth?.midiBySlot.slice(0, 5)).toEqual([-1, -1, -1, -1, -1]);
    expect(fifth?.midiBySlot.slice(5)).toEqual(Array.from({ length: 12 }, (_, above) => open + above));
  });

  // Wikipedia, Appalachian dulcimer, and a players' fret listing; 1+, 8+ and 13+ are left out here.
  test.each(diatonicFrets)(
    'fret %f of a dulcimer lies %i semitones above the nut, %s on a D string',
    (...row) => {
      const [fret, semitones, note] = row;
      const dulcimer: Instrument = {
        ...instrumentWith('D3-A3-D4'),
        partialFrets: diatonicFrets.map(([its, above]) => ({ fret: its, semitones: above })),
      };
      const neck = unwrap(buildNeck(dulcimer, dulcimer.tunings[0]));
      const slot = neck.slots.findIndex((one) => one.fret === fret);
      expect(neck.strings[0]?.midiBySlot[slot]).toBe(pitchOf(note).midi);
      expect(neck.slots[slot]?.distanceMm).toBeCloseTo(660 - 660 / 2 ** (semitones / 12), 9);
      expect(neck.slots).toHaveLength(diatonicFrets.length + 1);
    },
  );
});
