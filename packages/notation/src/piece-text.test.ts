import { fingeringsOf, NOTE_VALUES, PATTERNS, type Piece, parseMeter, playFingering } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { neckOf, scaleOf, valueIn } from './given.ts';
import { GUITAR, OPEN, pieceOf } from './given-piece.ts';
import { pieceText, timingText } from './piece-text.ts';

/** What stands in tablature, in order: `string:fret finger note`, with the beat where one is named. */
function readTablature(text: string, strings: number): readonly string[] {
  const systems = text
    .split('\n\n')
    .slice(1)
    .map((block) =>
      block
        .trimEnd()
        .split('\n')
        .slice(-(strings + 3)),
    );
  return systems.flatMap((lines) => {
    const [beats = '', ...rows] = lines;
    const [fingers = '', names = ''] = rows.slice(strings);
    const under = (line: string, column: number) => /^\S*/.exec(line.slice(column))?.[0] ?? '';
    return rows
      .slice(0, strings)
      .flatMap((row, at) =>
        [...row.matchAll(/\d+(?=-)/g)]
          .filter(({ index }) => index > row.indexOf('|'))
          .map(({ 0: fret, index }) => ({ string: at + 1, fret, index })),
      )
      .toSorted((a, b) => a.index - b.index)
      .map(({ string, fret, index }) =>
        `${string}:${fret} ${under(fingers, index)} ${under(names, index)} ${under(beats, index)}`.trim(),
      );
  });
}

function expected({ notes, timing, countInTicks }: Piece): readonly string[] {
  return notes.map(({ string, fret, finger, note, startTicks }) => {
    const beat = ((startTicks - countInTicks) % timing.ticksPerBar) / timing.ticksPerBeat + 1;
    return `${string}:${fret} ${finger} ${note} ${Number.isInteger(beat) ? beat : ''}`.trim();
  });
}

describe('a piece in text', () => {
  // F major at the nut of a bass: open strings, then frets 1 and 3 or 2 and 3 (common practice, no source).
  test('stands under its timing and its name, bar by bar, beats over the notes', () => {
    const bass = neckOf(OPEN.bass, { scaleLengthMm: 863.6, frets: 21 });
    const scale = scaleOf('F', '2212221');
    const [fingering] = fingeringsOf(bass, scale, { fret: 0, limit: 1 }).fingerings;
    if (fingering === undefined) throw new Error('no fingering');
    const options = { noteValue: 'eighth', meter: { beats: 3, unit: 4 } } as const;
    expect(pieceText(valueIn(playFingering(scale, fingering, options)), bass)).toBe(
      [
        'up in eighth notes, 80 beats a minute in 3/4',
        '',
        'F Ionian',
        '    1   2    3     1',
        'G2|--------------|-------|',
        'D2|------------0-|-2-3---|',
        'A1|-----0-1--3---|-------|',
        'E1|-1-3----------|-------|',
        '    1 4 0 1  4 0   2 4',
        '    F G A Bb C D   E F',
        '',
      ].join('\n'),
    );
  });

  test.each(PATTERNS)('reads back as the notes that are played: %s', (pattern) => {
    for (const noteValue of NOTE_VALUES) {
      const piece = pieceOf({ pattern, noteValue, countInBars: 1, meter: { beats: 5, unit: 8 } });
      expect(readTablature(pieceText(piece, GUITAR), 6)).toEqual(expected(piece));
    }
  });

  test.each(['4/4', '2/16', '7/8', '12/4'])(
    'in %s is no wider than 80 columns, and its rows are of one length',
    (meter) => {
      for (const noteValue of NOTE_VALUES) {
        const text = pieceText(pieceOf({ noteValue, meter: valueIn(parseMeter(meter)), bars: 4 }), GUITAR);
        for (const block of text.split('\n\n').slice(1)) {
          const rows = block.split('\n').filter((line) => line.includes('|'));
          expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
          expect(rows).toHaveLength(6);
        }
        expect(Math.max(...text.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(80);
      }
    },
  );
});

describe('the timing of a piece in words', () => {
  test.each([
    [{}, 'up in quarter notes, 80 beats a minute in 4/4'],
    [
      { pattern: 'groups-of-three', noteValue: 'dotted-eighth', tempoBpm: 132.5, countInBars: 1 },
      'groups of three in dotted eighth notes, 132.5 beats a minute in 4/4, after 1 bar of count-in',
    ],
    [
      { pattern: 'random-walk', noteValue: 'eighth-triplet', meter: { beats: 7, unit: 8 }, countInBars: 2 },
      'random walk in eighth note triplets, 80 beats a minute in 7/8, after 2 bars of count-in',
    ],
  ] as const)('of %o is %s', (options, words) => {
    expect(timingText(pieceOf(options))).toBe(words);
  });
});
