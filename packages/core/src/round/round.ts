/**
 * The round: all seven modes of a family, from one root, in one area of the neck.
 */
import type { OpenStrings } from '../fingering/area.ts';
import { type Caution, cautionsFor } from '../fingering/cautions.ts';
import type { Fingering, FretRange, Style } from '../fingering/fingering.ts';
import { fingeringsOf, missingNotes } from '../fingering/fingerings.ts';
import { DEFAULT_REACH_MM } from '../fingering/hand.ts';
import type { Reason } from '../fingering/reason.ts';
import type { Neck } from '../instrument/neck.ts';
import { type MovedDegree, movedDegrees } from '../mode/base.ts';
import { type Scale, spell } from '../mode/spelling.ts';
import type { Mode } from '../mode/universe.ts';
import type { Root } from '../pitch/root.ts';
import { type Order, orderModes } from './order.ts';
import { areaOf, fingerTogether, type Sharing, type Together } from './together.ts';

/** What may be asked of a round. */
export interface RoundOptions {
  readonly order?: Order;
  readonly style?: Style;
  readonly sharing?: Sharing;
  /** The fret at which the area begins; anywhere where absent. */
  readonly fret?: number;
  readonly reachMm?: number;
  readonly openStrings?: OpenStrings;
}

/** One of the seven. */
export interface RoundMode {
  readonly scale: Scale;
  /** What moved from the mode before it in the round; nothing for the first. */
  readonly moved: readonly MovedDegree[];
  /** Absent where this mode cannot be played in the round. */
  readonly fingering?: Fingering;
  /** Why this one mode is left out of a round that the others can play. */
  readonly reason?: Reason;
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
  readonly reason?: Reason;
  /** The nearest round that can be played, where this one cannot. */
  readonly alternative?: { readonly style: Style; readonly fret: number };
  readonly cautions: readonly Caution[];
}

/**
 * The round of a family on a root. Modes whose notes a partly fretted neck does not have are left out,
 * each with its reason, and the others are played without them.
 * @param head the mode on the family's first degree
 */
export function roundOf(neck: Neck, head: Mode, root: Root, options: RoundOptions = {}): Round {
  const { order = 'parent', reachMm = DEFAULT_REACH_MM } = options;
  const how: Together = {
    style: options.style ?? 'position',
    sharing: options.sharing ?? 'one-area',
    fret: options.fret,
    reachMm,
    openStrings: options.openStrings ?? 'near-the-nut',
  };
  const scales = orderModes(head, order).map((mode) => spell(mode, root));
  const leftOut = new Map(scales.map((scale) => [scale, missingNotes(neck, scale)]));
  const present = scales.filter((scale) => leftOut.get(scale) === undefined);
  const together = present.length > 0 ? fingerTogether(neck, present, how) : undefined;
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
  const named = { root, order, style: how.style, modes };
  if (together) {
    const cautions = cautionsFor(Math.max(...together.map((fingering) => fingering.reachMm)), reachMm);
    const isWhole = present.length === scales.length;
    const reason: Reason = { kind: 'modes-left-out', playable: present.length };
    return { ...named, area: areaOf(together), ...(!isWhole && { reason }), cautions };
  }
  const alternative = nearestRound(neck, present, how);
  return {
    ...named,
    reason: whyNot(neck, scales, how),
    ...(alternative && { alternative }),
    cautions: cautionsFor(undefined, reachMm),
  };
}

function whyNot(neck: Neck, scales: readonly Scale[], how: Together): Reason {
  if (how.style === 'across-the-neck') {
    return { kind: 'chain-is-for-one-scale' };
  }
  const { style, reachMm, openStrings, fret } = how;
  for (const scale of scales) {
    const options = { style, reachMm, openStrings, limit: 1, ...(fret !== undefined && { fret }) };
    const { reason } = fingeringsOf(neck, scale, options);
    if (reason) return reason;
  }
  return { kind: 'no-shared-area' };
}

/** The same style, then in position, each as near to the asked fret as can be; then along one string. */
function nearestRound(neck: Neck, scales: readonly Scale[], how: Together) {
  if (scales.length === 0) return undefined;
  for (const style of new Set<Style>([how.style, 'position', 'one-string'])) {
    for (const fret of nearestBelow(neck, how.fret)) {
      const fingerings = fingerTogether(neck, scales, { ...how, style, fret });
      if (fingerings) return { style, fret: areaOf(fingerings).from };
    }
  }
  return undefined;
}

/** The asked fret, from which another style looks upwards, then those below it from the nearest; then anywhere. */
function nearestBelow(neck: Neck, fret: number | undefined): readonly (number | undefined)[] {
  if (fret === undefined) return [undefined];
  const below = neck.slots.map((slot) => slot.fret).filter((one) => one < fret);
  return [fret, ...below.toReversed(), undefined];
}
