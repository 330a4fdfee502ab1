/**
 * Places in a piece: the note at a tick, and where seeking leads.
 */
import type { Piece, PlayedNote, Section } from '@stillroot/core';

/** Where seeking can lead. */
export type Seek = 'note-back' | 'note-on' | 'mode-back' | 'mode-on' | 'start';

/** The place in `piece.notes` of the note that has last begun at a tick; −1 before the first. */
export function noteAt({ notes }: Piece, ticks: number): number {
  let from = 0;
  let to = notes.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((notes[middle] as PlayedNote).startTicks <= ticks) from = middle + 1;
    else to = middle;
  }
  return from - 1;
}

/** The place in `piece.sections` of the section in which a tick lies; the first before it begins. */
export function sectionAt({ sections }: Piece, ticks: number): number {
  return Math.max(
    0,
    sections.findLastIndex(({ startTicks }) => startTicks <= ticks),
  );
}

/** The tick that seeking leads to; from the last note on to the first, and back. */
export function seekFrom(piece: Piece, ticks: number, seek: Seek): number {
  const { notes, sections } = piece;
  const note = Math.max(0, noteAt(piece, ticks));
  const section = sectionAt(piece, ticks);
  const start = (sections[section] as Section).startTicks;
  switch (seek) {
    case 'note-back':
      return (notes.at(note - 1) as PlayedNote).startTicks;
    case 'note-on':
      return (notes[(note + 1) % notes.length] as PlayedNote).startTicks;
    case 'mode-back':
      return (notes[note] as PlayedNote).startTicks > start
        ? start
        : (sections.at(section - 1) as Section).startTicks;
    case 'mode-on':
      return (sections[(section + 1) % sections.length] as Section).startTicks;
    case 'start':
      return (sections[0] as Section).startTicks;
  }
}
