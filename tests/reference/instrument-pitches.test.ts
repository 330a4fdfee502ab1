import { CATALOGUE, findInstrument } from '@stillroot/catalog';
import { buildNeck, type Instrument, openStringNames, type Pitch, parseTuning } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { readNote } from './by-hand.ts';
import { pitchOf, unwrap } from './in-core.ts';
import { diatonicFrets, openStrings } from './tables/open-strings.ts';

const rows = openStrings.flatMap(({ id, source, tunings }) =>
  tunings.map(([tuning, written, midi, remarks = '']) => ({ id, tuning, written, midi, remarks, source })),
);

describe('open strings, low to high', () => {
  test('are tabled for every instrument and tuning of the catalogue, and no other', () => {
    const named = CATALOGUE.instruments.flatMap(({ id, tunings }) =>
      tunings.map((tuning) => `${id}, ${tuning.id}`),
    );
    expect(named.toSorted()).toEqual(rows.map(({ id, tuning }) => `${id}, ${tuning}`).toSorted());
    expect(openStrings.length).toBeGreaterThanOrEqual(45);
    expect(rows.length).toBeGreaterThanOrEqual(130);
  });

  test.each(rows)('of $id in $tuning, $written, sound $midi ($source)', ({ written, midi }) => {
    const byHand = written.replace(/([A-G][#b]*)(\d)/g, (_, note, octave) =>
      String(12 * (Number(octave) + 1) + readNote(note).pitchClass),
    );
    expect(byHand).toBe(midi);
    const tuning = unwrap(parseTuning(written));
    const sounding = tuning.courses.map((course) => course.map((pitch) => pitch.midi).join('/'));
    expect(sounding.join('-')).toBe(midi);
    expect(tuning.id).toBe(written);
    const principal = written.split('-').map((course) => course.split('/')[0]);
    expect(openStringNames(tuning)).toEqual(principal);
  });

  test.each(rows)("of $id in $tuning are the catalogue's", ({ id, tuning, written, midi, remarks }) => {
    const own = findInstrument(id)?.tunings.find((one) => one.id === tuning);
    const textOf = (sayPitch: (pitch: Pitch) => string | number) =>
      own?.courses.map((course) => course.map(sayPitch).join('/')).join('-');
    expect(textOf((pitch) => pitch.name)).toBe(written);
    expect(textOf((pitch) => pitch.midi)).toBe(midi);
    expect(own?.isRecalled).toBe(remarks.includes('recalled'));
    expect(own?.isReentrant).toBe(remarks.includes('re-entrant'));
  });

  // Re-entrant: a string sounds lower than the one before it.
  test.each(rows)('of $id in $tuning, $written, rise unless re-entrant', ({ midi, remarks }) => {
    const principal = midi.split('-').map((course) => Number.parseInt(course, 10));
    const falls = principal.some((one, at) => one < (principal[at - 1] ?? one));
    expect(falls).toBe(remarks.includes('re-entrant'));
  });

  // Grove, Tres, as quoted: the first and third courses are in octaves. The melody is heard on the upper
  // string of the first course (common practice, no source).
  test('have the lowest string of a course as its principal, but for the first course of the tres', () => {
    const others = rows.flatMap(({ id, tuning, midi }) =>
      midi.split('-').flatMap((course, at) => {
        const [principal = 0, ...rest] = course.split('/').map(Number);
        return rest.some((one) => one < principal) ? [`${id} ${tuning} ${at}`] : [];
      }),
    );
    expect(others).toEqual(['tres-cubano c-major 2', 'tres-cubano d-major 2']);
  });
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

  // As above; 13+ is the octave of 6+, and frets 15 and 16 those of 8 and 9. That a stick dulcimer nearly
  // always has 6+ is recalled.
  test.each([
    ['dulcimer-mountain', 14, [13.5, 15, 16]],
    ['dulcimer-stick', 14, []],
  ])('%s has the tabled frets up to %i, and %j', (id, last, beyond) => {
    const frets = findInstrument(id)?.partialFrets ?? [];
    const tabled = diatonicFrets.filter(([fret]) => fret <= last);
    const own = frets.filter(({ fret }) => !beyond.includes(fret));
    expect(own).toEqual(tabled.map(([fret, semitones]) => ({ fret, semitones })));
    expect(frets.filter(({ fret }) => beyond.includes(fret))).toEqual(
      [
        { fret: 13.5, semitones: 23 },
        { fret: 15, semitones: 26 },
        { fret: 16, semitones: 28 },
      ].filter(({ fret }) => beyond.includes(fret)),
    );
  });
});
