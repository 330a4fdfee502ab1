/**
 * Shared notes: which scales hold the notes of another, counted on the twelve pitch classes.
 */
import { kindestRootOf, type Scale, spell } from '../mode/spelling.ts';
import { type Mode, UNIVERSE } from '../mode/universe.ts';
import { commonCount, type PitchClassSet, setOf, transpose } from '../pitch/pitch-class-set.ts';

/** A scale and how many pitch classes of another it holds. */
export interface SharedScale {
  readonly scale: Scale;
  readonly count: number;
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
  if (placements) return placements;
  const found: Placement[] = [];
  for (const mode of UNIVERSE.modes) {
    const onC = setOf(mode.semitones);
    for (let pitchClass = 0; pitchClass < 12; pitchClass += 1) {
      found.push({ mode, pitchClass, set: transpose(onC, pitchClass) });
    }
  }
  placements = found;
  return found;
}
