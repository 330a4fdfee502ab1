/**
 * The styles: for each of them the fingerings of a scale on a neck, best first, or the reason why there are
 * none.
 */
import { type Neck, openSlot } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import { type AreaShift, acrossNeck } from './across-neck.ts';
import { fretsBeyondTwelfth, type OpenStrings, slotAtOrAbove } from './area.ts';
import { describeSolution, type Fingering, type Style } from './fingering.ts';
import { type AreaSearch, findSharedAreas } from './in-position.ts';
import { alongString } from './one-string.ts';
import { keepBest } from './ranking.ts';
import type { Reason } from './reason.ts';
import {
  type BeyondReach,
  startingSlots,
  threePerStringFrom,
  threePerStringObstacle,
} from './three-per-string.ts';
import type { Solution } from './touch.ts';
import { twoOctaves, wholeRange } from './whole-range.ts';

/** What is asked, with nothing left open. */
export interface Asked {
  readonly reachMm: number;
  readonly fret: number | undefined;
  readonly openStrings: OpenStrings;
  readonly limit: number;
  /** The most octaves that lie under one hand; where a fret was asked for, the fewest frets from there. */
  readonly prefer: AreaSearch['prefer'];
}

/** What a style found, or why it found nothing. */
export interface Found {
  readonly fingerings: readonly Fingering[];
  readonly shifts?: readonly AreaShift[];
  /** Of no account where there are fingerings. */
  readonly reason?: Reason;
  readonly beyondReach?: readonly BeyondReach[];
}

/** The fingerings of a scale in a style. */
export function findIn(style: Style, neck: Neck, scale: Scale, asked: Asked): Found {
  switch (style) {
    case 'position':
      return inPosition(neck, scale, asked);
    case 'three-per-string':
      return threePerString(neck, scale, asked);
    case 'one-string':
      return oneString(neck, scale, asked);
    case 'two-octaves':
      return upTheNeck(neck, scale, asked, twoOctaves, 'no-two-octaves');
    case 'whole-range':
      return upTheNeck(neck, scale, asked, wholeRange, 'no-whole-octave');
    case 'across-the-neck':
      return across(neck, scale, asked);
  }
}

function inPosition(neck: Neck, scale: Scale, asked: Asked): Found {
  const { fret, reachMm, limit, prefer, openStrings } = asked;
  const fromSlot = fret === undefined ? undefined : slotAtOrAbove(neck, fret);
  const search = {
    reachMm,
    limit,
    each: limit,
    prefer,
    openStrings,
    ...(fromSlot !== undefined && { fromSlot }),
  };
  const areas = findSharedAreas(neck, [scale], search);
  const fingerings = areas.flatMap((area) => area.fingerings);
  return { fingerings, reason: { kind: 'no-octave', ...(fret !== undefined && { fret }) } };
}

function threePerString(neck: Neck, scale: Scale, { reachMm, fret, limit, openStrings }: Asked): Found {
  const obstacle = threePerStringObstacle(neck);
  if (obstacle) return { fingerings: [], reason: obstacle };
  const fromSlot = fret === undefined ? undefined : slotAtOrAbove(neck, fret);
  const takesOpen = openStrings !== 'never';
  const tried = startingSlots(neck, scale, fromSlot).map((startSlot) =>
    threePerStringFrom(neck, scale, { startSlot, reachMm, takesOpen, limit }),
  );
  const playable = tried
    .flatMap((one) => (one.kind === 'playable' ? one.solutions : []))
    .map((solution) => ({ solution, fingering: describeSolution(neck, scale, solution) }))
    .toSorted(
      (a, b) =>
        fretsBeyondTwelfth(a.fingering.area.to) - fretsBeyondTwelfth(b.fingering.area.to) ||
        a.solution.cost - b.solution.cost,
    );
  const tooWide = tried.find((one) => one.kind === 'too-wide');
  return {
    fingerings: playable.slice(0, limit).map(({ fingering }) => fingering),
    reason: tooWide ? whyTooWide(tooWide.beyondReach, reachMm) : { kind: 'off-the-neck' },
    ...(tooWide && { beyondReach: tooWide.beyondReach }),
  };
}

function whyTooWide(beyondReach: readonly BeyondReach[], reachMm: number): Reason {
  const [{ string, frets, spanMm }] = beyondReach as readonly [BeyondReach];
  return spanMm > reachMm
    ? { kind: 'too-wide', string, frets, spanMm, reachMm }
    : { kind: 'too-many-fingers', string, frets };
}

function oneString(neck: Neck, scale: Scale, { reachMm, fret, limit, openStrings }: Asked): Found {
  const fromSlot = fret === undefined ? 0 : slotAtOrAbove(neck, fret);
  const search = { reachMm, fromSlot, limit, takesOpen: openStrings !== 'never' };
  const best: Solution[] = [];
  for (const string of neck.strings.toReversed()) {
    for (const solution of alongString(neck, scale, string, search)) keepBest(best, solution, limit);
  }
  return {
    fingerings: best.map((solution) => describeSolution(neck, scale, solution)),
    reason: { kind: 'no-octave-on-a-string' },
  };
}

function upTheNeck(
  neck: Neck,
  scale: Scale,
  { reachMm, fret, limit, openStrings }: Asked,
  style: typeof twoOctaves | typeof wholeRange,
  lacking: 'no-two-octaves' | 'no-whole-octave',
): Found {
  const fromSlot = fret === undefined ? openSlot(neck) : slotAtOrAbove(neck, fret);
  const solutions = style(neck, scale, { reachMm, fromSlot, openStrings, limit });
  return {
    fingerings: solutions.map((solution) => describeSolution(neck, scale, solution, openStrings)),
    reason: { kind: lacking, ...(fret !== undefined && { fret }) },
  };
}

function across(neck: Neck, scale: Scale, { reachMm, openStrings }: Asked): Found {
  const chain = acrossNeck(neck, scale, { reachMm, openStrings });
  return chain ?? { fingerings: [], reason: { kind: 'gap-in-chain' } };
}
