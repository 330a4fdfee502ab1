/**
 * Necks and fingerings in words. British English.
 */
import type { Fingering, FretRange, Scale } from '@stillroot/core';
import { type NeckDrawing, remarkInWords, type TabRemark } from '@stillroot/notation';
import { fretWords } from '../measures.ts';

/** `Frets 4 to 8`, or `Open strings to fret 4`. */
export function areaWords({ from, to }: FretRange): string {
  return from === 0
    ? `Open strings to fret ${fretWords(to)}`
    : `Frets ${fretWords(from)} to ${fretWords(to)}`;
}

/** `in position, from fret 5` */
export function styleFrom(style: string, fret: number): string {
  return `${style}, ${fromFret(fret)}`;
}

/** `from fret 5` */
export function fromFret(fret: number): string {
  return `from ${fret === 0 ? 'the open strings' : `fret ${fretWords(fret)}`}`;
}

/** A drawing in words, for those who do not see it: as the notation package writes it. */
export function neckInWords(drawing: NeckDrawing, _scale: Scale, _fingering?: Fingering): string {
  return drawing.description;
}

/** What staff and tablature cannot show, without a full stop. */
export function remarkWords(remark: TabRemark): string {
  return remarkInWords(remark);
}
