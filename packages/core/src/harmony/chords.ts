/**
 * Chords on the degrees: thirds stacked within one scale, three notes and four.
 */

import { formatDegree } from '../mode/formula.ts';
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import { MAJOR_SEMITONES, pitchClassOf } from '../pitch/letter.ts';

/** A chord built of every other note of a scale. */
export interface DegreeChord {
  /** The degree it stands on, 1 to 7. */
  readonly degree: number;
  /** Its notes from the root upwards. */
  readonly notes: readonly string[];
  /** Semitones above its root. */
  readonly semitones: readonly number[];
  /** The usual name of its kind (`min`, `maj7#5`), or its own formula (`1 b3 bb5`) where there is none. */
  readonly kind: string;
}

/** Names of stacked thirds, as in harmony textbooks (Kostka and Payne, Tonal Harmony, chapter 4). */
const KINDS: ReadonlyMap<string, string> = new Map([
  ['0 4 7', 'maj'],
  ['0 3 7', 'min'],
  ['0 3 6', 'dim'],
  ['0 4 8', 'aug'],
  ['0 4 7 11', 'maj7'],
  ['0 3 7 10', 'm7'],
  ['0 4 7 10', '7'],
  ['0 3 6 10', 'm7b5'],
  ['0 3 6 9', 'dim7'],
  ['0 3 7 11', 'm(maj7)'],
  ['0 4 8 11', 'maj7#5'],
  ['0 4 8 10', '7#5'],
  ['0 4 6 10', '7b5'],
  ['0 4 6 11', 'maj7b5'],
  ['0 3 6 11', 'dim(maj7)'],
]);

/** The seven triads of a scale. */
export function triadsOf(scale: Scale): readonly DegreeChord[] {
  return stackThirds(scale, 3);
}

/** The seven seventh chords of a scale. */
export function seventhsOf(scale: Scale): readonly DegreeChord[] {
  return stackThirds(scale, 4);
}

function stackThirds(scale: Scale, size: number): readonly DegreeChord[] {
  return scale.notes.map((_, at) => {
    const degrees = Array.from({ length: size }, (_unused, third) => (at + 2 * third) % 7);
    const bottom = pitchClassesOf(scale)[at] as number;
    const semitones = degrees.map((degree) =>
      pitchClassOf((pitchClassesOf(scale)[degree] as number) - bottom),
    );
    return {
      degree: at + 1,
      notes: degrees.map((degree) => scale.notes[degree] as string),
      semitones,
      kind: KINDS.get(semitones.join(' ')) ?? formulaOf(semitones),
    };
  });
}

function formulaOf(semitones: readonly number[]): string {
  return semitones
    .map((semitone, third) => formatDegree(2 * third + 1, semitone - (MAJOR_SEMITONES[2 * third] as number)))
    .join(' ');
}
