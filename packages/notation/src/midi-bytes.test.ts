import { describe, expect, test } from 'vitest';
import {
  type MidiEvent,
  midiBytes,
  noteOffEvent,
  noteOnEvent,
  programEvent,
  tempoEvent,
  textEvent,
  timeSignatureEvent,
  variableLength,
} from './midi-bytes.ts';

const hex = (bytes: readonly number[] | Uint8Array): string =>
  Array.from(bytes, (byte) => byte.toString(16).toUpperCase().padStart(2, '0')).join(' ');

describe('a variable-length quantity', () => {
  // The table of examples in Standard MIDI Files 1.0 (recalled); each row also follows from its rule of seven
  // bits a byte.
  test.each([
    [0x0000_0000, '00'],
    [0x0000_0040, '40'],
    [0x0000_007f, '7F'],
    [0x0000_0080, '81 00'],
    [0x0000_2000, 'C0 00'],
    [0x0000_3fff, 'FF 7F'],
    [0x0000_4000, '81 80 00'],
    [0x0010_0000, 'C0 80 00'],
    [0x001f_ffff, 'FF FF 7F'],
    [0x0020_0000, '81 80 80 00'],
    [0x0800_0000, 'C0 80 80 00'],
    [0x0fff_ffff, 'FF FF FF 7F'],
  ])('of %i is %s', (value, bytes) => {
    expect(hex(variableLength(value))).toBe(bytes);
  });
});

describe('an event', () => {
  // Status bytes and meta-event numbers of the MIDI 1.0 Detailed Specification and Standard MIDI Files 1.0;
  // 500,000 and 4/4 are the worked example of the latter (recalled).
  test.each<[string, MidiEvent, string]>([
    ['a tempo of 120 quarters a minute', tempoEvent(0, 120), 'FF 51 03 07 A1 20'],
    ['the slowest tempo there is', tempoEvent(0, 5), 'FF 51 03 B7 1B 00'],
    ['a tempo that is no whole number of microseconds', tempoEvent(0, 90), 'FF 51 03 0A 2C 2B'],
    ['4/4', timeSignatureEvent(0, 4, 4), 'FF 58 04 04 02 18 08'],
    ['7/8', timeSignatureEvent(0, 7, 8), 'FF 58 04 07 03 0C 08'],
    ['2/2', timeSignatureEvent(0, 2, 2), 'FF 58 04 02 01 30 08'],
    ['12/16', timeSignatureEvent(0, 12, 16), 'FF 58 04 0C 04 06 08'],
    ['a program', programEvent(0, 2, 33), 'C2 21'],
    ['a key pressed', noteOnEvent(0, 0, 60, 100), '90 3C 64'],
    ['a key let go', noteOffEvent(0, 9, 76), '89 4C 40'],
    ['a name', textEvent(0, 'trackName', 'bass'), 'FF 03 04 62 61 73 73'],
    ['a marker', textEvent(0, 'marker', ''), 'FF 06 00'],
    ['text beyond ASCII, as UTF-8', textEvent(0, 'text', '♯%𝄫'), 'FF 01 08 E2 99 AF 25 F0 9D 84 AB'],
    ['half a sign, as the sign for what is missing', textEvent(0, 'text', '\ud834'), 'FF 01 03 EF BF BD'],
  ])('of %s is %o', (_what, { bytes }, expected) => {
    expect(hex(bytes)).toBe(expected);
  });

  test('of a long text has its length in several bytes', () => {
    expect(hex(textEvent(0, 'text', 'x'.repeat(200)).bytes.slice(0, 5))).toBe('FF 01 81 48 78');
  });
});

describe('a file', () => {
  test('has a header, and tracks of events after their delta-times', () => {
    const tracks = [[tempoEvent(0, 120)], [noteOnEvent(96, 0, 48, 100), noteOffEvent(288, 0, 48)]];
    // Laid out by hand after Standard MIDI Files 1.0.
    expect(hex(midiBytes(96, tracks, 384))).toBe(
      [
        '4D 54 68 64 00 00 00 06 00 01 00 02 00 60',
        '4D 54 72 6B 00 00 00 0C 00 FF 51 03 07 A1 20 83 00 FF 2F 00',
        '4D 54 72 6B 00 00 00 0D 60 90 30 64 81 40 80 30 40 60 FF 2F 00',
      ].join(' '),
    );
  });
});
