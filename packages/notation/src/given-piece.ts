/**
 * Pieces for the tests of this package; no part of its door.
 */
import {
  fingeringsOf,
  type Neck,
  type Piece,
  type PlayOptions,
  playFingering,
  type Scale,
} from '@stillroot/core';
import { neckOf, scaleOf, valueIn } from './given.ts';

/** Open strings as they are common (no one source). */
export const OPEN = { guitar: 'E2-A2-D3-G3-B3-E4', bass: 'E1-A1-D2-G2', banjo: 'G4-D3-G3-B3-D4' } as const;

export const GUITAR = neckOf(OPEN.guitar);
export const A_AEOLIAN = scaleOf('A', '2122122');

/** An octave of a scale along one string, eight notes, played. */
export function pieceOf(options: PlayOptions = {}, neck: Neck = GUITAR, scale: Scale = A_AEOLIAN): Piece {
  const [fingering] = fingeringsOf(neck, scale, { style: 'one-string', limit: 1 }).fingerings;
  if (fingering === undefined) throw new Error('no fingering');
  return valueIn(playFingering(scale, fingering, options));
}
