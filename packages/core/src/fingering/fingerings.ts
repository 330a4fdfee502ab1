/**
 * Fingerings: the ways to play a scale on a neck in a given style, best first; and where there is none,
 * the reason and the nearest thing that can be played.
 */
import { type Neck, type NeckString, soundingPitchClasses } from '../instrument/neck.ts';
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import { openSlot } from './area.ts';
import { cautionsFor } from './cautions.ts';
import type { Fingering, Style } from './fingering.ts';
import { DEFAULT_REACH_MM } from './hand.ts';
import { type AreaSearch, findSharedAreas, fretsBeyondTwelfth } from './in-position.ts';
import { alongString } from './one-string.ts';
import {
  startingSlots,
  type ThreePerString,
  threePerStringFrom,
  threePerStringObstacle,
} from './three-per-string.ts';

/** What may be asked of a fingering. */
export interface FingeringOptions {
  readonly style?: Style;
  /** The fret at which to begin; anywhere where absent. */
  readonly fret?: number;
  readonly reachMm?: number;
  /** The most answers to give. */
  readonly limit?: number;
}

/** Fingerings, or the reason why there are none. */
export interface FingeringAnswer {
  readonly style: Style;
  /** Best first. */
  readonly fingerings: readonly Fingering[];
  /** Why there are none; absent where there are. */
  readonly reason?: string;
  /** The nearest thing that can be played, where there are none. */
  readonly alternative?: { readonly style: Style; readonly fingering: Fingering };
  readonly cautions: readonly string[];
}

interface Asked {
  readonly reachMm: number;
  readonly fret: number | undefined;
  readonly limit: number;
  /** The most octaves that lie under one hand; where a fret was asked for, the fewest frets from there. */
  readonly prefer: AreaSearch['prefer'];
}

interface Found {
  readonly fingerings: readonly Fingering[];
  readonly reason?: string;
}

/** The fingerings of a scale on a neck. */
export function fingeringsOf(neck: Neck, scale: Scale, options: FingeringOptions = {}): FingeringAnswer {
  const style = options.style ?? 'position';
  const asked: Asked = {
    reachMm: options.reachMm ?? DEFAULT_REACH_MM,
    fret: options.fret,
    limit: Math.max(1, options.limit ?? 5),
    prefer: options.fret === undefined ? 'most-octaves' : 'fewest-frets',
  };
  const { fingerings, reason } = findIn(style, neck, scale, asked);
  if (fingerings.length > 0) return { style, fingerings, cautions: cautionsFor(widest(fingerings)) };
  const alternative = nearestPlayable(style, neck, scale, asked);
  return {
    style,
    fingerings,
    reason: missingNotes(neck, scale) ?? reason ?? 'no fingering was found',
    ...(alternative && { alternative }),
    cautions: cautionsFor(alternative?.fingering.reachMm),
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

function findIn(style: Style, neck: Neck, scale: Scale, asked: Asked): Found {
  switch (style) {
    case 'position':
      return inPosition(neck, scale, asked);
    case 'three-per-string':
      return threePerString(neck, scale, asked);
    case 'one-string':
      return oneString(neck, scale, asked);
  }
}

function inPosition(neck: Neck, scale: Scale, { reachMm, fret, limit, prefer }: Asked): Found {
  const fromSlot = fret === undefined ? undefined : slotAtOrAbove(neck, fret);
  const areas = findSharedAreas(neck, [scale], {
    reachMm,
    limit,
    prefer,
    ...(fromSlot !== undefined && { fromSlot }),
  });
  const fingerings = areas.flatMap((area) => area.fingerings);
  const where = fret === undefined ? 'anywhere on this neck' : `in an area that begins at fret ${fret}`;
  return { fingerings, reason: `there is no octave from root to root ${where}` };
}

function threePerString(neck: Neck, scale: Scale, { reachMm, fret, limit }: Asked): Found {
  const obstacle = threePerStringObstacle(neck);
  if (obstacle) return { fingerings: [], reason: obstacle };
  const fromSlot = fret === undefined ? undefined : slotAtOrAbove(neck, fret);
  const tried = startingSlots(neck, scale, fromSlot).map((slot) =>
    threePerStringFrom(neck, scale, slot, reachMm),
  );
  const playable = tried
    .flatMap((one) => (one.kind === 'playable' ? [one] : []))
    .toSorted(
      (a, b) =>
        fretsBeyondTwelfth(a.fingering.area.to) - fretsBeyondTwelfth(b.fingering.area.to) ||
        a.packedCost - b.packedCost,
    );
  return {
    fingerings: playable.slice(0, limit).map(({ fingering }) => fingering),
    reason: whyNot(tried, reachMm),
  };
}

function oneString(neck: Neck, scale: Scale, { reachMm, fret, limit }: Asked): Found {
  const fromSlot = fret === undefined ? 0 : slotAtOrAbove(neck, fret);
  const found = neck.strings
    .toReversed()
    .flatMap((string: NeckString) => alongString(neck, scale, string, reachMm, fromSlot) ?? [])
    .toSorted((a, b) => a.packedCost - b.packedCost);
  return {
    fingerings: found.slice(0, limit).map(({ fingering }) => fingering),
    reason: 'no string has a whole octave of it from root to root',
  };
}

function whyNot(tried: readonly ThreePerString[], reachMm: number): string {
  const tooWide = tried.find((one) => one.kind === 'too-wide');
  if (tooWide?.kind === 'too-wide') {
    return `string ${tooWide.string} asks the hand to cover frets ${tooWide.frets.join(', ')} at once, ${tooWide.spanMm} mm; the reach is ${reachMm} mm`;
  }
  return 'three to a string runs off the neck from there';
}

/** The same style elsewhere, as near as can be, then position from the asked fret, then anywhere, then one string. */
function nearestPlayable(style: Style, neck: Neck, scale: Scale, asked: Asked) {
  const anywhere = { ...asked, fret: undefined };
  const attempts: readonly (readonly [Style, Asked])[] = [
    ['position', asked],
    [style, anywhere],
    ['position', anywhere],
    ['one-string', anywhere],
  ];
  for (const [otherStyle, otherAsked] of attempts) {
    if (otherStyle === style && otherAsked.fret === asked.fret) continue;
    const { fingerings } = findIn(otherStyle, neck, scale, { ...otherAsked, limit: 40 });
    const nearest = nearestTo(fingerings, asked.fret);
    if (nearest) return { style: otherStyle, fingering: nearest };
  }
  return undefined;
}

function nearestTo(fingerings: readonly Fingering[], fret: number | undefined): Fingering | undefined {
  if (fret === undefined) return fingerings[0];
  return fingerings.toSorted((a, b) => Math.abs(a.area.from - fret) - Math.abs(b.area.from - fret))[0];
}

function widest(fingerings: readonly Fingering[]): number {
  return Math.max(...fingerings.map(({ reachMm }) => reachMm));
}

/** The slot of a fret, or of the next one that exists. Fret 0 is the open position, which begins at the capo where there is one. */
export function slotAtOrAbove(neck: Neck, fret: number): number {
  if (fret === 0) return openSlot(neck);
  const slot = neck.slots.findIndex((one) => one.fret >= fret);
  return slot < 0 ? neck.slots.length : slot;
}
