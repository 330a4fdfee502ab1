/**
 * Fingering the modes of a round together: from one root note, and as near to one another as they can be.
 */
import { fretsBeyondTwelfth, type OpenStrings, slotAtOrAbove } from '../fingering/area.ts';
import { describeSolution, type Fingering, type FretRange, type Style } from '../fingering/fingering.ts';
import { findSharedAreas } from '../fingering/in-position.ts';
import { alongString } from '../fingering/one-string.ts';
import { startingSlots, threePerStringFrom, threePerStringObstacle } from '../fingering/three-per-string.ts';
import { type RangeSearch, rootsOfTwoOctaves, twoOctavesFrom, wholeRange } from '../fingering/whole-range.ts';
import { type Neck, openSlot } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';

/**
 * How the modes share the neck: all in one area, from the same root note over the same octaves; or each in
 * the narrowest area of its own, so chosen that together they take the fewest frets.
 */
export const SHARINGS = ['one-area', 'own-areas'] as const;

export type Sharing = (typeof SHARINGS)[number];

/** Where and how the modes are to be played. */
export interface Together {
  readonly style: Style;
  readonly sharing: Sharing;
  readonly fret: number | undefined;
  readonly reachMm: number;
  readonly openStrings: OpenStrings;
}

/** One fingering a scale, or undefined where they cannot be played together. */
export function fingerTogether(
  neck: Neck,
  scales: readonly Scale[],
  together: Together,
): readonly Fingering[] | undefined {
  switch (together.style) {
    case 'position':
      return together.sharing === 'one-area'
        ? inOneArea(neck, scales, together)
        : inOwnAreas(neck, scales, together);
    case 'three-per-string':
      return threePerString(neck, scales, together);
    case 'one-string':
      return oneString(neck, scales, together);
    case 'two-octaves':
      return upTwoOctaves(neck, scales, together);
    case 'whole-range':
      return upTheWholeRange(neck, scales, together);
    case 'across-the-neck':
      return undefined;
  }
}

/** The frets that hold all of the given fingerings. */
export function areaOf(fingerings: readonly Fingering[]): FretRange {
  return {
    from: Math.min(...fingerings.map(({ area }) => area.from)),
    to: Math.max(...fingerings.map(({ area }) => area.to)),
  };
}

function inOneArea(neck: Neck, scales: readonly Scale[], together: Together) {
  return findSharedAreas(neck, scales, areaSearch(neck, together, 1))[0]?.fingerings;
}

/**
 * Every mode's narrowest areas, and of each the one that lets all lie in the fewest frets: for every fret
 * at which they could begin, each mode takes what ends first above it. They begin at or above the fret that
 * was asked for.
 */
function inOwnAreas(neck: Neck, scales: readonly Scale[], together: Together) {
  const { fret = 0 } = together;
  const search = areaSearch(neck, { ...together, fret: undefined }, neck.slots.length);
  const choices = scales.map((scale) =>
    findSharedAreas(neck, [scale], search)
      .map(({ fingerings }) => fingerings[0] as Fingering)
      .filter(({ area }) => area.from >= fret),
  );
  const starts = [...new Set(choices.flatMap((own) => own.map(({ area }) => area.from)))];
  const sets = starts.flatMap((start) => {
    const set = choices.flatMap((own) => {
      const above = own.filter(({ area }) => area.from >= start);
      return above.toSorted((a, b) => a.area.to - b.area.to)[0] ?? [];
    });
    return set.length === scales.length ? [set] : [];
  });
  const widthOf = (set: readonly Fingering[]) => areaOf(set).to - areaOf(set).from;
  const beyond = (set: readonly Fingering[]) => fretsBeyondTwelfth(areaOf(set).to);
  const stretchOf = (set: readonly Fingering[]) => set.reduce((sum, { cost }) => sum + cost.stretchMm, 0);
  return sets.toSorted(
    (a, b) => widthOf(a) - widthOf(b) || beyond(a) - beyond(b) || stretchOf(a) - stretchOf(b),
  )[0];
}

function areaSearch(neck: Neck, { fret, reachMm, openStrings }: Together, limit: number) {
  const fromSlot = fret === undefined ? undefined : slotAtOrAbove(neck, fret);
  return {
    reachMm,
    openStrings,
    limit,
    each: 1,
    prefer: 'fewest-frets' as const,
    ...(fromSlot !== undefined && { fromSlot }),
  };
}

/** The lowest start on the lowest-sounding string from which every mode is in reach. */
function threePerString(neck: Neck, scales: readonly Scale[], { fret, reachMm, openStrings }: Together) {
  if (threePerStringObstacle(neck)) return undefined;
  const fromSlot = fret === undefined ? 0 : slotAtOrAbove(neck, fret);
  const takesOpen = openStrings !== 'never';
  for (const startSlot of startingSlots(neck, scales[0] as Scale)) {
    if (startSlot < fromSlot) continue;
    const all = allOf(neck, scales, 'near-the-nut', (scale) => {
      const one = threePerStringFrom(neck, scale, { startSlot, reachMm, takesOpen, limit: 1 });
      return one.kind === 'playable' ? one.solutions : [];
    });
    if (all) return all;
  }
  return undefined;
}

/** The first string, from the lowest-sounding side, that has an octave of every mode. */
function oneString(neck: Neck, scales: readonly Scale[], { fret, reachMm, openStrings }: Together) {
  const fromSlot = fret === undefined ? 0 : slotAtOrAbove(neck, fret);
  const search = { reachMm, fromSlot, takesOpen: openStrings !== 'never', limit: 1 };
  for (const string of neck.strings.toReversed()) {
    const all = allOf(neck, scales, 'near-the-nut', (scale) => alongString(neck, scale, string, search));
    if (all) return all;
  }
  return undefined;
}

/** From the lowest root that has two octaves of every mode. */
function upTwoOctaves(neck: Neck, scales: readonly Scale[], together: Together) {
  const search = rangeSearch(neck, together);
  const [rootMidi] = rootsOfTwoOctaves(neck, scales, search);
  if (rootMidi === undefined) return undefined;
  return allOf(neck, scales, together.openStrings, (scale) => twoOctavesFrom(neck, scale, rootMidi, search));
}

function upTheWholeRange(neck: Neck, scales: readonly Scale[], together: Together) {
  const search = rangeSearch(neck, together);
  return allOf(neck, scales, together.openStrings, (scale) => wholeRange(neck, scale, search));
}

function rangeSearch(neck: Neck, { fret, reachMm, openStrings }: Together): RangeSearch {
  const fromSlot = fret === undefined ? openSlot(neck) : slotAtOrAbove(neck, fret);
  return { reachMm, openStrings, fromSlot, limit: 1 };
}

function allOf(
  neck: Neck,
  scales: readonly Scale[],
  openStrings: OpenStrings,
  solutionsOf: (scale: Scale) => ReturnType<typeof wholeRange>,
): readonly Fingering[] | undefined {
  const all = scales.flatMap((scale) => {
    const [solution] = solutionsOf(scale);
    return solution ? [describeSolution(neck, scale, solution, openStrings)] : [];
  });
  return all.length === scales.length ? all : undefined;
}
