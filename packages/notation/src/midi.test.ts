import { describe, expect, test } from 'vitest';
import { valueIn } from './given.ts';
import { pieceOf } from './given-piece.ts';
import { type MidiOptions, midiFile } from './midi.ts';

const OPTIONS: MidiOptions = { title: 'A Aeolian', trackName: 'six-string guitar', midiProgram: 24 };
const piece = pieceOf({ countInBars: 1 });

/** The names of a file's tracks: the text of the first event of each, which is a track name. */
function trackNames(bytes: Uint8Array): readonly string[] {
  const text = String.fromCharCode(...bytes);
  return text
    .split('MTrk')
    .slice(1)
    .map((track) => track.slice(8, 8 + track.charCodeAt(7)));
}

describe('a MIDI file', () => {
  test.each([
    [{}, ['A Aeolian', 'six-string guitar', 'Count-in']],
    [{ drone: true }, ['A Aeolian', 'six-string guitar', 'Count-in', 'Drone']],
    [{ vamp: true }, ['A Aeolian', 'six-string guitar', 'Count-in', 'Vamp']],
    [{ drone: true, vamp: true }, ['A Aeolian', 'six-string guitar', 'Count-in', 'Drone', 'Vamp']],
  ])('with %o has the tracks %o', (options, names) => {
    expect(trackNames(valueIn(midiFile(piece, { ...OPTIONS, ...options })))).toEqual(names);
  });

  test('has no track of clicks where there is no count-in', () => {
    expect(trackNames(valueIn(midiFile(pieceOf(), OPTIONS)))).toEqual(['A Aeolian', 'six-string guitar']);
  });

  test('is the same whenever it is made', () => {
    expect(midiFile(piece, OPTIONS)).toEqual(midiFile(piece, OPTIONS));
  });

  test.each([-1, 128, 24.5, Number.NaN])('is refused with program %d', (midiProgram) => {
    expect(midiFile(piece, { ...OPTIONS, midiProgram })).toEqual({
      ok: false,
      problem: {
        field: 'midiProgram',
        value: String(midiProgram),
        expected: 'a whole number from 0 to 127: a program of General MIDI level 1',
      },
    });
  });
});
