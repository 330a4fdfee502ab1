/**
 * The chords on a scale's degrees, as a table.
 */
import type { DegreeChord } from '@stillroot/core';
import { chordName } from '../words/names.ts';
import { PAGES } from '../words/pages.ts';
import { signs } from '../words/signs.ts';

const HEADS = [PAGES.degree, PAGES.triad, PAGES.seventh, PAGES.notes]
  .map((head) => `<th scope="col">${head}</th>`)
  .join('');

/** The table of triads and seventh chords, degree by degree. */
export function chordsHtml(triads: readonly DegreeChord[], sevenths: readonly DegreeChord[]): string {
  const rows = triads.map((triad, at) => {
    const seventh = sevenths[at] ?? triad;
    return `<tr><th scope="row">${triad.degree}</th><td>${named(triad)}</td><td>${named(seventh)}</td><td>${signs(seventh.notes.join(' '))}</td></tr>`;
  });
  return (
    `<div class="table-box" role="region" tabindex="0" aria-label="${PAGES.chords}"><table class="plain">` +
    `<thead><tr>${HEADS}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`
  );
}

function named({ notes, kind }: DegreeChord): string {
  return chordName(notes[0] ?? '', kind);
}
