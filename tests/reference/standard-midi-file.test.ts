import {
  buildNeck,
  fingeringsOf,
  type Instrument,
  type Piece,
  type PlayOptions,
  parseTuning,
  playFingering,
} from '@stillroot/core';
import { midiFile } from '@stillroot/notation';
import { describe, expect, test } from 'vitest';
import { scaleOf, unwrap } from './in-core.ts';

// Chunks, delta-times and meta-events: Standard MIDI Files 1.0 (MIDI Manufacturers Association, 1988, revised
// 1996); status bytes: MIDI 1.0 Detailed Specification; programs and percussion: General MIDI level 1. Read in
// reproductions of the specifications, and the bytes below laid out by hand.

const tunings = [unwrap(parseTuning('E1-A1-D2-G2'))] as const;
const BASS: Instrument = {
  id: 'bass',
  name: 'bass',
  aliases: [],
  scaleLengthMm: 863.6,
  frets: 21,
  handFrame: 'one-finger-per-fret',
  shortStrings: [],
  tunings,
};
const neck = unwrap(buildNeck(BASS, tunings[0]));

function pieceOf(options: PlayOptions): Piece {
  const scale = scaleOf('C', '1 2 3 4 5 6 7');
  const [fingering] = fingeringsOf(neck, scale, { style: 'one-string', limit: 1 }).fingerings;
  if (!fingering) throw new Error('no fingering');
  return unwrap(playFingering(scale, fingering, options));
}

function hexOf(piece: Piece, layers: { readonly drone?: boolean; readonly vamp?: boolean } = {}): string {
  const bytes = unwrap(midiFile(piece, { title: 'A', trackName: 'bass', midiProgram: 33, ...layers }));
  return Array.from(bytes, hex).join(' ');
}

function hex(byte: number): string {
  return byte.toString(16).toUpperCase().padStart(2, '0');
}

/** The chunks of a file: four letters, four bytes of length, and so many bytes. */
function chunksOf(
  file: string,
): readonly { readonly id: string; readonly length: number; readonly body: string }[] {
  const bytes = file.split(' ').map((byte) => Number.parseInt(byte, 16));
  const chunks: { id: string; length: number; body: string }[] = [];
  for (let at = 0; at < bytes.length; ) {
    const [a = 0, b = 0, c = 0, d = 0] = bytes.slice(at + 4, at + 8);
    const length = ((a * 256 + b) * 256 + c) * 256 + d;
    const body = bytes.slice(at + 8, at + 8 + length);
    expect(body).toHaveLength(length);
    chunks.push({
      id: String.fromCharCode(...bytes.slice(at, at + 4)),
      length,
      body: body.map(hex).join(' '),
    });
    at += 8 + length;
  }
  return chunks;
}

describe('a Standard MIDI File', () => {
  test('of two half notes at 120 is these bytes', () => {
    const piece = pieceOf({ tempoBpm: 120, noteValue: 'half', bars: 1 });
    const [first = '', second = ''] = piece.notes.map(({ midi }) => hex(midi));
    expect(piece.notes.map(({ note }) => note)).toEqual(['C', 'D']);
    expect(hexOf(piece)).toBe(
      [
        // Header: length 6, format 1, two tracks, 480 ticks to a quarter.
        '4D 54 68 64 00 00 00 06 00 01 00 02 01 E0',
        // Name, the text "Root C", 500,000 microseconds a quarter, 4/4 with 24 clocks a click and eight 32nds a quarter, the
        // marker "C Ionian", and the end after 1,920 ticks.
        '4D 54 72 6B 00 00 00 2F',
        '00 FF 03 01 41',
        '00 FF 01 06 52 6F 6F 74 20 43',
        '00 FF 51 03 07 A1 20',
        '00 FF 58 04 04 02 18 08',
        '00 FF 06 08 43 20 49 6F 6E 69 61 6E',
        '8F 00 FF 2F 00',
        // Name, program 33 (electric bass, finger), two notes of 960 ticks, the end.
        '4D 54 72 6B 00 00 00 21',
        '00 FF 03 04 62 61 73 73',
        '00 C0 21',
        `00 90 ${first} 64 87 40 80 ${first} 40`,
        `00 90 ${second} 64 87 40 80 ${second} 40`,
        '00 FF 2F 00',
      ].join(' '),
    );
  });

  test('says in its header how many tracks follow, and each track how long it is', () => {
    const [header, ...tracks] = chunksOf(hexOf(pieceOf({ countInBars: 1 }), { drone: true, vamp: true }));
    expect(header).toEqual({ id: 'MThd', length: 6, body: '00 01 00 05 01 E0' });
    expect(tracks.map(({ id }) => id)).toEqual(['MTrk', 'MTrk', 'MTrk', 'MTrk', 'MTrk']);
    for (const { body } of tracks) expect(body).toMatch(/ FF 2F 00$/);
    for (const { body } of tracks) expect(body.match(/FF 2F 00/g)).toHaveLength(1);
  });

  test('keeps percussion on the tenth channel: high and low wood block for the count-in', () => {
    const clicks = chunksOf(hexOf(pieceOf({ countInBars: 1, meter: { beats: 2, unit: 4 } })))[3];
    // After the track's name: keys 76 and 77, a beat of 480 ticks (83 60) each, and 10 beats to the end.
    expect(clicks?.body.split(' ').slice(12).join(' ')).toMatch(
      /^00 99 4C 5A 83 60 89 4C 40 00 99 4D 5A 83 60 89 4D 40 9E 00 FF 2F 00$/,
    );
  });

  // 60,000,000 / quarters a minute, to the nearest microsecond.
  test.each([
    [60, 4, '0F 42 40'],
    [90, 4, '0A 2C 2B'],
    [120, 8, '0F 42 40'],
    [400, 2, '01 24 F8'],
    [20, 16, 'B7 1B 00'],
  ] as const)('at %i beats of 1/%i a minute has the tempo %s', (tempoBpm, unit, bytes) => {
    const [, conductor] = chunksOf(hexOf(pieceOf({ tempoBpm, meter: { beats: 4, unit } })));
    expect(conductor?.body).toContain(`00 FF 51 03 ${bytes} `);
  });

  test.each([
    [4, 4, '04 02 18 08'],
    [7, 8, '07 03 0C 08'],
    [2, 2, '02 01 30 08'],
    [12, 16, '0C 04 06 08'],
  ] as const)('in %i/%i has the time signature %s', (beats, unit, bytes) => {
    const [, conductor] = chunksOf(hexOf(pieceOf({ meter: { beats, unit } })));
    expect(conductor?.body).toContain(`00 FF 58 04 ${bytes} `);
  });
});
