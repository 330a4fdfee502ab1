/**
 * Fingerings: the ways to play a scale on a neck in a given style, best first; and where there is none,
 * the reason and the nearest thing that can be played.
 */
import type { FretSlot, Neck } from '../instrument/neck.ts';
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import type { AreaShift } from './across-neck.ts';
import type { OpenStrings } from './area.ts';
import { type Caution, cautionsFor } from './cautions.ts';
import type { Fingering, Style } from './fingering.ts';
import { DEFAULT_REACH_MM } from './hand.ts';
import type { Reason } from './reason.ts';
import { type Asked, findIn } from './styles.ts';
import type { BeyondReach } from './three-per-string.ts';

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
  readonly reason?: Reason;
  /** Strings on which the hand would have to open wider than it can, where that is why. */
  readonly beyondReach?: readonly BeyondReach[];
  /** The nearest thing that can be played, where there are none. */
  readonly alternative?: Alternative;
  readonly cautions: readonly Caution[];
}

/** Something else that can be played. */
export interface Alternative {
  readonly style: Style;
  /** The fret at which to begin; absent where it is found only anywhere. */
  readonly fret?: number;
  readonly fingering: Fingering;
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
  const missing = missingNotes(neck, scale);
  const why = missing ?? beyondTheNeck(neck, asked.fret) ?? reason;
  const alternative = missing ? undefined : nearestPlayable(style, neck, scale, asked);
  return {
    style,
    fingerings,
    ...(why && { reason: why }),
    ...(beyondReach && { beyondReach }),
    ...(alternative && { alternative }),
    cautions: cautionsFor(alternative?.fingering.reachMm, asked.reachMm),
  };
}

/** Says which notes of a scale a neck does not have, or undefined where it has them all. */
export function missingNotes(neck: Neck, scale: Scale): Reason | undefined {
  const notes = scale.notes.filter((_, at) => !neck.pitchClasses.has(pitchClassesOf(scale)[at] as number));
  return notes.length > 0 ? { kind: 'notes-missing', notes } : undefined;
}

/** Says that a neck ends below a fret, or undefined where it does not, or no fret was asked for. */
function beyondTheNeck(neck: Neck, fret: number | undefined): Reason | undefined {
  const lastFret = (neck.slots.at(-1) as FretSlot).fret;
  return fret !== undefined && fret > lastFret ? { kind: 'beyond-the-neck', fret, lastFret } : undefined;
}

/** In position from the asked fret, then the same style as near to it as can be, then position, then one string. */
function nearestPlayable(style: Style, neck: Neck, scale: Scale, asked: Asked): Alternative | undefined {
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
      if (fingering) return { style: otherStyle, ...(place !== undefined && { fret: place }), fingering };
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
