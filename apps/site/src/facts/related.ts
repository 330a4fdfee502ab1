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

const sharedByMode = new Map<Mode, readonly SharedFromRoot[]>();

/**
 * Scales that hold six of a scale's seven notes, the best known first, then the simplest names; at most
 * twelve, each on the kindest root of its pitch class.
 */
export function scalesSharingSix(scale: Scale): readonly Scale[] {
  return sharedFromRoot(scale.mode).map(({ mode, semitones }) =>
    spell(mode, kindestRootOf(mode, pitchClassOf(scale.root.pitchClass + semitones))),
  );
}

/** How many pitch classes two scales have in common. */
export function notesInCommon(a: Scale, b: Scale): number {
  return commonCount(setOf(pitchClassesOf(a)), setOf(pitchClassesOf(b)));
}

/** What moves between two modes on the same root. */
export function movedBetween(from: Mode, to: Mode): readonly MovedDegree[] {
  return movedDegrees(from.semitones, to.semitones);
}

function sharedFromRoot(mode: Mode): readonly SharedFromRoot[] {
  const known = sharedByMode.get(mode);
  if (known) return known;
  const anywhere = spell(mode, kindestRootOf(mode, 0));
  const found = sharedScales(anywhere, 6)
    .filter(({ count }) => count === 6)
    .map(({ scale }) => ({ mode: scale.mode, semitones: scale.root.pitchClass }))
    .toSorted(
      (a, b) => modePreference(b.mode) - modePreference(a.mode) || complexity(a.mode) - complexity(b.mode),
    )
    .slice(0, MOST_SHARED);
  sharedByMode.set(mode, found);
  return found;
}

function complexity({ base }: Mode): number {
  return base.moved.length;
}
