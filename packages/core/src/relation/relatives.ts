/**
 * Modes that belong together: the rotations of a family on one root (parallel) or on one set of notes
 * (relative), and the scale they are all rotations of (the parent).
 */
import { kindestRootOf, pitchClassesOf, type Scale, spell } from '../mode/spelling.ts';
import { type Family, type Mode, UNIVERSE } from '../mode/universe.ts';
import { type Root, rootNamed } from '../pitch/root.ts';

/** The family a mode belongs to. */
export function familyOf(mode: Mode): Family {
  return UNIVERSE.familiesById.get(mode.familyId) as Family;
}

/**
 * The degree, 1 to 7, of `head` on which `mode` stands.
 * @example degreeIn(harmonicMinor, phrygianDominant) // 5
 */
export function degreeIn(head: Mode, mode: Mode): number {
  return ((mode.rotation - head.rotation + 7) % 7) + 1;
}

/** The seven modes of a family, counted from `head`. */
export function modesFrom(head: Mode): readonly Mode[] {
  const { modes } = familyOf(head);
  return modes.map((_, degree) => modes[(head.rotation + degree) % 7] as Mode);
}

/**
 * The same notes begun on each degree: seven scales, the given one first. A root that is not among the 21
 * (a double flat, say) gives way to its kindest twin.
 */
export function relativeScales(scale: Scale): readonly Scale[] {
  return modesFrom(scale.mode).map((mode, degree) => spell(mode, rootOnDegree(scale, degree, mode)));
}

/**
 * The scale of `head` that holds the same notes as `scale`.
 * @example parentScale(aPhrygianDominant, harmonicMinor) // D harmonic minor
 */
export function parentScale(scale: Scale, head: Mode): Scale {
  const degree = degreeIn(scale.mode, head) - 1;
  return spell(head, rootOnDegree(scale, degree, head));
}

function rootOnDegree(scale: Scale, degree: number, mode: Mode): Root {
  return (
    rootNamed(scale.notes[degree] as string) ?? kindestRootOf(mode, pitchClassesOf(scale)[degree] as number)
  );
}
