/**
 * Bars as they are written: notes cut at bar lines and tied, each part a value that a single sign stands
 * for; triplets gathered under their brackets; rests to the end of the bar.
 */
import {
  isTriplet,
  type Piece,
  type PlayedNote,
  type Section,
  TICKS_PER_QUARTER,
  ticksOf,
} from '@stillroot/core';

/** A note or a rest that one sign stands for. */
export interface WrittenSign {
  /** Absent for a rest. */
  readonly note?: PlayedNote;
  readonly startTicks: number;
  readonly durationTicks: number;
  /** A quarter is 1, an eighth ½: without its dot, and before three go in the time of two. */
  readonly quarters: number;
  readonly isDotted: boolean;
  readonly isTriplet: boolean;
  /** Whether it begins or ends the bracket of its triplet. */
  readonly beginsBracket: boolean;
  readonly endsBracket: boolean;
  /** Whether it goes on from the sign before it, and goes on in the next. */
  readonly isTiedBack: boolean;
  readonly isTiedOn: boolean;
}

/** A bar. */
export interface WrittenBar {
  readonly startTicks: number;
  /** Empty where the bar is all rest. */
  readonly signs: readonly WrittenSign[];
  /** The section that begins with it, if one does. */
  readonly begins?: Section;
  /** Whether its section ends with it. */
  readonly endsSection: boolean;
}

interface Value {
  readonly ticks: number;
  readonly quarters: number;
  readonly isDotted: boolean;
}

/** The values that one sign stands for, from a dotted whole note to a 64th. */
const VALUES: readonly Value[] = [4, 2, 1, 1 / 2, 1 / 4, 1 / 8, 1 / 16].flatMap((quarters) => [
  { ticks: quarters * TICKS_PER_QUARTER * 1.5, quarters, isDotted: true },
  { ticks: quarters * TICKS_PER_QUARTER, quarters, isDotted: false },
]);

/** Bar lines lie at sixteenths, so that a triplet is complete where it comes to some of these. */
const BAR_GRID_TICKS = TICKS_PER_QUARTER / 4;

/** All bars of a piece, its count-in left out. */
export function writtenBars(piece: Piece): readonly WrittenBar[] {
  const { ticksPerBar } = piece.timing;
  const bars: WrittenBar[] = [];
  let next = 0;
  for (const section of piece.sections) {
    for (let bar = section.startTicks; bar < section.endTicks; bar += ticksPerBar) {
      const end = bar + ticksPerBar;
      const held: PlayedNote[] = [];
      // The note that lasts into this bar is looked at again.
      while (piece.notes[next] !== undefined && (piece.notes[next] as PlayedNote).startTicks < end) {
        const note = piece.notes[next] as PlayedNote;
        if (note.startTicks + note.durationTicks > bar) held.push(note);
        if (note.startTicks + note.durationTicks > end) break;
        next += 1;
      }
      bars.push({
        startTicks: bar,
        signs: held.length === 0 ? [] : fillBar(piece, held, bar, end),
        ...(bar === section.startTicks && { begins: section }),
        endsSection: end >= section.endTicks,
      });
    }
  }
  return bars;
}

function fillBar(
  piece: Piece,
  held: readonly PlayedNote[],
  bar: number,
  end: number,
): readonly WrittenSign[] {
  const inThrees = isTriplet(piece.noteValue);
  const signs: WrittenSign[] = [];
  const add = (startTicks: number, until: number, asTriplet: boolean, note?: PlayedNote): void => {
    let at = startTicks;
    for (const part of partsOf(until - startTicks, asTriplet)) {
      signs.push(signOf(at - bar, part, asTriplet, bar, note));
      at += part.durationTicks;
    }
  };
  let at = bar;
  for (const note of held) {
    const until = Math.min(note.startTicks + note.durationTicks, end);
    add(at, until, inThrees, note);
    at = until;
  }
  const tripletEnd = inThrees ? endOfTriplet(signs, at, bar, end, 3 * ticksOf(piece.noteValue)) : at;
  add(at, tripletEnd, true);
  for (const part of restParts(tripletEnd - bar, end - bar)) {
    signs.push(signOf(part.startTicks, part, false, bar));
  }
  return signs;
}

/** A value that one sign stands for. */
interface Part {
  readonly durationTicks: number;
  readonly quarters: number;
  readonly isDotted: boolean;
}

function signOf(offset: number, part: Part, asTriplet: boolean, bar: number, note?: PlayedNote): WrittenSign {
  const startTicks = bar + offset;
  const endOffset = offset + part.durationTicks;
  return {
    ...part,
    startTicks,
    isTriplet: asTriplet,
    beginsBracket: asTriplet && offset % BAR_GRID_TICKS === 0,
    endsBracket: asTriplet && endOffset % BAR_GRID_TICKS === 0,
    ...(note && { note }),
    isTiedBack: note !== undefined && startTicks > note.startTicks,
    isTiedOn: note !== undefined && bar + endOffset < note.startTicks + note.durationTicks,
  };
}

/** A length as values that are written one after another, the longest first. */
function partsOf(ticks: number, asTriplet: boolean): readonly Part[] {
  const shrink = asTriplet ? 2 / 3 : 1;
  const parts: Part[] = [];
  let left = ticks;
  for (const value of VALUES) {
    const durationTicks = value.ticks * shrink;
    while (left >= durationTicks) {
      parts.push({ durationTicks, quarters: value.quarters, isDotted: value.isDotted });
      left -= durationTicks;
    }
  }
  return parts;
}

/** Rests from a place in the bar to another, each beginning at a multiple of its own length. */
function restParts(from: number, to: number): readonly (Part & { readonly startTicks: number })[] {
  const parts: (Part & { readonly startTicks: number })[] = [];
  for (let at = from; at < to; ) {
    const value = VALUES.find(
      ({ ticks, isDotted }) => !isDotted && at % ticks === 0 && at + ticks <= to,
    ) as Value;
    parts.push({ ...value, startTicks: at, durationTicks: value.ticks });
    at += value.ticks;
  }
  return parts;
}

/** Where a triplet that has begun is complete: with its third value, or, where a bar line has cut it, soon after. */
function endOfTriplet(
  signs: readonly WrittenSign[],
  at: number,
  bar: number,
  end: number,
  tripletTicks: number,
): number {
  if ((at - bar) % BAR_GRID_TICKS === 0) return at;
  const begun = signs.findLast(({ beginsBracket }) => beginsBracket)?.startTicks ?? bar;
  const whole = begun + tripletTicks;
  const next = bar + Math.ceil((at - bar) / BAR_GRID_TICKS) * BAR_GRID_TICKS;
  return Math.min(whole > at ? whole : next, end);
}
