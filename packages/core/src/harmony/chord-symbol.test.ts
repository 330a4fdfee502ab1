import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { spell } from '../mode/spelling.ts';
import { UNIVERSE } from '../mode/universe.ts';
import { formatNote } from '../pitch/note.ts';
import { EVERYDAY_ROOTS } from '../pitch/root.ts';
import { parseChord } from './chord-symbol.ts';
import { seventhsOf, triadsOf } from './chords.ts';

function notesOf(symbol: string): string {
  return valueIn(parseChord(symbol))
    .notes.map(({ letterIndex, alteration }) => formatNote(letterIndex, alteration))
    .join(' ');
}

// MusicXML 4.0, `kind-value`, with each kind's notes in its words, on C; a thirteenth without an eleventh, and
// the ways to write them, are common practice (no source).
describe('a chord of MusicXML', () => {
  test.each([
    ['major', 'C E G', 'C Cmaj CM Cma CMaj'],
    ['minor', 'C Eb G', 'Cm Cmin Cmi C- CMin'],
    ['augmented', 'C E G#', 'Caug C+ C(#5) C+5'],
    ['diminished', 'C Eb Gb', 'Cdim Co C° Cm(b5)'],
    ['dominant', 'C E G Bb', 'C7'],
    ['major-seventh', 'C E G B', 'Cmaj7 CM7 CΔ CΔ7 Cma7 C(maj7)'],
    ['minor-seventh', 'C Eb G Bb', 'Cm7 Cmin7 C-7 Cmi7'],
    ['diminished-seventh', 'C Eb Gb Bbb', 'Cdim7 Co7 C°7'],
    ['augmented-seventh', 'C E G# Bb', 'Caug7 C+7 C7#5 C7(#5) C7+5'],
    ['half-diminished', 'C Eb Gb Bb', 'Cø Cø7 CØ Cm7b5 Cm7(b5) C-7b5'],
    ['major-minor', 'C Eb G B', 'Cm(maj7) CmM7 Cmmaj7 C-Δ CmΔ7 CminMaj7'],
    ['major-sixth', 'C E G A', 'C6 Cmaj6'],
    ['minor-sixth', 'C Eb G A', 'Cm6 C-6'],
    ['dominant-ninth', 'C E G Bb D', 'C9 C7(9)'],
    ['major-ninth', 'C E G B D', 'Cmaj9 CM9 CΔ9'],
    ['minor-ninth', 'C Eb G Bb D', 'Cm9 C-9'],
    ['dominant-11th', 'C E G Bb D F', 'C11 C9(11)'],
    ['major-11th', 'C E G B D F', 'Cmaj11'],
    ['minor-11th', 'C Eb G Bb D F', 'Cm11'],
    ['dominant-13th', 'C E G Bb D A', 'C13 C9(13)'],
    ['major-13th', 'C E G B D A', 'Cmaj13'],
    ['minor-13th', 'C Eb G Bb D A', 'Cm13'],
    ['suspended-second', 'C D G', 'Csus2'],
    ['suspended-fourth', 'C F G', 'Csus4 Csus'],
    ['power', 'C G', 'C5 C(no3)'],
  ])('%s holds %s, however it is written', (_kind, notes, symbols) => {
    for (const symbol of symbols.split(' ')) expect(notesOf(symbol), symbol).toBe(notes);
  });
});

// Common practice, no source; spelled by hand.
describe('a chord', () => {
  test.each([
    ['G7(b9)', 'G B D F Ab'],
    ['G7b9#9', 'G B D F Ab A#'],
    ['C7(b9,b13)', 'C E G Bb Db Ab'],
    ['Fmaj7#11', 'F A C E B'],
    ['Dm7', 'D F A C'],
    ['Bb7sus4', 'Bb Eb F Ab'],
    ['A7b9sus4', 'A D E G Bb'],
    ['Cadd9', 'C E G D'],
    ['Cmadd9', 'C Eb G D'],
    ['C6/9', 'C E G A D'],
    ['C69', 'C E G A D'],
    ['D/F#', 'D F# A'],
    ['C/Bb', 'C E G Bb'],
    ['C6/9/E', 'C E G A D'],
    ['Fsus4', 'F Bb C'],
    ['Fs7', 'F# A# C# E'],
    ['B♭m7♭5', 'Bb Db Fb Ab'],
    ['C♯m', 'C# E G#'],
    ['E7#9', 'E G# B D F##'],
    ['am', 'A C E'],
    ['bb7', 'Bb D F Ab'],
    [' Em ', 'E G B'],
    ['C 1 b3 bb5', 'C Eb Gbb'],
  ])('%s holds %s', (symbol, notes) => {
    expect(notesOf(symbol)).toBe(notes);
  });

  test.each([
    '',
    'H',
    'Hm',
    'Calt',
    'Chord',
    'C76',
    'C8',
    'dim7',
    'maj7',
    'C/H',
    'C//E',
    'C(',
    'A B',
    '7',
    'C7((b9',
    'C'.repeat(500),
  ])('%s is none, and is told what would be', (text) => {
    const problem = problemIn(parseChord(text, 'chords[3]'));
    expect(problem).toMatchObject({
      field: 'chords[3]',
      expected: expect.stringContaining('a chord symbol'),
    });
  });

  test('on a degree of a scale is read by the name that it has there', () => {
    const names = UNIVERSE.modes.flatMap((mode) =>
      [
        ...triadsOf(spell(mode, EVERYDAY_ROOTS[0] as never)),
        ...seventhsOf(spell(mode, EVERYDAY_ROOTS[0] as never)),
      ].map(({ notes, kind }) => ({ name: `${notes[0]}${kind.startsWith('1') ? ' ' : ''}${kind}`, notes })),
    );
    for (const { name, notes } of names) {
      const read = parseChord(name);
      // A root has at most three accidentals.
      if (/^.(?:b{4}|#{4})/.test(name)) expect(read.ok).toBe(false);
      else expect(notesOf(name), name).toBe(notes.join(' '));
    }
  });
});
