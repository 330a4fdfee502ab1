import {
  BEAT_UNITS,
  type Meter,
  NOTE_VALUES,
  type NoteValue,
  type Piece,
  parseMeter,
  TICKS_PER_QUARTER,
} from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { valueIn } from './given.ts';
import { pieceOf } from './given-piece.ts';
import { type WrittenSign, writtenBars } from './written-bars.ts';

const LETTERS: ReadonlyMap<number, string> = new Map([
  [4, 'w'],
  [2, 'h'],
  [1, 'q'],
  [1 / 2, 'e'],
  [1 / 4, 's'],
  [1 / 8, 't'],
  [1 / 16, 'x'],
]);

/**
 * Eight notes as they are written: whole, half, quarter, eighth, sixteenth, thirty-second by their letters, a
 * dot after a dotted one, ~ where a note goes on in the next sign, r before a rest, brackets round triplets.
 */
function rhythm(noteValue: NoteValue, meter: string, bars?: number): string {
  const piece = pieceOf({
    noteValue,
    meter: valueIn(parseMeter(meter)),
    ...(bars !== undefined && { bars }),
  });
  return writtenBars(piece)
    .map(({ signs }) => (signs.length === 0 ? '-' : signs.map(spelledOut).join(' ')))
    .join(' | ');
}

function spelledOut(sign: WrittenSign): string {
  const what = `${sign.note ? '' : 'r'}${LETTERS.get(sign.quarters)}${sign.isDotted ? '.' : ''}`;
  const tied = `${what}${sign.isTiedOn ? '~' : ''}`;
  return `${sign.beginsBracket ? '(' : ''}${tied}${sign.endsBracket ? ')' : ''}`;
}

describe('eight notes are written', () => {
  // Written out by hand.
  test.each<[NoteValue, string, string]>([
    ['quarter', '4/4', 'q q q q | q q q q'],
    ['eighth', '4/4', 'e e e e e e e e'],
    ['quarter', '3/4', 'q q q | q q q | q q rq'],
    ['half', '3/4', 'h q~ | q h | h q~ | q h | h q~ | q rq rq'],
    ['dotted-quarter', '4/4', 'q. q. q~ | e q. q. e~ | q q. q.'],
    ['dotted-eighth', '2/4', 'e. e. e~ | s e. e. s~ | e e. e.'],
    ['quarter', '7/8', 'q q q e~ | e q q q | q rq rq re'],
    ['sixteenth', '5/16', 's s s s s | s s s rs rs'],
    ['dotted-thirty-second', '2/4', 't. t. t. t. t. t. t. t. re'],
    ['dotted-whole', '3/2', 'w. | w. | w. | w. | w. | w. | w. | w.'],
    ['whole', '2/4', 'h~ | h | h~ | h | h~ | h | h~ | h | h~ | h | h~ | h | h~ | h | h~ | h'],
  ])('%s notes in %s as %s', (value, meter, expected) => {
    expect(rhythm(value, meter)).toBe(expected);
  });

  test.each<[NoteValue, string, string]>([
    ['eighth-triplet', '4/4', '(e e e) (e e e) (e e re) rq'],
    ['quarter-triplet', '4/4', '(q q q) (q q q) | (q q rq) rh'],
    ['half-triplet', '4/4', '(h h h) | (h h h) | (h h rh)'],
    ['thirty-second-triplet', '3/16', '(t t t) (t t t) (t t rt)'],
    ['quarter-triplet', '3/4', '(q q q) (q e~) | (e q) (q q rq)'],
    ['whole-triplet', '4/4', '(w h~) | (h w) | (w h~) | (h w) | (w h~) | (h rw)'],
  ])('in threes, %ss in %s as %s', (value, meter, expected) => {
    expect(rhythm(value, meter)).toBe(expected);
  });

  test('in threes across a bar line that cuts a triplet', () => {
    expect(rhythm('eighth-triplet', '7/8', 2)).toBe(
      '(e e e) (e e e) (e e e) (e s~) | (s e) (e e e) (e e e) (e e e)',
    );
  });

  test('cut short where their bars are full', () => {
    expect(rhythm('dotted-quarter', '4/4', 1)).toBe('q. q. q');
    expect(rhythm('dotted-half', '4/4', 1)).toBe('h. q');
  });
});

describe('the bars of a piece', () => {
  test('are those of its sections, all rest where nothing sounds, the count-in left out', () => {
    const piece = pieceOf({ countInBars: 2 });
    const bars = writtenBars(piece);
    expect(bars.map(({ startTicks }) => startTicks)).toEqual([3840, 5760]);
    expect(bars.map(({ begins, endsSection }) => [begins?.name, endsSection])).toEqual([
      ['A Aeolian', false],
      [undefined, true],
    ]);
    const rested = writtenBars({
      ...piece,
      sections: piece.sections.map((one) => ({ ...one, endTicks: 9600 })),
    });
    expect(rested.map(({ signs }) => signs.length)).toEqual([4, 4, 0]);
  });
});

const METERS: readonly Meter[] = BEAT_UNITS.flatMap((unit) =>
  Array.from({ length: 11 }, (_, at) => ({ beats: at + 2, unit })),
);

/** What does not add up in the bars of a piece. */
function faultsIn(piece: Piece): readonly string[] {
  const faults: string[] = [];
  const sounded = new Map(piece.notes.map((note) => [note, 0]));
  for (const { startTicks, signs } of writtenBars(piece)) {
    let at = startTicks;
    let isBracketOpen = false;
    for (const sign of signs) {
      const shrink = sign.isTriplet ? 2 / 3 : 1;
      const says = sign.quarters * TICKS_PER_QUARTER * (sign.isDotted ? 1.5 : 1) * shrink;
      if (sign.startTicks !== at) faults.push(`a sign at ${sign.startTicks} where ${at} is next`);
      if (Math.abs(sign.durationTicks - says) > 1e-9)
        faults.push(`${sign.durationTicks} ticks written as ${says}`);
      if (sign.beginsBracket && isBracketOpen) faults.push(`a bracket in a bracket at ${at}`);
      isBracketOpen = (isBracketOpen || sign.beginsBracket) && !sign.endsBracket;
      if (sign.isTriplet && !isBracketOpen && !sign.endsBracket)
        faults.push(`a triplet without a bracket at ${at}`);
      if (sign.note) sounded.set(sign.note, (sounded.get(sign.note) ?? Number.NaN) + sign.durationTicks);
      at += sign.durationTicks;
    }
    if (isBracketOpen) faults.push(`a bracket that is not closed at ${at}`);
    if (signs.length > 0 && at !== startTicks + piece.timing.ticksPerBar)
      faults.push(`a bar that ends at ${at}`);
  }
  for (const [{ durationTicks, startTicks }, ticks] of sounded) {
    if (ticks !== durationTicks)
      faults.push(`a note at ${startTicks} of ${durationTicks} written as ${ticks}`);
  }
  return faults;
}

describe('in every time signature', () => {
  test.each(NOTE_VALUES)('%s notes fill their bars, and each sign lasts as long as it says', (noteValue) => {
    for (const meter of METERS) {
      expect(faultsIn(pieceOf({ noteValue, meter }))).toEqual([]);
      expect(faultsIn(pieceOf({ noteValue, meter, bars: 3 }))).toEqual([]);
    }
  });
});
