/**
 * What stands between and under the notes of a system: ties, and fingers.
 */
import { type StaveNote, StaveTie, type SVGContext } from 'vexflow/core';
import type { BarNotes } from './play-score-notes.ts';
import type { ScoreBar, ScoreSign } from './play-score-read.ts';

/** Ties from note to note, and to or from the edge of the system. */
export function drawTies(
  context: SVGContext,
  signs: readonly ScoreSign[],
  notes: readonly StaveNote[],
): void {
  for (const [at, sign] of signs.entries()) {
    const note = notes[at];
    if (!note) continue;
    const isOverEdge = at === 0 && sign.isTiedBack;
    if (isOverEdge) tie(context, undefined, note);
    if (sign.isTiedOn) tie(context, note, notes[at + 1]);
  }
}

function tie(context: SVGContext, firstNote: StaveNote | undefined, lastNote: StaveNote | undefined): void {
  new StaveTie({
    ...(firstNote && { firstNote }),
    ...(lastNote && { lastNote }),
    firstIndexes: [0],
    lastIndexes: [0],
  })
    .setContext(context)
    .drawWithStyle();
}

/** The fingers in a line under the tablature, each where its note is struck. */
export function drawFingers(
  context: SVGContext,
  bars: readonly ScoreBar[],
  set: readonly BarNotes[],
  y: number,
): void {
  context.save();
  context.setFont('ui-sans-serif, system-ui, sans-serif', 8.5, 'normal', 'normal');
  for (const [at, { staff }] of set.entries()) {
    for (const [index, note] of staff.entries()) {
      const finger = bars[at]?.staff[index]?.finger;
      if (finger !== undefined) context.fillText(finger, middleOf(note) - 2.5, y);
    }
  }
  context.restore();
}

/** The middle of a head, from the left edge of its system. */
export function middleOf(note: StaveNote): number {
  return (note.getNoteHeadBeginX() + note.getNoteHeadEndX()) / 2;
}
