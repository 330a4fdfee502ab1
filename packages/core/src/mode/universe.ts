/**
 * The universe: every seven-note interval pattern in twelve-tone equal temperament. A mode is a choice of
 * six of the eleven semitones above its root, C(11,6) = 462; rotation groups them into 66 families of
 * seven (7 is prime and does not divide 12, so no pattern repeats itself). All of it is computed.
 */

import { type PitchClassSet, sizeOf } from '../pitch/pitch-class-set.ts';
import { type Base, findBase, systematicNameOf } from './base.ts';
import { alterationsOf, formulaOf } from './formula.ts';

/** A seven-note interval pattern above a root, without a pitch. */
export interface Mode {
  /** The seven steps written together: `2131212`. */
  readonly id: string;
  /** 0 to 461, in the order of {@link Universe.modes}. */
  readonly index: number;
  /** Distances from each degree to the next, in semitones; they sum to 12. */
  readonly steps: readonly number[];
  /** Each degree above the root, in semitones; the first is 0. */
  readonly semitones: readonly number[];
  /** The same degrees as a set. */
  readonly set: PitchClassSet;
  /** Each degree's alteration against the major scale. */
  readonly alterations: readonly number[];
  /** The degrees as they are written: `1`, `b3`, `#4`, `bb7`. */
  readonly formula: readonly string[];
  /** The sum of all alterations: 1 for Lydian, 0 for Ionian, −5 for Locrian. */
  readonly brightness: number;
  /** The nearest church mode and the degrees that differ from it. */
  readonly base: Base;
  /** The one name that follows from the rule: `Dorian #4`. */
  readonly systematicName: string;
  /** The id of its family: the steps of the brightest rotation. */
  readonly familyId: string;
  /** How many degrees above the brightest rotation's root this mode begins, 0 to 6. */
  readonly rotation: number;
}

/** Seven modes that are rotations of one another. */
export interface Family {
  /** The steps of its brightest mode. No two rotations are equally bright, so there is only one. */
  readonly id: string;
  /** 0 to 65. */
  readonly index: number;
  /** In order of rotation, from the brightest. */
  readonly modes: readonly Mode[];
}

/** All modes and all families. */
export interface Universe {
  /** From the brightest to the darkest family head, each family in order of rotation. */
  readonly modes: readonly Mode[];
  readonly families: readonly Family[];
  readonly modesById: ReadonlyMap<string, Mode>;
  /** By the set of semitones above the root. */
  readonly modesBySet: ReadonlyMap<PitchClassSet, Mode>;
  readonly familiesById: ReadonlyMap<string, Family>;
}

/**
 * Steps turned so that they begin `by` degrees later.
 * @example rotate([2, 2, 1, 2, 2, 2, 1], 1) // [2, 1, 2, 2, 2, 1, 2]
 */
export function rotate(steps: readonly number[], by: number): readonly number[] {
  return [...steps.slice(by), ...steps.slice(0, by)];
}

/**
 * Each degree above the root in semitones.
 * @example semitonesOf([2, 1, 2, 2, 1, 3, 1]) // [0, 2, 3, 5, 7, 8, 11]
 */
export function semitonesOf(steps: readonly number[]): readonly number[] {
  let sum = 0;
  return steps.map((step) => {
    const here = sum;
    sum += step;
    return here;
  });
}

/**
 * Builds all 66 families and 462 modes anew. {@link UNIVERSE} holds the one everybody shares. Plain loops
 * from here to the end: every program that spells a scale waits for this first.
 */
export function buildUniverse(): Universe {
  const heads = brightestRotations().toSorted((a, b) => b.sum - a.sum || (a.id < b.id ? 1 : -1));
  const families: Family[] = [];
  const modes: Mode[] = [];
  const modesById = new Map<string, Mode>();
  const modesBySet = new Map<PitchClassSet, Mode>();
  const familiesById = new Map<string, Family>();
  for (const [index, { id, steps }] of heads.entries()) {
    const family = { id, index, modes: steps.map((_, rotation) => buildMode(steps, id, index, rotation)) };
    families.push(family);
    familiesById.set(id, family);
    for (const mode of family.modes) {
      modes.push(mode);
      modesById.set(mode.id, mode);
      modesBySet.set(mode.set, mode);
    }
  }
  return { modes, families, modesById, modesBySet, familiesById };
}

/** The universe, built once. */
export const UNIVERSE: Universe = /* @__PURE__ */ buildUniverse();

/** The head of a family, with the sum of its degrees in semitones. */
interface Head {
  readonly id: string;
  readonly steps: readonly number[];
  readonly sum: number;
}

/**
 * Of all sets of a root and six of the eleven semitones above it, the brightest of each seven rotations.
 * Turning a pattern on to its k-th degree changes the sum of its degrees by 12·(k − 1) − 7·(that degree),
 * which is never zero. So one rotation is the brightest, without ties: the one from which every turn takes
 * something away.
 */
function brightestRotations(): readonly Head[] {
  const heads: Head[] = [];
  for (let set = 1; set < 1 << 12; set += 2) {
    if (sizeOf(set) !== 7) continue;
    let degree = 0;
    let sum = 0;
    let isBrightest = true;
    for (let semitone = 1; semitone < 12 && isBrightest; semitone += 1) {
      if (!(set & (1 << semitone))) continue;
      degree += 1;
      sum += semitone;
      isBrightest = 12 * degree < 7 * semitone;
    }
    if (!isBrightest) continue;
    const steps = stepsOf(set);
    heads.push({ id: steps.join(''), steps, sum });
  }
  return heads;
}

function stepsOf(set: PitchClassSet): readonly number[] {
  const steps: number[] = [];
  for (let semitone = 1, before = 0; semitone <= 12; semitone += 1) {
    if (semitone < 12 && !(set & (1 << semitone))) continue;
    steps.push(semitone - before);
    before = semitone;
  }
  return steps;
}

function buildMode(headSteps: readonly number[], familyId: string, family: number, rotation: number): Mode {
  const steps: number[] = new Array(7);
  const semitones: number[] = new Array(7);
  let id = '';
  let set = 0;
  let sum = 0;
  for (let at = 0; at < 7; at += 1) {
    const step = headSteps[(rotation + at) % 7] as number;
    id += step;
    steps[at] = step;
    semitones[at] = sum;
    set |= 1 << sum;
    sum += step;
  }
  const alterations = alterationsOf(semitones);
  const base = findBase(semitones);
  return {
    id,
    index: family * 7 + rotation,
    steps,
    semitones,
    set,
    alterations,
    formula: formulaOf(alterations),
    brightness: alterations.reduce((sum, alteration) => sum + alteration, 0),
    base,
    systematicName: systematicNameOf(base, alterations),
    familyId,
    rotation,
  };
}
