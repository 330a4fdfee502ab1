/**
 * The modes, scales and pitches in core that a table speaks of, found by what the table says.
 */
import {
  type Mode,
  type Pitch,
  parsePitch,
  parseRoot,
  placementSets,
  type Result,
  type Root,
  type Scale,
  spell,
  UNIVERSE,
} from '@stillroot/core';
import { semitonesOfFormula, stepsOf } from './by-hand.ts';

/** Every mode on every pitch class, with the set of pitch classes that core says it holds there. */
export const everyPlacement = UNIVERSE.modes.flatMap((mode) =>
  Array.from({ length: 12 }, (_, pitchClass) => ({
    mode,
    pitchClass,
    set: placementSets()[mode.index * 12 + pitchClass] as number,
  })),
);

/** The mode with these steps; throws where core has none. */
export function modeBySteps(steps: string): Mode {
  const mode = UNIVERSE.modesById.get(steps);
  if (mode === undefined) throw new Error(`core has no mode ${steps}`);
  return mode;
}

/** The mode with this formula, found by the semitones that the formula comes to. */
export function modeOf(formula: string): Mode {
  return modeBySteps(stepsOf(semitonesOfFormula(formula)).join(''));
}

/** The root of this name. */
export function rootOf(name: string): Root {
  return unwrap(parseRoot(name));
}

/** The scale of a formula on a root. */
export function scaleOf(root: string, formula: string): Scale {
  return spell(modeOf(formula), rootOf(root));
}

/** The pitch of this name. */
export function pitchOf(name: string): Pitch {
  return unwrap(parsePitch(name));
}

/** What a result holds; throws where it holds a problem. */
export function unwrap<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.problem.field}: ${result.problem.expected}`);
  return result.value;
}
