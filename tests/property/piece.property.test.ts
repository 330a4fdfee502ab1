import { droneOf, ticksOf, vampOf } from '@stillroot/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Played, pieces } from './any-piece.ts';

const PIECES = 1000;

/** What a piece must hold true, reckoned from its timing and its neck alone. */
function expectSoundPiece({ piece, neck }: Played): void {
  const { timing, sections, notes, countIn, countInTicks, totalTicks, noteValue } = piece;
  expect(countIn).toHaveLength(countInTicks / timing.ticksPerBeat);
  let end = countInTicks;
  for (const { startTicks, endTicks } of sections) {
    expect(startTicks).toBe(end);
    expect(endTicks).toBeGreaterThan(startTicks);
    expect((endTicks - startTicks) % timing.ticksPerBar).toBe(0);
    end = endTicks;
  }
  expect(end).toBe(totalTicks);
  for (const { modeIndex, scale, startTicks, endTicks } of sections) {
    const own = notes.filter((note) => note.modeIndex === modeIndex);
    let next = startTicks;
    for (const note of own) {
      expect(note.startTicks).toBe(next);
      expect(note.durationTicks).toBeGreaterThan(0);
      expect(note.durationTicks).toBeLessThanOrEqual(ticksOf(noteValue));
      expect(note.note).toBe(scale.notes[note.degree - 1]);
      expect(neck.strings[note.string - 1]?.midiBySlot).toContain(note.midi);
      next += note.durationTicks;
    }
    expect(own.length).toBeGreaterThan(0);
    expect(next).toBeLessThanOrEqual(endTicks);
    const bars = (endTicks - startTicks) / timing.ticksPerBar;
    expect(droneOf(piece).filter((note) => note.modeIndex === modeIndex)).toHaveLength(bars);
    expect(vampOf(piece).filter((note) => note.modeIndex === modeIndex)).toHaveLength(3 * bars);
  }
  for (const { midi, note, degree, modeIndex } of [...droneOf(piece), ...vampOf(piece)]) {
    const scale = sections.find((section) => section.modeIndex === modeIndex)?.scale;
    const above = (((midi - (scale?.root.pitchClass ?? Number.NaN)) % 12) + 12) % 12;
    expect(above).toBe(scale?.mode.semitones[degree - 1]);
    expect(note).toBe(scale?.notes[degree - 1]);
  }
}

test('every piece is whole bars of whole notes, one after another, and what sounds under them is theirs', () => {
  const seen = { rounds: 0, capos: 0, reentrant: 0, cutShort: 0, triplets: 0 };
  fc.assert(
    fc.property(fc.noBias(pieces), (played) => {
      expectSoundPiece(played);
      const { piece, neck } = played;
      const open = neck.strings.map(({ openMidi }) => openMidi);
      seen.rounds += Number(piece.sections.length > 1);
      seen.capos += Number(neck.capoStrings.length > 0);
      seen.reentrant += Number(open.some((midi, at) => midi < (open[at + 1] ?? 0)));
      seen.cutShort += Number(
        piece.notes.some(({ durationTicks }) => durationTicks < ticksOf(piece.noteValue)),
      );
      seen.triplets += Number(piece.noteValue.endsWith('-triplet'));
    }),
    { numRuns: PIECES },
  );
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(PIECES / 50);
}, 30_000);
