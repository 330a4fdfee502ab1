/**
 * Shared notes: which scales hold the notes of another, counted on the twelve pitch classes.
 */
import { kindestRootOf, type Scale, spell } from '../mode/spelling.ts';
import { type Mode, UNIVERSE } from '../mode/universe.ts';

/** A scale and how many pitch classes of another it holds. */
export interface SharedScale {
  readonly scale: Scale;
  readonly count: number;
}

/** A set of pitch classes as twelve bits, C lowest. */
export type PitchClassSet = number;

/** Pitch classes as a set. */
export function setOf(pitchClasses: readonly number[]): PitchClassSet {
  return pitchClasses.reduce((set, pitchClass) => set | (1 << pitchClass), 0);
}

/** How many pitch classes two sets have in common. */
export function commonCount(a: PitchClassSet, b: PitchClassSet): number {
  let bits = a & b;
  let count = 0;
  while (bits > 0) {
    bits &= bits - 1;
    count += 1;
  }
  return count;
}

/**
 * Every other scale, on the kindest root of each pitch class, that shares at least `atLeast` pitch classes
 * with `scale`; most shared first, then in the order of the universe. Relatives share 7.
 * @param atLeast 0 to 7
 */
export function sharedScales(scale: Scale, atLeast = 6): readonly SharedScale[] {
  const wanted = setOf(scale.pitchClasses);
  const found: SharedScale[] = [];
  for (const { mode, pitchClass, set } of everyPlacement()) {
    const count = commonCount(wanted, set);
    if (count < atLeast || (mode === scale.mode && pitchClass === scale.root.pitchClass)) continue;
    found.push({ scale: spell(mode, kindestRootOf(mode, pitchClass)), count });
  }
  return found.toSorted((a, b) => b.count - a.count);
}

/** A mode on a pitch class, with the set of pitch classes it holds. */
export interface Placement {
  readonly mode: Mode;
  readonly pitchClass: number;
  readonly set: PitchClassSet;
}

let placements: readonly Placement[] | undefined;

/** All 462 × 12 placements. Built the first time they are asked for. */
export function everyPlacement(): readonly Placement[] {
  placements ??= UNIVERSE.modes.flatMap((mode) => {
    const onC = setOf(mode.semitones);
    return Array.from({ length: 12 }, (_, pitchClass) => ({
      mode,
      pitchClass,
      set: turned(onC, pitchClass),
    }));
  });
  return placements;
}

function turned(set: PitchClassSet, by: number): PitchClassSet {
  return ((set << by) | (set >> (12 - by))) & 0xfff;
}
