/**
 * Which scales hold a handful of notes.
 */
import { kindestRootOf, type Scale, spell } from '../mode/spelling.ts';
import type { Mode } from '../mode/universe.ts';
import { type NoteName, pitchClassOfNote } from '../pitch/note.ts';
import { commonCount, setOf } from '../pitch/pitch-class-set.ts';
import { ROOTS, type Root } from '../pitch/root.ts';
import { everyPlacement } from '../relation/shared.ts';

/** A scale measured against the notes that were asked for. */
export interface Holding {
  readonly scale: Scale;
  /** Asked-for pitch classes that the scale lacks. */
  readonly missing: readonly number[];
  /** Notes of the scale that were not asked for. */
  readonly extra: readonly string[];
}

/**
 * The scales that hold the given notes, or, where none holds them all, those that lack the fewest. Fewest
 * missing first, then scales on the first note given, then higher `preference`, then the universe's order.
 * @param notes the notes that must be in the scale; the first is taken as a likely root
 * @param preference how welcome a mode is; higher is better
 */
export function scalesHolding(
  notes: readonly NoteName[],
  preference: (mode: Mode) => number = () => 0,
): readonly Holding[] {
  const asked = [...new Set(notes.map(pitchClassOfNote))];
  const wanted = setOf(asked);
  const [likelyRoot] = asked;
  const counted = everyPlacement().map((placement) => ({
    placement,
    held: commonCount(placement.set, wanted),
  }));
  const most = counted.reduce((max, { held }) => Math.max(max, held), 0);
  return counted
    .filter(({ held }) => held === most)
    .map(({ placement }) => ({ placement, welcome: preference(placement.mode) }))
    .toSorted(
      (a, b) =>
        Number(b.placement.pitchClass === likelyRoot) - Number(a.placement.pitchClass === likelyRoot) ||
        b.welcome - a.welcome,
    )
    .map(({ placement }) => measure(placement.mode, placement.pitchClass, asked, notes));
}

function measure(
  mode: Mode,
  pitchClass: number,
  asked: readonly number[],
  notes: readonly NoteName[],
): Holding {
  const scale = spell(mode, rootAsAsked(mode, pitchClass, notes));
  return {
    scale,
    missing: asked.filter((one) => !scale.pitchClasses.includes(one)),
    extra: scale.notes.filter((_, at) => !asked.includes(scale.pitchClasses[at] as number)),
  };
}

/** The root spelled as the asker spelled it, if they named it; otherwise the kindest. */
function rootAsAsked(mode: Mode, pitchClass: number, notes: readonly NoteName[]): Root {
  const named = notes.find((note) => pitchClassOfNote(note) === pitchClass && Math.abs(note.alteration) <= 1);
  return named
    ? (ROOTS[named.letterIndex * 3 + named.alteration + 1] as Root)
    : kindestRootOf(mode, pitchClass);
}
