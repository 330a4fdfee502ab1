import { parseMeter } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { neckOf, valueIn } from './given.ts';
import { measuresOf, scoreOf, textOf } from './given-musicxml.ts';
import { OPEN, pieceOf } from './given-piece.ts';

describe('the head of a score', () => {
  test('says what it is, what it is called and what it is played on', () => {
    const score = scoreOf(pieceOf(), { midiProgram: 33, musicXmlSound: 'pluck.bass.electric' });
    expect(score['@version']).toBe('4.0');
    expect(score.work['work-title']).toBe('A Aeolian');
    expect(score['part-list']['score-part']).toEqual({
      '@id': 'P1',
      'part-name': 'neck',
      'score-instrument': {
        '@id': 'P1-I1',
        'instrument-name': 'neck',
        'instrument-sound': 'pluck.bass.electric',
      },
      // MusicXML counts programs from 1.
      'midi-instrument': { '@id': 'P1-I1', 'midi-channel': 1, 'midi-program': 34 },
    });
  });

  test('is safe whatever the title holds, and in signs that any font has', () => {
    const title = 'Round of <b>"A" & \'B\'</b> ♭7 𝄫7\u0000\ud834';
    expect(scoreOf(pieceOf(), { title }).work['work-title']).toBe('Round of <b>"A" & \'B\'</b> ♭7 ♭♭7');
  });

  test('has a staff with its clef and a tablature staff with its tuning', () => {
    const bass = neckOf(OPEN.bass, {}, { capoFret: 1 });
    const piece = pieceOf({ meter: { beats: 7, unit: 8 } }, bass);
    const [first] = measuresOf(piece, { clef: { sign: 'F', line: 4, octaveChange: -1 } }, bass);
    const key = { fifths: 0, mode: 'none' };
    const time = { beats: 7, 'beat-type': 8 };
    expect(first?.attributes).toEqual({
      divisions: 480,
      key: [
        { '@number': '1', ...key },
        { '@number': '2', '@print-object': 'no', ...key },
      ],
      time: [
        { '@number': '1', ...time },
        { '@number': '2', '@print-object': 'no', ...time },
      ],
      staves: 2,
      clef: [
        { '@number': '1', sign: 'F', line: 4, 'clef-octave-change': -1 },
        { '@number': '2', sign: 'TAB', line: 5 },
      ],
      'staff-details': {
        '@number': '2',
        'staff-type': 'alternate',
        'staff-lines': 4,
        'staff-tuning': [
          ['E', 1],
          ['A', 1],
          ['D', 2],
          ['G', 2],
        ].map(([step, octave], at) => ({
          '@line': String(at + 1),
          'tuning-step': step,
          'tuning-octave': octave,
        })),
        capo: 1,
      },
    });
  });

  test('has no octave change where the clef has none', () => {
    expect(textOf(pieceOf(), { clef: { sign: 'C', line: 3, octaveChange: 0 } })).not.toContain(
      'clef-octave-change',
    );
  });

  test.each([
    ['4/4', 'quarter', 90],
    ['7/8', 'eighth', 45],
    ['2/2', 'half', 180],
    ['5/16', '16th', 22.5],
  ])('in %s gives the tempo in %ss, and in quarters to be played', (text, unit, quarters) => {
    const [first] = measuresOf(pieceOf({ tempoBpm: 90, meter: valueIn(parseMeter(text)) }));
    const [tempo] = first?.direction ?? [];
    expect(tempo?.['direction-type'][0]?.metronome).toEqual({ 'beat-unit': unit, 'per-minute': 90 });
    expect(tempo?.sound).toEqual({ '@tempo': String(quarters) });
  });

  test('says in words what a tablature staff cannot show', () => {
    const neck = neckOf(OPEN.guitar, {}, { capoFret: 2, capoStrings: [1, 2] });
    const [first] = measuresOf(pieceOf({}, neck), {}, neck);
    expect(first?.direction?.map((one) => one['direction-type'][0]?.words)).toContain(
      'Capo at fret 2, over strings 1, 2 only',
    );
  });
});
