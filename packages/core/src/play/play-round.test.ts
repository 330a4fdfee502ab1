import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, modeOf, neckOf, rootOf, STEPS, valueIn } from '../given.ts';
import { roundOf } from '../round/round.ts';
import { HARMONIC_MINOR, playHarmonicMinor } from './given-piece.ts';
import { playRound } from './play.ts';

describe('a round that is played', () => {
  const names =
    'A Aeolian nat7, A Locrian nat6, A Ionian #5, A Dorian #4, A Phrygian nat3, A Lydian #2, A Locrian b4 bb7';

  test('has a section for each mode, the next where the one before ends, each begun with a bar', () => {
    const piece = playHarmonicMinor({ noteValue: 'eighth', countInBars: 1 });
    expect(piece.sections.map(({ name }) => name).join(', ')).toBe(names);
    // Fifteen eighths and the rest of the bar: two bars of 4/4.
    expect(piece.sections.map(({ startTicks }) => startTicks)).toEqual(
      [0, 1, 2, 3, 4, 5, 6].map((at) => 1920 + 3840 * at),
    );
    for (const [at, { endTicks, modeIndex }] of piece.sections.entries()) {
      expect(endTicks).toBe(piece.sections[at + 1]?.startTicks ?? piece.totalTicks);
      expect(modeIndex).toBe(at);
    }
    for (const { startTicks, durationTicks, modeIndex } of piece.notes) {
      const section = piece.sections[modeIndex];
      expect(startTicks).toBeGreaterThanOrEqual(section?.startTicks ?? Number.NaN);
      expect(startTicks + durationTicks).toBeLessThanOrEqual(section?.endTicks ?? Number.NaN);
    }
  });

  test('rests between two modes for at least the beats that are asked, and not after the last', () => {
    const piece = playHarmonicMinor({ noteValue: 'eighth', restBeats: 1 });
    const lengths = piece.sections.map(({ startTicks, endTicks }) => (endTicks - startTicks) / 1920);
    // 7½ beats and a rest of one are 8½, which is three bars; the last mode needs two.
    expect(lengths).toEqual([3, 3, 3, 3, 3, 3, 2]);
  });

  test('calls its sections what it is told to', () => {
    const round = HARMONIC_MINOR;
    const { sections } = valueIn(playRound(round, {}, ({ mode }) => mode.id));
    expect(sections.map(({ name }) => name)).toEqual(round.modes.map(({ scale }) => scale.mode.id));
  });

  test('leaves out the modes that cannot be played, and keeps the places of the others', () => {
    const round = roundOf(neckOf(INSTRUMENTS.dulcimer), modeOf(STEPS.ionian), rootOf('D'));
    const piece = valueIn(playRound(round));
    expect(piece.sections.map(({ modeIndex }) => modeIndex)).toEqual([0, 3, 4]);
    expect(new Set(piece.notes.map(({ modeIndex }) => modeIndex))).toEqual(new Set([0, 3, 4]));
  });

  test('walks at random alike in all its modes', () => {
    const { notes } = playHarmonicMinor({ pattern: 'random-walk', seed: 11 });
    const walks = [0, 1, 2, 3, 4, 5, 6].map((mode) =>
      notes
        .filter(({ modeIndex }) => modeIndex === mode)
        .map(({ noteIndex }) => noteIndex)
        .join(),
    );
    expect(new Set(walks).size).toBe(1);
  });

  test('is the same whenever it is made', () => {
    const options = { pattern: 'random-walk', seed: 5, noteValue: 'eighth-triplet', countInBars: 1 } as const;
    expect(playHarmonicMinor(options)).toEqual(playHarmonicMinor(options));
  });
});
