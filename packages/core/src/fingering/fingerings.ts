/**
 * Fingerings: the ways to play a scale on a neck in a given style, best first; and where there is none,
 * the reason and the nearest thing that can be played.
 */
import { type Neck, openSlot, soundingPitchClasses } from '../instrument/neck.ts';
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import { type AreaShift, acrossNeck } from './across-neck.ts';
import type { OpenStrings } from './area.ts';
import { cautionsFor } from './cautions.ts';
import { describeSolution, type Fingering, type Style } from './fingering.ts';
import { DEFAULT_REACH_MM } from './hand.ts';
import { type AreaSearch, findSharedAreas, fretsBeyondTwelfth } from './in-position.ts';
import { alongString } from './one-string.ts';
import { keepBest } from './ranking.ts';
import {
  type BeyondReach,
  startingSlots,
  threePerStringFrom,
  threePerStringObstacle,
} from './three-per-string.ts';
import type { Solution } from './touch.ts';
import { twoOctaves, wholeRange } from './whole-range.ts';

/** What may be asked of a fingering. */
export interface FingeringOptions {
  readonly style?: Style;
  /** The fret at which to begin; anywhere where absent. Across the neck begins at the nut all the same. */
  readonly fret?: number;
  readonly reachMm?: number;
  readonly openStrings?: OpenStrings;
  /** The most answers to give; across the neck gives the whole chain. */
  readonly limit?: number;
}

/** Fingerings, or the reason why there are none. */
export interface FingeringAnswer {
  readonly style: Style;
  /** Best first, each distinct from the others; across the neck from the nut upwards. */
  readonly fingerings: readonly Fingering[];
  /** Across the neck: how the hand gets from each area to the next. */
  readonly shifts?: readonly AreaShift[];
  /** Why there are none; absent where there are. */
  readonly reason?: string;
  /** Strings on which the hand would have to open wider than it can, where that is why. */
  readonly beyondReach?: readonly BeyondReach[];
  /** The nearest thing that can be played, where there are none. */
  readonly alternative?: { readonly style: Style; readonly fingering: Fingering };
  readonly cautions: readonly string[];
}

interface Asked {
  readonly reachMm: number;
  readonly fret: number | undefined;
  readonly openStrings: OpenStrings;
  readonly limit: number;
  /** The most octaves that lie under one hand; where a fret was asked for, the fewest frets from there. */
  readonly prefer: AreaSearch['prefer'];
}

interface Found {
  readonly fingerings: readonly Fingering[];
  readonly shifts?: readonly AreaShift[];
  readonly reason?: string;
  readonly beyondReach?: readonly BeyondReach[];
}

/** The fingerings of a scale on a neck. */
export function fingeringsOf(neck: Neck, scale: Scale, options: FingeringOptions = {}): FingeringAnswer {
  const style = options.style ?? 'position';
  const asked: Asked = {
    reachMm: options.reachMm ?? DEFAULT_REACH_MM,
    fret: options.fret,
    openStrings: options.openStrings ?? 'near-the-nut',
    limit: Math.max(1, options.limit ?? 5),
    prefer: options.fret === undefined ? 'most-octaves' : 'fewest-frets',
  };
  const { fingerings, shifts, reason, beyondReach } = findIn(style, neck, scale, asked);
  if (fingerings.length > 0) {
    const cautions = cautionsFor(widest(fingerings), asked.reachMm);
    return { style, fingerings, ...(shifts && { shifts }), cautions };
  }
  const alternative = nearestPlayable(style, neck, scale, asked);
  return {
    style,
    fingerings,
    reason: missingNotes(neck, scale) ?? reason ?? 'no fingering was found',
    ...(beyondReach && { beyondReach }),
    ...(alternative && { alternative }),
    cautions: cautionsFor(alternative?.fingering.reachMm, asked.reachMm),
  };
}

/** Says which notes of a scale a neck does not have, or undefined where it has them all. */
export function missingNotes(neck: Neck, scale: Scale): string | undefined {
  const sounding = soundingPitchClasses(neck);
  const missing = scale.notes.filter((_, at) => !sounding.has(pitchClassesOf(scale)[at] as number));
  return missing.length > 0
    ? `in this tuning the frets of this instrument do not have ${missing.join(', ')}`
    : undefined;
}

/** The slot of a fret, or of the next one that exists. Fret 0 is the open position, which begins at the capo where there is one. */
export function slotAtOrAbove(neck: Neck, fret: number): number {
  if (fret === 0) return openSlot(neck);
  const slot = neck.slots.findIndex((one) => one.fret >= fret);
  return slot < 0 ? neck.slots.length : slot;
}

function findIn(style: Style, neck: Neck, scale: Scale, asked: Asked): Found {
  switch (style) {
    case 'position':
      return inPosition(neck, scale, asked);
    case 'three-per-string':
      return threePerString(neck, scale, asked);
    case 'one-string':
      return oneString(neck, scale, asked);
    case 'two-octaves':
      return upTheNeck(neck, scale, asked, twoOctaves, 'there are no two octaves from root to root');
    case 'whole-range':
      return upTheNeck(neck, scale, asked, wholeRange, 'there is no whole octave');
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
  const where = fret === undefined ? 'anywhere on this neck' : `in an area that begins at fret ${fret}`;
  return { fingerings, reason: `there is no octave from root to root ${where}` };
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
    reason: tooWide
      ? whyTooWide(tooWide.beyondReach, reachMm)
      : 'three to a string runs off the neck from there',
    ...(tooWide && { beyondReach: tooWide.beyondReach }),
  };
}

function whyTooWide(beyondReach: readonly BeyondReach[], reachMm: number): string {
  const [{ string, frets, spanMm }] = beyondReach as readonly [BeyondReach];
  return spanMm > reachMm
    ? `string ${string} asks the hand to cover frets ${frets.join(', ')} at once, ${spanMm} mm; the reach is ${reachMm} mm`
    : `string ${string} asks for a finger of its own on each of frets ${frets.join(', ')}, which no hand of this reach has`;
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
    reason: 'no string has a whole octave of it from root to root',
  };
}

function upTheNeck(
  neck: Neck,
  scale: Scale,
  { reachMm, fret, limit, openStrings }: Asked,
  style: typeof twoOctaves | typeof wholeRange,
  lacking: string,
): Found {
  const fromSlot = fret === undefined ? openSlot(neck) : slotAtOrAbove(neck, fret);
  const solutions = style(neck, scale, { reachMm, fromSlot, openStrings, limit });
  const where = fret === undefined ? 'on this neck' : `from fret ${fret} upwards`;
  return {
    fingerings: solutions.map((solution) => describeSolution(neck, scale, solution, openStrings)),
    reason: `${lacking} ${where}`,
  };
}

function across(neck: Neck, scale: Scale, { reachMm, openStrings }: Asked): Found {
  const chain = acrossNeck(neck, scale, { reachMm, openStrings });
  return (
    chain ?? { fingerings: [], reason: 'some frets lie in no area that one hand can play without moving' }
  );
}

/** In position from the asked fret, then the same style as near to it as can be, then position, then one string. */
function nearestPlayable(style: Style, neck: Neck, scale: Scale, asked: Asked) {
  const { fret } = asked;
  const frets = fret === undefined ? [undefined] : nearestFirst(neck, fret);
  const attempts: readonly (readonly [Style, readonly (number | undefined)[]])[] = [
    ['position', [fret]],
    [style, frets],
    ['position', frets],
    ['one-string', [undefined]],
  ];
  for (const [otherStyle, places] of attempts) {
    for (const place of places) {
      if (otherStyle === style && place === fret) continue;
      const [fingering] = findIn(otherStyle, neck, scale, { ...asked, fret: place, limit: 1 }).fingerings;
      if (fingering) return { style: otherStyle, fingering };
    }
  }
  return undefined;
}

/** The frets of a neck in the order of their distance from one of them, then anywhere. */
function nearestFirst(neck: Neck, fret: number): readonly (number | undefined)[] {
  const frets = neck.slots.map((slot) => slot.fret);
  return [...frets.toSorted((a, b) => Math.abs(a - fret) - Math.abs(b - fret) || a - b), undefined];
}

function widest(fingerings: readonly Fingering[]): number {
  return Math.max(...fingerings.map(({ reachMm }) => reachMm));
}
