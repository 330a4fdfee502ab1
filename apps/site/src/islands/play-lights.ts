/**
 * Lights on the necks: the mark of the note that sounds.
 */
import { type Neck, type PlayedNote, placesOn } from '@stillroot/core';
import type { Drawn } from './play-material.ts';

const CLASS = 'sounding';

/** The marks of a page's necks, by what is played there. */
export class Lights {
  private readonly marks = new Map<string, Element[]>();
  private lit: readonly Element[] = [];

  constructor(page: ParentNode, neck: Neck, drawn: readonly Drawn[]) {
    for (const one of drawn) this.find(page, neck, one);
  }

  /** Lights a note, and no other. */
  show(note: PlayedNote | undefined): void {
    const marks = note ? (this.marks.get(keyOf(note.modeIndex, note.string, note.fret)) ?? []) : [];
    if (marks === this.lit) return;
    for (const mark of this.lit) mark.classList.remove(CLASS);
    for (const mark of marks) mark.classList.add(CLASS);
    this.lit = marks;
  }

  /** The picture on which a mode of the round lies. */
  pictureOf(note: PlayedNote): Element | undefined {
    const [mark] = this.marks.get(keyOf(note.modeIndex, note.string, note.fret)) ?? [];
    return mark?.closest('svg') ?? undefined;
  }

  /** Marks are drawn in the order of the places that they stand for. */
  private find(page: ParentNode, neck: Neck, { idPrefix, scale, area, modeIndex }: Drawn): void {
    const svg = page.querySelector(`svg.neck[aria-labelledby^="${idPrefix}-t"]`);
    const marks = svg?.querySelectorAll('.mark') ?? [];
    const places = placesOn(neck, scale).filter(
      ({ fret }) => area === undefined || (fret >= area.from && fret <= area.to),
    );
    if (marks.length !== places.length) return;
    for (const [at, { string, fret }] of places.entries()) {
      const key = keyOf(modeIndex, string, fret);
      const mark = marks[at];
      if (mark) this.marks.set(key, [...(this.marks.get(key) ?? []), mark]);
    }
  }
}

function keyOf(modeIndex: number, string: number, fret: number): string {
  return `${modeIndex} ${string} ${fret}`;
}
