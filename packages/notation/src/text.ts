/**
 * Necks and fingerings as plain text that lines up in any monospaced font. Tablature has string 1 on top
 * and counts frets as the neck's inlays do, 0 for an open string. A fretboard is a picture of a neck, so it may
 * be mirrored for a left-handed player; tablature runs on in time, from left to right for everyone.
 */
import { type Fingering, type Neck, placesOn, type Scale } from '@stillroot/core';
import type { Handedness } from './neck-svg.ts';
import { labelWidth, openLabel, tabSystems } from './tab-system.ts';

/** How a fretboard is written. */
export interface FretboardTextOptions {
  /** For whom; right-handed, with the nut on the left, where absent. */
  readonly handedness?: Handedness;
}

/** Every note of a scale on a neck: a row a string, a column a fret. */
export function fretboardText(
  neck: Neck,
  scale: Scale,
  { handedness = 'right' }: FretboardTextOptions = {},
): string {
  const places = placesOn(neck, scale);
  const frets = neck.slots.map(({ fret }) => String(fret));
  const width = Math.max(...frets.map(({ length }) => length), ...places.map(({ note }) => note.length)) + 1;
  const lay = (cells: readonly string[], label: string, filler: readonly string[], wall: string): string =>
    handedness === 'right'
      ? [label, ...cells.map((cell, slot) => cell.padEnd(width, filler[slot])), ''].join(wall)
      : ['', ...cells.map((cell, slot) => cell.padStart(width, filler[slot])).toReversed(), label].join(wall);
  const rows = neck.strings.map((string) => {
    const cells = neck.slots.map((_, slot) => {
      return places.find((one) => one.string === string.number && one.slot === slot)?.note ?? '';
    });
    const filler = neck.slots.map((_, slot) => (slot < string.startSlot ? ' ' : '-'));
    return lay(cells, openLabel(neck, string), filler, '|');
  });
  const blank = ' '.repeat(labelWidth(neck));
  return [lay(frets, blank, [], ' '), ...rows].map((line) => line.trimEnd()).join('\n');
}

/** A fingering as tablature, with a line of fingers and a line of notes under it, wrapped at 80 columns. */
export function fingeringText(neck: Neck, fingering: Fingering): string {
  return tabSystems(
    neck,
    fingering.notes.map((note) => ({ kind: 'note', note })),
  );
}

/** Where a fingering lies, in one line. */
export function fingeringSummary(fingering: Fingering): string {
  const { area, reachMm, cost } = fingering;
  const moves = cost.travelMm === 0 ? 'the hand stays' : `the hand travels ${cost.travelMm} mm`;
  return `frets ${area.from} to ${area.to}, hand opens ${reachMm} mm, ${moves}`;
}
