/**
 * What a mode is related to, found once for each mode and carried to every root.
 */
import { modePreference } from '@stillroot/catalog';
import {
  commonCount,
  kindestRootOf,
  type Mode,
  type MovedDegree,
  movedDegrees,
  pitchClassesOf,
  pitchClassOf,
  type Scale,
  setOf,
  sharedScales,
  spell,
} from '@stillroot/core';

/** The most scales that are listed as sharing six notes. */
const MOST_SHARED = 12;

/** A mode that shares notes, as many semitones higher. */
interface SharedFromRoot {
  readonly mode: Mode;
  readonly semitones: number;
}

/** The first of those that share notes with a mode, and how many there are. */
interface SharedWith {
  readonly first: readonly SharedFromRoot[];
  readonly count: number;
}

const sharedByMode = new Map<Mode, SharedWith>();

/** Scales that share notes with another: those to be listed, and how many there are. */
export interface Sharing {
  readonly scales: readonly Scale[];
  readonly count: number;
}

/**
 * Scales that hold six of a scale's seven notes, the best known first, then the simplest names; at most
 * twelve, each on the kindest root of its pitch class.
 */
export function scalesSharingSix(scale: Scale): Sharing {
  const { first, count } = sharedFromRoot(scale.mode);
  const scales = first.map(({ mode, semitones }) =>
    spell(mode, kindestRootOf(mode, pitchClassOf(scale.root.pitchClass + semitones))),
  );
  return { scales, count };
}

/** How many pitch classes two scales have in common. */
export function notesInCommon(a: Scale, b: Scale): number {
  return commonCount(setOf(pitchClassesOf(a)), setOf(pitchClassesOf(b)));
}

/** What moves between two modes on the same root. */
export function movedBetween(from: Mode, to: Mode): readonly MovedDegree[] {
  return movedDegrees(from.semitones, to.semitones);
}

function sharedFromRoot(mode: Mode): SharedWith {
  const known = sharedByMode.get(mode);
  if (known) return known;
  const anywhere = spell(mode, kindestRootOf(mode, 0));
  const found = sharedScales(anywhere, 6)
    .filter(({ count }) => count === 6)
    .map(({ scale }) => ({ mode: scale.mode, semitones: scale.root.pitchClass }))
    .toSorted(
      (a, b) => modePreference(b.mode) - modePreference(a.mode) || complexity(a.mode) - complexity(b.mode),
    );
  const shared = { first: found.slice(0, MOST_SHARED), count: found.length };
  sharedByMode.set(mode, shared);
  return shared;
}

function complexity({ base }: Mode): number {
  return base.moved.length;
}
