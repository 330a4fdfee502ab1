/**
 * What two to four scales on one root have in common and what not. Pure, so that a page and its island say
 * the same.
 */
import {
  commonCount,
  distanceBetween,
  type MovedDegree,
  movedDegrees,
  pitchClassesOf,
  type Scale,
  setOf,
} from '@stillroot/core';

/** A degree across the scales. */
export interface ComparedDegree {
  /** 1 to 7. */
  readonly degree: number;
  /** Whether it is the same in all of them. */
  readonly isShared: boolean;
  /** Scale by scale. */
  readonly cells: readonly ComparedCell[];
}

/** A degree of one of the scales. */
export interface ComparedCell {
  readonly note: string;
  readonly alteration: number;
  /** Semitones above (+) or below (−) the same degree of the first scale. */
  readonly by: number;
}

/** A scale against the first one. */
export interface Against {
  readonly scale: Scale;
  readonly moved: readonly MovedDegree[];
  /** Semitones moved in all. */
  readonly distance: number;
  /** Pitch classes that both hold, 1 to 7. */
  readonly inCommon: number;
}

/** The comparison. */
export interface Comparison {
  readonly scales: readonly Scale[];
  readonly degrees: readonly ComparedDegree[];
  /** The second and further scales against the first. */
  readonly against: readonly Against[];
  /** The notes that sound in all of them, as the first spells them. */
  readonly inAll: readonly string[];
  /** Scale by scale, the notes that do not sound in all of them. */
  readonly notInAll: readonly (readonly string[])[];
}

/** Compares scales on one root. */
export function compareScales(scales: readonly [Scale, Scale, ...Scale[]]): Comparison {
  const [first, ...others] = scales;
  const sets = scales.map((scale) => setOf(pitchClassesOf(scale)));
  const shared = sets.reduce((all, set) => all & set);
  const notesWhere = (scale: Scale, isIn: boolean): readonly string[] => {
    const pitchClasses = pitchClassesOf(scale);
    return scale.notes.filter((_, at) => isIn === holds(shared, pitchClasses[at] ?? 0));
  };
  return {
    scales,
    degrees: [1, 2, 3, 4, 5, 6, 7].map((degree) => compareDegree(degree, scales, first)),
    against: others.map((scale, at) => ({
      scale,
      moved: movedDegrees(first.mode.semitones, scale.mode.semitones),
      distance: distanceBetween(first.mode.semitones, scale.mode.semitones),
      inCommon: commonCount(sets[0] ?? 0, sets[at + 1] ?? 0),
    })),
    inAll: notesWhere(first, true),
    notInAll: scales.map((scale) => notesWhere(scale, false)),
  };
}

/** Whether a set of pitch classes holds one. */
export function holds(set: number, pitchClass: number): boolean {
  return (set & (1 << pitchClass)) !== 0;
}

function compareDegree(degree: number, scales: readonly Scale[], first: Scale): ComparedDegree {
  const cells = scales.map(({ notes, mode }) => ({
    note: notes[degree - 1] ?? '',
    alteration: mode.alterations[degree - 1] ?? 0,
    by: (mode.semitones[degree - 1] ?? 0) - (first.mode.semitones[degree - 1] ?? 0),
  }));
  return { degree, cells, isShared: cells.every(({ by }) => by === 0) };
}
