/**
 * Where things lie in a neck drawing, right-handed: string 1 on top, the nut on the left, frets at their true
 * distances. Strings are drawn side by side, so that fanned frets, whose strings have lengths of their own, are
 * slanted lines. They are square to the strings at the seventh fret (common practice, no source): which fret
 * that is, is the maker's choice, and changes no distance along a string.
 */
import { type FretSlot, type Neck, type NeckString, openSlot, stringFretDistanceMm } from '@stillroot/core';
import type { NeckDrawing } from './drawing.ts';

/** Where slots and strings lie, in drawing units. */
export interface Ruler {
  /** The height of a string. */
  readonly y: (string: number) => number;
  /** Where the line of a slot's fret is at a height. */
  readonly lineX: (slot: number, y: number) => number;
  /** The middle, at a height, of the space in which a slot is stopped. */
  readonly middleX: (slot: number, y: number) => number;
  /** Where a note of a string is marked: an open one at its nut, its capo or its own start. */
  readonly placeX: (string: number, slot: number) => number;
  /** The slot of the leftmost line: the nut or capo, or the fret below the first space. */
  readonly firstSlot: number;
  readonly lastSlot: number;
  /** How far right any line goes. */
  readonly right: number;
}

/** The height of string 1. */
export const TOP = 22;
/** How far frets go beyond the outer strings. */
export const FRET_OVERHANG = 13;

const STRING_GAP = 31;
const OPEN_COLUMN = 62;
/** How far left of the nut open notes are marked. */
const OPEN_OFFSET = 20;
/** The room that the narrowest fret should have. */
const NARROWEST_FRET = 34;
/** The room that it has in any case: two marks side by side do not overlap. */
const NARROWEST_MARKS = 28;
/** The widest that a fret should be drawn for the sake of the narrowest. */
const WIDEST_FRET = 110;
const LEAST_UNITS_PER_MM = 0.9;
/** The fret at which fanned frets are square to the strings. */
const SQUARE_AT: Pick<FretSlot, 'semitones'> = { semitones: 7 };

/** The ruler of a drawing. */
export function rulerOf({ neck, fromSlot, toSlot }: NeckDrawing): Ruler {
  const firstSlot = fromSlot === 0 || fromSlot === openSlot(neck) ? fromSlot : fromSlot - 1;
  const y = (string: number): number => TOP + (string - 1) * STRING_GAP;
  const count = neck.strings.length;
  const [treble, bass] = [neck.strings[0] as NeckString, neck.strings[count - 1] as NeckString];
  const unitsPerMm = scaleOf(neck, [treble, bass], firstSlot, toSlot);
  // Every mark asks for the lines beside it, so each is found once.
  const [trebleMm, bassMm] = [squareMm(neck, treble), squareMm(neck, bass)];
  const leftMm = Math.min(trebleMm[firstSlot] as number, bassMm[firstSlot] as number);
  const toUnits = (mm: number): number => OPEN_COLUMN + (mm - leftMm) * unitsPerMm;
  const [onTreble, onBass] = [trebleMm.map(toUnits), bassMm.map(toUnits)];
  const lineX = (slot: number, at: number): number => {
    const towardsBass = count > 1 ? (at - TOP) / (y(count) - TOP) : 0;
    return (onTreble[slot] as number) * (1 - towardsBass) + (onBass[slot] as number) * towardsBass;
  };
  const middleX = (slot: number, at: number): number =>
    slot <= firstSlot ? lineX(firstSlot, at) - OPEN_OFFSET : (lineX(slot - 1, at) + lineX(slot, at)) / 2;
  return {
    y,
    lineX,
    middleX,
    placeX: (string, slot) => {
      const isOpen = slot === neck.strings[string - 1]?.startSlot;
      if (!isOpen) return middleX(slot, y(string));
      return slot > firstSlot && slot <= toSlot ? lineX(slot, y(string)) : middleX(firstSlot, y(string));
    },
    firstSlot,
    lastSlot: toSlot,
    right: Math.max(onTreble[toSlot] as number, onBass[toSlot] as number),
  };
}

/** How far each fret of a string lies from where all strings are square to their frets. */
function squareMm(neck: Neck, string: NeckString): readonly number[] {
  const square = stringFretDistanceMm(string, SQUARE_AT);
  return neck.slots.map((slot) => stringFretDistanceMm(string, slot) - square);
}

/** Drawing units in a millimetre: the narrowest fret has its room unless that makes the widest too wide. */
function scaleOf(neck: Neck, outer: readonly NeckString[], firstSlot: number, toSlot: number): number {
  const spacesMm = outer.flatMap((string) => {
    const distancesMm = neck.slots
      .slice(firstSlot, toSlot + 1)
      .map((slot) => stringFretDistanceMm(string, slot));
    return distancesMm.slice(1).map((mm, at) => mm - (distancesMm[at] as number));
  });
  const [narrowestMm, widestMm] = [Math.min(...spacesMm), Math.max(...spacesMm)];
  const most = Math.max(WIDEST_FRET / widestMm, NARROWEST_MARKS / narrowestMm);
  return Math.max(LEAST_UNITS_PER_MM, Math.min(NARROWEST_FRET / narrowestMm, most));
}
