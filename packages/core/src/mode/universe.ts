/**
 * The universe: every seven-note interval pattern in twelve-tone equal temperament. A mode is a choice of
 * six of the eleven semitones above its root, C(11,6) = 462; rotation groups them into 66 families of
 * seven (7 is prime and does not divide 12, so no pattern repeats itself). All of it is computed.
 */

import { type PitchClassSet, setOf } from '../pitch/pitch-class-set.ts';
import { type Base, findBase, systematicNameOf } from './base.ts';
import { alterationsOf, formatDegree } from './formula.ts';

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

/** Builds all 66 families and 462 modes anew. {@link UNIVERSE} holds the one everybody shares. */
export function buildUniverse(): Universe {
  const heads = everyPattern()
    .filter((steps) => isBrightestRotation(steps))
    .toSorted((a, b) => sumOfDegrees(b) - sumOfDegrees(a) || (a.join('') < b.join('') ? 1 : -1));
  const families = heads.map((steps, index) => buildFamily(steps, index));
  const modes = families.flatMap((family) => family.modes);
  return {
    modes,
    families,
    modesById: new Map(modes.map((mode) => [mode.id, mode])),
    modesBySet: new Map(modes.map((mode) => [setOf(mode.semitones), mode])),
    familiesById: new Map(families.map((family) => [family.id, family])),
  };
}

/** The universe, built once. */
export const UNIVERSE: Universe = /* @__PURE__ */ buildUniverse();

/** Every way to write 12 as seven steps of at least 1, as the gaps between six chosen semitones of eleven. */
function everyPattern(): readonly (readonly number[])[] {
  const patterns: number[][] = [];
  const extend = (steps: readonly number[], left: number): void => {
    const open = 7 - steps.length;
    if (open === 1) {
      patterns.push([...steps, left]);
      return;
    }
    for (let step = 1; step <= left - (open - 1); step += 1) extend([...steps, step], left - step);
  };
  extend([], 12);
  return patterns;
}

function sumOfDegrees(steps: readonly number[]): number {
  return steps.reduce((sum, step, at) => sum + step * (6 - at), 0);
}

/**
 * Turning a pattern on by k degrees changes the sum of its degrees by 12·k − 7·(the first k steps), which
 * is never zero for 0 < k < 7. So one rotation is the brightest, without ties: the one from which every
 * turn takes something away.
 */
function isBrightestRotation(steps: readonly number[]): boolean {
  let turned = 0;
  return steps.slice(0, 6).every((step, at) => {
    turned += step;
    return 12 * (at + 1) < 7 * turned;
  });
}

function buildFamily(headSteps: readonly number[], index: number): Family {
  const id = headSteps.join('');
  const modes = headSteps.map((_, rotation) => {
    const steps = rotate(headSteps, rotation);
    const semitones = semitonesOf(steps);
    const alterations = alterationsOf(semitones);
    const base = findBase(semitones);
    return {
      id: steps.join(''),
      index: index * 7 + rotation,
      steps,
      semitones,
      alterations,
      formula: alterations.map((alteration, at) => formatDegree(at + 1, alteration)),
      brightness: alterations.reduce((sum, alteration) => sum + alteration, 0),
      base,
      systematicName: systematicNameOf(base, alterations),
      familyId: id,
      rotation,
    };
  });
  return { id, index, modes };
}
