import type { Piece } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { neckOf, scaleOf } from './given.ts';
import { measuresOf, OPTIONS } from './given-musicxml.ts';
import { GUITAR, pieceOf } from './given-piece.ts';
import { musicXml } from './musicxml.ts';

describe('a section', () => {
  const piece = pieceOf();
  const [section] = piece.sections;
  if (section === undefined) throw new Error('no section');
  // The same eight quarters as two modes of a bar each.
  const twoModes: Piece = {
    ...piece,
    sections: [
      { ...section, name: 'A Locrian b4 bb7', endTicks: 1920 },
      { ...section, modeIndex: 3, name: 'A Dorian #4', startTicks: 1920 },
    ],
  };
  const measures = measuresOf(twoModes);

  test('begins on a line of its own under its place in the round and its name', () => {
    expect(measures.map(({ direction }) => direction?.at(-1)?.['direction-type'])).toEqual([
      [{ rehearsal: 1 }, { words: 'A Locrian ♭4 ♭♭7' }],
      [{ rehearsal: 4 }, { words: 'A Dorian ♯4' }],
    ]);
    expect(measures.map(({ print }) => print?.['@new-system'])).toEqual([undefined, 'yes']);
  });

  test('ends with a double bar, and the last with a final one', () => {
    expect(measures.map(({ barline }) => barline?.['bar-style'])).toEqual(['light-light', 'light-heavy']);
  });
});

describe('a note', () => {
  test('has its finger on the staff, its string and fret on the tablature staff', () => {
    const piece = pieceOf();
    const notes = measuresOf(piece).flatMap(({ note }) => note);
    expect(notes.filter(({ staff }) => staff === 1).map(({ notations }) => notations?.technical)).toEqual(
      piece.notes.map(({ finger }) => ({ fingering: finger })),
    );
    expect(notes.filter(({ staff }) => staff === 2).map(({ notations }) => notations?.technical)).toEqual(
      piece.notes.map(({ string, fret }) => ({ string, fret })),
    );
  });

  test('on an added fret has the name of the fret, and no number', () => {
    const partialFrets = [
      ...[2, 4, 5, 7, 9, 10].map((semitones, at) => ({ fret: at + 1, semitones })),
      { fret: 6.5, semitones: 11 },
      { fret: 7, semitones: 12 },
    ];
    const dulcimer = neckOf('D3', { scaleLengthMm: 700, frets: 7, partialFrets });
    const notes = measuresOf(pieceOf({}, dulcimer, scaleOf('D', '2212221')), {}, dulcimer).flatMap(
      ({ note }) => note,
    );
    const places = notes.filter(({ staff }) => staff === 2).map(({ notations }) => notations?.technical);
    expect(places.slice(5)).toEqual([
      { string: 1, fret: 5 },
      { string: 1, 'other-technical': 6.5 },
      { string: 1, fret: 7 },
    ]);
  });

  test('fills its bar with others and rests, on both staves alike', () => {
    for (const noteValue of ['dotted-half', 'eighth-triplet', 'sixteenth'] as const) {
      const piece = pieceOf({ noteValue, meter: { beats: 7, unit: 8 }, countInBars: 1, restBeats: 3 });
      for (const { note } of measuresOf(piece)) {
        for (const staff of [1, 2]) {
          const ticks = note.filter((one) => one.staff === staff).reduce((sum, one) => sum + one.duration, 0);
          expect(ticks).toBe(1680);
        }
      }
    }
  });
});

describe('a bar in which nothing sounds', () => {
  test('is a rest of its own length on both staves, shown on the first', () => {
    const piece = pieceOf({ meter: { beats: 4, unit: 4 } });
    const longer = { ...piece, sections: piece.sections.map((one) => ({ ...one, endTicks: 5760 })) };
    const rest = { rest: { '@measure': 'yes' }, duration: 1920 };
    expect(measuresOf(longer).at(-1)?.note).toEqual([
      { ...rest, voice: 1, staff: 1 },
      { '@print-object': 'no', ...rest, voice: 2, staff: 2 },
    ]);
  });
});

describe('a score is refused', () => {
  test('where a note or a string lies below C0', () => {
    const neck = neckOf('A0-E1');
    expect(musicXml(pieceOf({}, neck), neck, OPTIONS).ok).toBe(true);
    const low = neckOf('B-1-E1');
    const result = musicXml(pieceOf({}, low), low, OPTIONS);
    expect(result).toEqual({
      ok: false,
      problem: {
        field: 'tuning',
        value: 'B-1 E1',
        expected: 'notes in the octaves 0 to 9, the only ones that MusicXML has',
        expectation: { kind: 'musicxml-octaves' },
      },
    });
  });

  test('where there is no such program', () => {
    const result = musicXml(pieceOf(), GUITAR, { ...OPTIONS, midiProgram: 128 });
    expect(result).toMatchObject({ ok: false, problem: { field: 'midiProgram', value: '128' } });
  });
});
