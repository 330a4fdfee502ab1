/**
 * A scale degree by degree, as a table.
 */
import { needsReadable, type Scale } from '@stillroot/core';
import { PAGES } from '../words/pages.ts';
import { signs } from '../words/signs.ts';
import { glyph } from './glyph.ts';

/** The table of a scale: degrees, notes, semitones and steps; a second line of notes where one is easier to read. */
export function formulaHtml(scale: Scale): string {
  const { mode, notes, readable } = scale;
  const noteRows = needsReadable(scale)
    ? row(PAGES.strictNotes, notes.map(signs)) + row(PAGES.readableNotes, readable.map(signs), true)
    : row(PAGES.notes, notes.map(signs), true);
  const rows = [
    row(PAGES.degrees, mode.formula.map(degreeCell)),
    noteRows,
    row(PAGES.semitones, mode.semitones),
    row(PAGES.stepsUp, mode.steps),
  ];
  return `<div class="table-box"><table class="formula"><tbody>${rows.join('')}</tbody></table></div>`;

  function degreeCell(degree: string, at: number): string {
    return `${glyph(at + 1, mode.alterations[at] ?? 0)}<span class="unseen">${signs(degree)}</span>`;
  }
}

function row(name: string, cells: readonly (string | number)[], isBig = false): string {
  const kind = isBig ? ' class="big"' : '';
  return `<tr${kind}><th scope="row">${name}</th>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`;
}
