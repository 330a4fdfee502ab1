/**
 * Degrees and moves in words.
 */
import { type Base, formatDegree, type MovedDegree, type Scale } from '@stillroot/core';
import { signs } from '../signs.ts';
import { joined, numberWord, ordinal } from './numbers.ts';

const TIMES = ['', '', 'doubly ', 'triply ', 'quadruply ', 'quintuply '] as const;

/**
 * A degree as it sounds against the major scale.
 * @example degreeWords(4, 1)  // 'raised 4th'
 * @example degreeWords(6, 0)  // 'natural 6th'
 * @example degreeWords(7, -2) // 'doubly lowered 7th'
 */
export function degreeWords(degree: number, alteration: number): string {
  if (alteration === 0) return `natural ${ordinal(degree)}`;
  const size = Math.abs(alteration);
  return `${TIMES[size] ?? `${size} times `}${alteration < 0 ? 'lowered' : 'raised'} ${ordinal(degree)}`;
}

/**
 * A mode read from its base.
 * @example baseWords(base, alterations) // 'Dorian with a raised 4th'
 */
export function baseWords(base: Base, alterations: readonly number[]): string {
  if (base.moved.length === 0) return base.name;
  const moved = base.moved.map(({ degree }) => `a ${degreeWords(degree, alterations[degree - 1] ?? 0)}`);
  return `${base.name} with ${joined(moved)}`;
}

/** A degree with its sign: `♭3`. */
export function degreeSign(degree: number, alteration: number): string {
  return signs(formatDegree(degree, alteration));
}

/** Which way and how far a degree moves: `falls a semitone`, `rises a tone`; of several, `fall a semitone`. */
export function moveVerb(by: number, count = 1): string {
  const size = Math.abs(by);
  const distance = size === 1 ? 'a semitone' : size === 2 ? 'a tone' : `${numberWord(size)} semitones`;
  const verb = by < 0 ? 'fall' : 'rise';
  return `${count === 1 ? `${verb}s` : verb} ${distance}`;
}

/** A move of one degree: `6 falls a semitone`. */
export function moveWords({ degree, by }: MovedDegree): string {
  return `${degree} ${moveVerb(by)}`;
}

/** Several moves in one line, those of one kind together: `4 and 6 fall a semitone, 7 rises a semitone`. */
export function movesWords(moved: readonly MovedDegree[]): string {
  const kinds = Map.groupBy(moved, ({ by }) => by);
  return [...kinds]
    .map(
      ([by, moves]) => `${joined(moves.map(({ degree }) => String(degree)))} ${moveVerb(by, moves.length)}`,
    )
    .join(', ');
}

/** The note a degree leaves and the one it goes to: `F♯ → F`. */
export function moveNotes({ degree }: MovedDegree, before: Scale, after: Scale): string {
  return `${signs(before.notes[degree - 1] ?? '')} → ${signs(after.notes[degree - 1] ?? '')}`;
}
