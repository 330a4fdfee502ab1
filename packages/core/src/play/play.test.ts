import { describe, expect, test } from 'vitest';
import { octave, play, startsOf } from './given-piece.ts';
import type { PlayOptions } from './play-options.ts';
import { secondsAt } from './timing.ts';

describe('a fingering that is played', () => {
  test('has the notes of the fingering, each with its place, one after another', () => {
    const fingering = octave();
    const { notes } = play();
    expect(notes).toEqual(
      fingering.notes.map((note, at) => ({
        ...note,
        startTicks: 480 * at,
        durationTicks: 480,
        modeIndex: 0,
        noteIndex: at,
      })),
    );
    expect(notes.map(({ note }) => note).join(' ')).toBe('A B C D E F G A');
  });

  // By hand, 480 ticks to a quarter.
  test.each([
    ['eighth', '4/4', [0, 240, 480, 720, 960, 1200, 1440, 1680], 1920],
    ['eighth-triplet', '4/4', [0, 160, 320, 480, 640, 800, 960, 1120], 1920],
    ['dotted-quarter', '3/4', [0, 720, 1440, 2160, 2880, 3600, 4320, 5040], 5760],
    ['sixteenth', '7/8', [0, 120, 240, 360, 480, 600, 720, 840], 1680],
    ['whole', '4/4', [0, 1920, 3840, 5760, 7680, 9600, 11_520, 13_440], 15_360],
  ] as const)(
    'in %ss in %s begins its notes at %o, and ends with a bar at %i',
    (noteValue, meter, expected, total) => {
      const [beats = 0, unit = 0] = meter.split('/').map(Number);
      const piece = play({ noteValue, meter: { beats, unit: unit as 4 | 8 } });
      expect(startsOf(piece.notes)).toEqual(expected);
      expect(piece.totalTicks).toBe(total);
    },
  );

  test.each([20, 80, 133.7, 400])(
    'has the same ticks at %d beats a minute, and its own seconds',
    (tempoBpm) => {
      const piece = play({ tempoBpm });
      expect(startsOf(piece.notes)).toEqual(startsOf(play().notes));
      expect(secondsAt(piece.timing, piece.totalTicks)).toBeCloseTo((8 * 60) / tempoBpm, 9);
    },
  );

  test('follows its pattern', () => {
    const piece = play({ pattern: 'thirds' });
    expect(piece.notes.map(({ degree }) => degree).join('')).toBe('132435465761');
    expect(piece.notes.map(({ noteIndex }) => noteIndex + 1).join('')).toBe('132435465768');
  });

  test('is counted in with a click a beat, the first of a bar accented', () => {
    const piece = play({ countInBars: 2, meter: { beats: 3, unit: 8 } });
    expect(piece.countIn).toEqual(
      [true, false, false, true, false, false].map((isAccent, at) => ({
        startTicks: 240 * at,
        durationTicks: 240,
        isAccent,
      })),
    );
    expect(piece.countInTicks).toBe(1440);
    expect(piece.notes[0]?.startTicks).toBe(1440);
    expect(piece.sections[0]?.startTicks).toBe(1440);
    expect(play().countIn).toEqual([]);
  });

  test('once for each repeat, turning at the bottom without striking it twice', () => {
    const line = (options: PlayOptions) =>
      play(options)
        .notes.map(({ noteIndex }) => noteIndex + 1)
        .join('');
    expect(line({ repeats: 2 })).toBe('1234567812345678');
    expect(line({ pattern: 'up-and-down', repeats: 2 })).toBe('12345678765432' + '123456787654321');
  });

  test('fills the bars that are asked, round and round, the last note cut short', () => {
    const piece = play({ bars: 1, noteValue: 'dotted-quarter', repeats: 2 });
    expect(
      piece.notes.map(({ startTicks, durationTicks, noteIndex }) => [startTicks, durationTicks, noteIndex]),
    ).toEqual([
      [0, 720, 0],
      [720, 720, 1],
      [1440, 480, 2],
      [1920, 720, 0],
      [2640, 720, 1],
      [3360, 480, 2],
    ]);
    expect(piece.totalTicks).toBe(3840);
    expect(
      play({ bars: 3 })
        .notes.map(({ noteIndex }) => noteIndex + 1)
        .join(''),
    ).toBe('123456781234');
  });
});
