/**
 * Necks and fingerings as plain text that lines up in any monospaced font. Tablature has string 1 on top
 * and counts frets as the neck's inlays do, 0 for an open string.
 */
import { type Fingering, type Neck, type NeckString, placesOn, type Scale } from '@stillroot/core';

/** Width of a line of tablature. */
const LINE_WIDTH = 80;

/** Every note of a scale on a neck: a row a string, a column a fret. */
export function fretboardText(neck: Neck, scale: Scale): string {
  const places = placesOn(neck, scale);
  const frets = neck.slots.map(({ fret }) => String(fret));
  const width = Math.max(...frets.map(({ length }) => length), ...places.map(({ note }) => note.length)) + 1;
  const rows = neck.strings.map((string) => {
    const cells = neck.slots.map((_, slot) => {
      const place = places.find((one) => one.string === string.number && one.slot === slot);
      const filler = slot < string.startSlot ? ' ' : '-';
      return (place?.note ?? '').padEnd(width, filler);
    });
    return `${openLabel(neck, string)}|${cells.join('|')}|`;
  });
  const head =
    `${' '.repeat(labelWidth(neck))} ${frets.map((fret) => fret.padEnd(width)).join(' ')}`.trimEnd();
  return [head, ...rows].join('\n');
}

/** A fingering as tablature, with a line of fingers and a line of notes under it, wrapped at 80 columns. */
export function fingeringText(neck: Neck, fingering: Fingering): string {
  const columns = fingering.notes.map((note) => {
    const width = Math.max(String(note.fret).length, note.note.length, 1) + 1;
    const rows = neck.strings.map(({ number }) =>
      (number === note.string ? String(note.fret) : '').padEnd(width, '-'),
    );
    return { width, rows, finger: String(note.finger).padEnd(width), note: note.note.padEnd(width) };
  });
  const label = labelWidth(neck);
  const systems: string[] = [];
  for (let from = 0; from < columns.length; ) {
    let to = from;
    let used = label + 3;
    while (to < columns.length && used + (columns[to]?.width as number) <= LINE_WIDTH) {
      used += columns[to]?.width as number;
      to += 1;
    }
    const shown = columns.slice(from, to);
    const lines = neck.strings.map(
      (string, at) => `${openLabel(neck, string)}|-${shown.map(({ rows }) => rows[at]).join('')}|`,
    );
    const indent = ' '.repeat(label + 2);
    const fingers = `${indent}${shown.map(({ finger }) => finger).join('')}`.trimEnd();
    const notes = `${indent}${shown.map(({ note }) => note).join('')}`.trimEnd();
    systems.push([...lines, fingers, notes].join('\n'));
    from = to;
  }
  return systems.join('\n\n');
}

/** Where a fingering lies, in one line. */
export function fingeringSummary(fingering: Fingering): string {
  const { area, reachMm, cost } = fingering;
  const moves = cost.travelMm === 0 ? 'the hand stays' : `the hand travels ${cost.travelMm} mm`;
  return `frets ${area.from} to ${area.to}, hand opens ${reachMm} mm, ${moves}`;
}

function openLabel(neck: Neck, string: NeckString): string {
  return openName(neck, string).padEnd(labelWidth(neck));
}

function openName(neck: Neck, { number }: NeckString): string {
  return neck.tuning.courses[neck.strings.length - number]?.[0].name ?? '';
}

function labelWidth(neck: Neck): number {
  return Math.max(...neck.strings.map((string) => openName(neck, string).length));
}
