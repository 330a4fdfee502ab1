import { type NoteValue, parseMeter } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { type BeamPart, beamsOf } from './beams.ts';
import { valueIn } from './given.ts';
import { pieceOf } from './given-piece.ts';
import { writtenBars } from './written-bars.ts';

const SHORT: Readonly<Record<BeamPart, string>> = {
  begin: '[',
  continue: '-',
  end: ']',
  'forward hook': '>',
  'backward hook': '<',
};

/** The beams of eight notes, bar by bar: what each note's beams do, the outermost first; a dot for none. */
function beams(noteValue: NoteValue, text: string, bars?: number): string {
  const meter = valueIn(parseMeter(text));
  return writtenBars(pieceOf({ noteValue, meter, ...(bars !== undefined && { bars }) }))
    .map(({ signs, startTicks }) =>
      beamsOf(signs, startTicks, meter)
        .map((parts) => parts.map((part) => SHORT[part]).join('') || '.')
        .join(' '),
    )
    .join(' | ');
}

describe('beams', () => {
  // Grouped by hand as engravers do (common practice, no source).
  test.each<[NoteValue, string, string]>([
    ['eighth', '4/4', '[ ] [ ] [ ] [ ]'],
    ['eighth', '2/2', '[ ] [ ] [ ] [ ]'],
    ['eighth', '6/8', '[ - ] [ - ] | [ ] . .'],
    ['eighth', '7/8', '[ ] [ ] [ - ] | . . . . .'],
    ['eighth', '5/8', '[ ] [ - ] | [ ] . . .'],
    ['eighth', '4/8', '[ ] [ ] | [ ] [ ]'],
    ['sixteenth', '2/4', '[[ -- -- ]] [[ -- -- ]]'],
    ['sixteenth', '7/16', '[[ ]] [[ ]] [[ -- ]] | . . . . .'],
    ['thirty-second', '4/4', '[[[ --- --- --- --- --- --- ]]] . .'],
    ['eighth-triplet', '4/4', '[ - ] [ - ] [ ] . .'],
    ['dotted-eighth', '2/4', '[ ] . | [> ] [ ]< | [ ] .'],
    ['quarter', '4/4', '. . . . | . . . .'],
  ])('of %s notes in %s are %s', (value, meter, expected) => {
    expect(beams(value, meter)).toBe(expected);
  });

  test('join the notes of one triplet, also where it begins between beats', () => {
    expect(beams('eighth-triplet', '7/8', 2)).toBe('[ - ] [ - ] [ - ] [ ]< | [> ] [ - ] [ - ] [ - ]');
  });
});
