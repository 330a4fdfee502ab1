/**
 * Pieces for the tests of playing.
 */
import type { Fingering } from '../fingering/fingering.ts';
import { fingeringsOf } from '../fingering/fingerings.ts';
import { INSTRUMENTS, modeOf, neckOf, rootOf, STEPS, scaleOf, valueIn } from '../given.ts';
import { type Round, roundOf } from '../round/round.ts';
import type { Piece, TimedNote } from './piece.ts';
import { playFingering, playRound } from './play.ts';
import type { PlayOptions } from './play-options.ts';

export const GUITAR = neckOf(INSTRUMENTS.guitar);
export const A_AEOLIAN = scaleOf('A', STEPS.aeolian);

/** The seven modes of harmonic minor from A, on a guitar. */
export const HARMONIC_MINOR: Round = roundOf(GUITAR, modeOf(STEPS.harmonicMinor), rootOf('A'));

/** An octave of A Aeolian along one string: eight notes. */
export function octave(): Fingering {
  const [fingering] = fingeringsOf(GUITAR, A_AEOLIAN, { style: 'one-string', limit: 1 }).fingerings;
  if (fingering === undefined) throw new Error('no fingering');
  return fingering;
}

/** That octave, played. */
export function play(options: PlayOptions = {}): Piece {
  return valueIn(playFingering(A_AEOLIAN, octave(), options));
}

/** That round, played. */
export function playHarmonicMinor(options: PlayOptions = {}): Piece {
  return valueIn(playRound(HARMONIC_MINOR, options));
}

/** When notes begin, in ticks. */
export function startsOf(notes: readonly TimedNote[]): readonly number[] {
  return notes.map(({ startTicks }) => startTicks);
}
