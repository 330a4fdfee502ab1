/**
 * Shared notes: which scales hold the notes of another, counted on the twelve pitch classes.
 */
import { kindestRootOf, pitchClassesOf, type Scale, spell } from '../mode/spelling.ts';
import { UNIVERSE } from '../mode/universe.ts';
import { commonCount, setOf, transpose } from '../pitch/pitch-class-set.ts';

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
  const wanted = setOf(pitchClassesOf(scale));
  const sets = placementSets();
  const found: SharedScale[] = [];
  for (const mode of UNIVERSE.modes) {
    for (let pitchClass = 0; pitchClass < 12; pitchClass += 1) {
      const count = commonCount(wanted, sets[mode.index * 12 + pitchClass] as number);
      if (count < atLeast || (mode === scale.mode && pitchClass === scale.root.pitchClass)) continue;
      found.push({ scale: spell(mode, kindestRootOf(mode, pitchClass)), count });
    }
  }
  return found.toSorted((a, b) => b.count - a.count);
}

let sets: Uint16Array | undefined;

/**
 * The set of pitch classes that each mode holds on each pitch class, at `mode.index * 12 + pitchClass`:
 * 462 × 12 of them. Made the first time they are asked for.
 */
export function placementSets(): Uint16Array {
  if (sets) return sets;
  sets = new Uint16Array(UNIVERSE.modes.length * 12);
  for (const { index, set } of UNIVERSE.modes) {
    for (let pitchClass = 0; pitchClass < 12; pitchClass += 1) {
      sets[index * 12 + pitchClass] = transpose(set, pitchClass);
    }
  }
  return sets;
}
