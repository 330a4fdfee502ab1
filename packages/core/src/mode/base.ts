/**
 * Bases: the church mode that a mode is read from, and the systematic name that follows.
 */
import { MAJOR_SEMITONES } from '../pitch/letter.ts';
import { formatNamedDegree } from './formula.ts';

/** A degree that lies elsewhere in another mode on the same root. */
export interface MovedDegree {
  /** 1 to 7. */
  readonly degree: number;
  /** Semitones up (+) or down (−). */
  readonly by: number;
}

/** The church mode nearest to a mode, and what moves to get from it to the mode. */
export interface Base {
  readonly name: ChurchModeName;
  readonly moved: readonly MovedDegree[];
}

/** The seven church modes in the order of the degrees they stand on in the major scale. */
export const CHURCH_MODE_NAMES = [
  'Ionian',
  'Dorian',
  'Phrygian',
  'Lydian',
  'Mixolydian',
  'Aeolian',
  'Locrian',
] as const;

export type ChurchModeName = (typeof CHURCH_MODE_NAMES)[number];

/** A church mode: its name, and its degrees above the root in semitones. */
export interface ChurchMode {
  readonly name: ChurchModeName;
  readonly semitones: readonly number[];
}

/** Each church mode is the major scale begun on another of its degrees. */
export const CHURCH_MODES: readonly ChurchMode[] = CHURCH_MODE_NAMES.map((name, from) => ({
  name,
  semitones: MAJOR_SEMITONES.map(
    (_, at) =>
      (MAJOR_SEMITONES[(from + at) % 7] as number) +
      (from + at >= 7 ? 12 : 0) -
      (MAJOR_SEMITONES[from] as number),
  ),
}));

/** The degrees that move from one mode to another on the same root, with direction and size. */
export function movedDegrees(from: readonly number[], to: readonly number[]): readonly MovedDegree[] {
  const moved: MovedDegree[] = [];
  for (let at = 0; at < 7; at += 1) {
    const by = (to[at] as number) - (from[at] as number);
    if (by !== 0) moved.push({ degree: at + 1, by });
  }
  return moved;
}

/** The sum of semitones by which degrees move between two modes on the same root. */
export function distanceBetween(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, semitone, at) => sum + Math.abs(semitone - (b[at] as number)), 0);
}

/**
 * The church mode with the fewest moved degrees, then the least total movement, then the first in the
 * order Ionian to Locrian.
 */
export function findBase(semitones: readonly number[]): Base {
  let best = CHURCH_MODES[0] as ChurchMode;
  let bestRank = Number.POSITIVE_INFINITY;
  for (const church of CHURCH_MODES) {
    let rank = 0;
    for (let at = 1; at < 7 && rank < bestRank; at += 1) {
      const by = Math.abs((semitones[at] as number) - (church.semitones[at] as number));
      if (by > 0) rank += 100 + by;
    }
    if (rank < bestRank) {
      best = church;
      bestRank = rank;
    }
  }
  return { name: best.name, moved: movedDegrees(best.semitones, semitones) };
}

/**
 * The base's name, then every moved degree as it sounds in the mode.
 * @example systematicNameOf(findBase([0, 2, 3, 6, 7, 9, 10]), [0, 0, -1, 1, 0, 0, -1]) // 'Dorian #4'
 */
export function systematicNameOf(base: Base, alterations: readonly number[]): string {
  let name: string = base.name;
  for (const { degree } of base.moved) {
    name += ` ${formatNamedDegree(degree, alterations[degree - 1] as number)}`;
  }
  return name;
}
