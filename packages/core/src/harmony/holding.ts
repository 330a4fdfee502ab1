/**
 * Which scales hold a handful of notes.
 */
import { kindestRootOf, pitchClassesOf, type Scale, spell } from '../mode/spelling.ts';
import { type Mode, UNIVERSE } from '../mode/universe.ts';
import { type NoteName, pitchClassOfNote } from '../pitch/note.ts';
import { commonCount, setOf } from '../pitch/pitch-class-set.ts';
import { ROOTS, type Root } from '../pitch/root.ts';
import { placementSets } from '../relation/shared.ts';

const EVERY_PITCH_CLASS = Array.from({ length: 12 }, (_, pitchClass) => pitchClass);

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
  const held = placementSets().map((set) => commonCount(set, wanted));
  const most = held.reduce((max, count) => Math.max(max, count), 0);
  return UNIVERSE.modes
    .flatMap((mode) => {
      const pitchClasses = EVERY_PITCH_CLASS.filter(
        (pitchClass) => held[mode.index * 12 + pitchClass] === most,
      );
      const welcome = pitchClasses.length > 0 ? preference(mode) : 0;
      return pitchClasses.map((pitchClass) => ({ mode, pitchClass, welcome }));
    })
    .toSorted(
      (a, b) =>
        Number(b.pitchClass === likelyRoot) - Number(a.pitchClass === likelyRoot) || b.welcome - a.welcome,
    )
    .map(({ mode, pitchClass }) => measure(mode, pitchClass, asked, notes));
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
    missing: asked.filter((one) => !pitchClassesOf(scale).includes(one)),
    extra: scale.notes.filter((_, at) => !asked.includes(pitchClassesOf(scale)[at] as number)),
  };
}

/** The root spelled as the asker spelled it, if they named it; otherwise the kindest. */
function rootAsAsked(mode: Mode, pitchClass: number, notes: readonly NoteName[]): Root {
  const named = notes.find((note) => pitchClassOfNote(note) === pitchClass && Math.abs(note.alteration) <= 1);
  return named
    ? (ROOTS[named.letterIndex * 3 + named.alteration + 1] as Root)
    : kindestRootOf(mode, pitchClass);
}
