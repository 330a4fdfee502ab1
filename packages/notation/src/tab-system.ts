/**
 * Tablature in text: rows of strings with string 1 on top, and columns that follow one another in time,
 * wrapped at 80 columns. Frets are counted as the neck's inlays count them, 0 for an open string. Everything
 * is ASCII, so that it lines up in any monospaced font.
 */
import type { FingeredNote, Neck, NeckString } from '@stillroot/core';

/** Width of a line. */
const LINE_WIDTH = 80;

/** What stands in one column: a note, a stretch in which nothing is struck, or a bar line. */
export type TabColumn =
  | { readonly kind: 'note'; readonly note: FingeredNote; readonly beat?: string }
  | { readonly kind: 'nothing' }
  | { readonly kind: 'bar-line' };

/**
 * Systems of tablature, a blank line between two. Under the strings stand a line of fingers and a line of
 * notes; over them the beats on which notes begin, where columns name any. A system ends with a bar where
 * one fits.
 */
export function tabSystems(neck: Neck, columns: readonly TabColumn[]): string {
  const cells = columns.map((column) => cellOf(neck, column));
  const hasBeats = columns.some((column) => column.kind === 'note' && column.beat !== undefined);
  const label = labelWidth(neck);
  const indent = ' '.repeat(label + 2);
  const systems = wrap(cells, LINE_WIDTH - label - 3).map((shown) => {
    const line = (textOf: (cell: Cell) => string): string =>
      `${indent}${shown.map((cell) => textOf(cell).padEnd(cell.width)).join('')}`.trimEnd();
    const strings = neck.strings.map(
      (string, at) => `${openLabel(neck, string)}|-${shown.map(({ rows }) => rows[at]).join('')}|`,
    );
    const beats = hasBeats ? [line(({ beat }) => beat)] : [];
    return [...beats, ...strings, line(({ finger }) => finger), line(({ note }) => note)].join('\n');
  });
  return systems.join('\n\n');
}

/** What an open string is called, as wide as the widest. */
export function openLabel(neck: Neck, string: NeckString): string {
  return openName(neck, string).padEnd(labelWidth(neck));
}

/** How wide the names of open strings are. */
export function labelWidth(neck: Neck): number {
  return Math.max(...neck.strings.map((string) => openName(neck, string).length));
}

/** A column as text. */
interface Cell {
  readonly width: number;
  /** One a string, as wide as the column. */
  readonly rows: readonly string[];
  readonly beat: string;
  readonly finger: string;
  readonly note: string;
  readonly isBarLine: boolean;
}

function cellOf(neck: Neck, column: TabColumn): Cell {
  if (column.kind !== 'note') {
    const isBarLine = column.kind === 'bar-line';
    const rows = neck.strings.map(() => (isBarLine ? '|-' : '--'));
    return { width: 2, rows, beat: '', finger: '', note: '', isBarLine };
  }
  const { note, beat = '' } = column;
  const fret = String(note.fret);
  const width = Math.max(fret.length, note.note.length, beat.length) + 1;
  const rows = neck.strings.map(({ number }) => (number === note.string ? fret : '').padEnd(width, '-'));
  return { width, rows, beat, finger: String(note.finger), note: note.note, isBarLine: false };
}

/** Cells line by line. A bar line at an end of a line is left out: one stands there anyway. */
function wrap(cells: readonly Cell[], most: number): readonly (readonly Cell[])[] {
  const lines: (readonly Cell[])[] = [];
  for (let from = 0; from < cells.length; ) {
    if (cells[from]?.isBarLine) {
      from += 1;
      continue;
    }
    let to = from;
    let lastBarLine = 0;
    for (let used = 0; to < cells.length; to += 1) {
      const { width, isBarLine } = cells[to] as Cell;
      if (isBarLine) lastBarLine = to;
      used += width;
      if (used > most && !isBarLine) break;
    }
    if (to < cells.length && lastBarLine > 0) to = lastBarLine;
    const line = cells.slice(from, to);
    lines.push(line.at(-1)?.isBarLine ? line.slice(0, -1) : line);
    from = to;
  }
  return lines;
}

function openName(neck: Neck, { number }: NeckString): string {
  return neck.tuning.courses[neck.strings.length - number]?.[0].name ?? '';
}
