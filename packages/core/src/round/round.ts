/**
 * The round: all seven modes of a family, from one root, in one area of the neck.
 */
import { cautionsFor } from '../fingering/cautions.ts';
import type { Fingering, FretRange, Style } from '../fingering/fingering.ts';
import { fingeringsOf, missingNotes, slotAtOrAbove } from '../fingering/fingerings.ts';
import { DEFAULT_REACH_MM } from '../fingering/hand.ts';
import { findSharedAreas } from '../fingering/in-position.ts';
import { alongString } from '../fingering/one-string.ts';
import { startingSlots, threePerStringFrom, threePerStringObstacle } from '../fingering/three-per-string.ts';
import type { Neck } from '../instrument/neck.ts';
import { type MovedDegree, movedDegrees } from '../mode/base.ts';
import { type Scale, spell } from '../mode/spelling.ts';
import type { Mode } from '../mode/universe.ts';
import type { Root } from '../pitch/root.ts';
import { type Order, orderModes } from './order.ts';

/** What may be asked of a round. */
export interface RoundOptions {
  readonly order?: Order;
  readonly style?: Style;
  /** The fret at which the area begins; anywhere where absent. */
  readonly fret?: number;
  readonly reachMm?: number;
}

/** One of the seven. */
export interface RoundMode {
  readonly scale: Scale;
  /** What moved from the mode before it in the round; nothing for the first. */
  readonly moved: readonly MovedDegree[];
  /** Absent where this mode cannot be played in the round. */
  readonly fingering?: Fingering;
  /** Why this one mode is left out of a round that the others can play. */
  readonly reason?: string;
}

/** Seven modes on one root, in one area. */
export interface Round {
  readonly root: Root;
  readonly order: Order;
  readonly style: Style;
  /** The frets that hold all seven; absent where the round cannot be played. */
  readonly area?: FretRange;
  readonly modes: readonly RoundMode[];
  /** Why it cannot be played; absent where it can. */
  readonly reason?: string;
  /** The nearest round that can be played, where this one cannot. */
  readonly alternative?: { readonly style: Style; readonly fret: number };
  readonly cautions: readonly string[];
}

/**
 * The round of a family on a root. Modes whose notes a partly fretted neck does not have are left out,
 * each with its reason, and the others are played without them.
 * @param head the mode on the family's first degree
 */
export function roundOf(neck: Neck, head: Mode, root: Root, options: RoundOptions = {}): Round {
  const { order = 'parent', style = 'position' } = options;
  const scales = orderModes(head, order).map((mode) => spell(mode, root));
  const leftOut = new Map(scales.map((scale) => [scale, missingNotes(neck, scale)]));
  const present = scales.filter((scale) => leftOut.get(scale) === undefined);
  const together = present.length > 0 ? fingerTogether(neck, present, style, options) : undefined;
  const fingeringOf = new Map(together?.map((fingering, at) => [present[at], fingering]));
  const modes = scales.map((scale, at): RoundMode => {
    const before = scales[at - 1];
    const fingering = fingeringOf.get(scale);
    const reason = leftOut.get(scale);
    return {
      scale,
      moved: before ? movedDegrees(before.mode.semitones, scale.mode.semitones) : [],
      ...(fingering && { fingering }),
      ...(reason && { reason }),
    };
  });
  const named = { root, order, style, modes };
  if (together) {
    const cautions = cautionsFor(Math.max(...together.map(({ reachMm }) => reachMm)));
    const isWhole = present.length === scales.length;
    const reason = `only ${present.length} of the seven can be played: the others need notes that this neck does not have`;
    return { ...named, area: areaOf(together), ...(!isWhole && { reason }), cautions };
  }
  const alternative = nearestRound(neck, present, style, options);
  return {
    ...named,
    reason: whyNot(neck, scales, style, options),
    ...(alternative && { alternative }),
    cautions: cautionsFor(undefined),
  };
}

function fingerTogether(
  neck: Neck,
  scales: readonly Scale[],
  style: Style,
  { fret, reachMm = DEFAULT_REACH_MM }: RoundOptions,
): readonly Fingering[] | undefined {
  const fromSlot = fret === undefined ? undefined : slotAtOrAbove(neck, fret);
  switch (style) {
    case 'position': {
      const search = { reachMm, limit: 1, prefer: 'fewest-frets' as const };
      const from = fromSlot === undefined ? {} : { fromSlot };
      return findSharedAreas(neck, scales, { ...search, ...from })[0]?.fingerings;
    }
    case 'three-per-string':
      return threePerStringTogether(neck, scales, reachMm, fromSlot);
    case 'one-string':
      return alongStringTogether(neck, scales, reachMm, fromSlot);
  }
}

/** The lowest start on the lowest-sounding string from which every mode is in reach. */
function threePerStringTogether(neck: Neck, scales: readonly Scale[], reachMm: number, fromSlot = 0) {
  if (threePerStringObstacle(neck)) return undefined;
  for (const slot of startingSlots(neck, scales[0] as Scale)) {
    if (slot < fromSlot) continue;
    const all = scales.map((scale) => threePerStringFrom(neck, scale, slot, reachMm));
    const playable = all.flatMap((one) => (one.kind === 'playable' ? [one.fingering] : []));
    if (playable.length === scales.length) return playable;
  }
  return undefined;
}

/** The first string, from the lowest-sounding side, that has an octave of every mode. */
function alongStringTogether(neck: Neck, scales: readonly Scale[], reachMm: number, fromSlot = 0) {
  for (const string of neck.strings.toReversed()) {
    const all = scales.flatMap((scale) => alongString(neck, scale, string, reachMm, fromSlot) ?? []);
    if (all.length === scales.length) return all.map(({ fingering }) => fingering);
  }
  return undefined;
}

function areaOf(fingerings: readonly Fingering[]): FretRange {
  return {
    from: Math.min(...fingerings.map(({ area }) => area.from)),
    to: Math.max(...fingerings.map(({ area }) => area.to)),
  };
}

function whyNot(neck: Neck, scales: readonly Scale[], style: Style, options: RoundOptions): string {
  const { fret, reachMm } = options;
  for (const scale of scales) {
    const missing = missingNotes(neck, scale);
    if (missing) return missing;
    const { reason } = fingeringsOf(neck, scale, {
      style,
      limit: 1,
      ...(fret !== undefined && { fret }),
      ...(reachMm !== undefined && { reachMm }),
    });
    if (reason) return reason;
  }
  return 'no one area of this neck holds all seven modes from this root';
}

/** The same style anywhere, then in position anywhere, then along one string. */
function nearestRound(neck: Neck, scales: readonly Scale[], style: Style, options: RoundOptions) {
  if (scales.length === 0) return undefined;
  const { reachMm = DEFAULT_REACH_MM } = options;
  for (const otherStyle of new Set<Style>([style, 'position', 'one-string'])) {
    const fingerings = fingerTogether(neck, scales, otherStyle, { reachMm });
    if (fingerings) return { style: otherStyle, fret: areaOf(fingerings).from };
  }
  return undefined;
}
