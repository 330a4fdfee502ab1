import type { Scale } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { scaleOf } from './given.ts';
import { measuresOf } from './given-musicxml.ts';
import { GUITAR, pieceOf } from './given-piece.ts';

/** What is printed on the staff: each note with its accidental, bar by bar; ~ before a note that is tied back. */
function printed(
  scale: Scale,
  options: Parameters<typeof pieceOf>[0],
  spelling: 'strict' | 'readable' = 'strict',
): string {
  return measuresOf(pieceOf(options, GUITAR, scale), { spelling })
    .map(({ note }) =>
      note
        .filter(({ staff, pitch }) => staff === 1 && pitch)
        .map(({ pitch, accidental, tie = [] }) => {
          const isTiedBack = tie.some((one) => one['@type'] === 'stop');
          return `${isTiedBack ? '~' : ''}${pitch?.step}${pitch?.octave}${accidental ? `:${accidental}` : ''}`;
        })
        .join(' '),
    )
    .join(' | ');
}

describe('accidentals', () => {
  // By hand. Notes of one octave from the root up; the names in MusicXML 4.0's list of accidental values.
  test.each([
    ['A', '2122122', 'A3 B3 C4 D4 | E4 F4 G4 A4'],
    ['A', '2122131', 'A3 B3 C4 D4 | E4 F4 G4:sharp A4'],
    ['Eb', '2212221', 'E3:flat F3 G3 A3:flat | B3:flat C4 D4 E4:flat'],
    [
      'Fb',
      '1212213',
      'F:flat G:flat-flat A:flat-flat B:triple-flat | C:flat-flat D:flat-flat E:triple-flat F:flat',
    ],
    [
      'D#',
      '2212221',
      'D3:sharp E3:sharp F3:double-sharp G3:sharp | A3:sharp B3:sharp C4:double-sharp D4:sharp',
    ],
  ])('of %s %s are printed once each: %s', (root, steps, expected) => {
    const octaves = (text: string) => text.replace(/(?<=[A-G])\d/g, '');
    expect(octaves(printed(scaleOf(root, steps), {}))).toBe(octaves(expected));
  });

  test('hold to the end of the bar, and are taken back by a natural', () => {
    // C Db D Eb E F F# in the readable spelling of a mode of six semitones and a leap.
    const scale = scaleOf('C', '1111116');
    expect(scale.readable.join(' ')).toBe('C Db D Eb E F Gb');
    const letters = printed(scale, { noteValue: 'eighth' }, 'readable').replace(/(?<=[A-G])\d/g, '');
    expect(letters).toBe('C D:flat D:natural E:flat E:natural F G:flat C');
  });

  test('are not printed again on a note that is tied over', () => {
    const letters = printed(scaleOf('Bb', '2212221'), {
      noteValue: 'half',
      meter: { beats: 3, unit: 4 },
      bars: 2,
    });
    expect(letters.replace(/(?<=[A-G])\d/g, '')).toBe('B:flat C | ~C D');
    const again = printed(scaleOf('Db', '2212221'), {
      noteValue: 'half',
      meter: { beats: 3, unit: 4 },
      bars: 2,
    });
    expect(again.replace(/(?<=[A-G])\d/g, '')).toBe('D:flat E:flat | ~E F');
  });

  test('wider than triple keep their letter and their size, under no name of the standard', () => {
    const scale = scaleOf('C', '6111111');
    expect(scale.notes.join(' ')).toBe('C D#### E### F### G## A# B');
    expect(printed(scale, {}).replace(/(?<=[A-G])\d/g, '')).toBe(
      'C D:other E:triple-sharp F:triple-sharp | G:double-sharp A:sharp B C',
    );
    const [, second] = measuresOf(pieceOf({}, GUITAR, scale))[0]?.note ?? [];
    expect(second?.pitch).toMatchObject({ step: 'D', alter: 4 });
  });
});
