/**
 * Griffbretter und Fingersätze in Worten. German.
 */
import { formatDegree } from '@stillroot/core';
import type * as English from '../en/necks.ts';
import { fretWords } from '../measures.ts';
import { signs } from '../signs.ts';
import { onStrings } from './choices.ts';

/** `Bünde 4 bis 8`, or `Leere Saiten bis Bund 4`. */
export const areaWords: typeof English.areaWords = ({ from, to }) =>
  from === 0 ? `Leere Saiten bis Bund ${fretWords(to)}` : `Bünde ${fretWords(from)} bis ${fretWords(to)}`;

/** `in einer Lage, ab Bund 5` */
export const styleFrom: typeof English.styleFrom = (style, fret) => `${style}, ${fromFret(fret)}`;

/** `ab Bund 5` */
export const fromFret: typeof English.fromFret = (fret) =>
  `ab ${fret === 0 ? 'den leeren Saiten' : `Bund ${fretWords(fret)}`}`;

/** A drawing in words, for those who do not see it: a fingering note by note, else string by string. */
export const neckInWords: typeof English.neckInWords = ({ neck, marks }, scale, fingering) => {
  if (!fingering) {
    const lines = neck.strings.map(({ number, startSlot }) => {
      const places = marks
        .filter(({ string }) => string === number)
        .map(({ slot, degree }) => {
          const note = signs(scale.notes[degree - 1] ?? '');
          return slot === startSlot ? `leer ${note}` : `${fretWords(neck.slots[slot]?.fret ?? 0)} ${note}`;
        });
      return `Saite ${number}: ${places.join(', ')}`;
    });
    return `${lines.join('. ')}.`;
  }
  const notes = fingering.notes.map(({ string, fret, finger, note, degree }) => {
    const where =
      fret === 0 ? `Saite ${string} leer` : `Saite ${string} Bund ${fretWords(fret)} Finger ${finger}`;
    const sign = signs(formatDegree(degree, scale.mode.alterations[degree - 1] ?? 0));
    return `${sign} ${signs(note)}: ${where}`;
  });
  return `${neck.strings.length} Saiten, von der am höchsten klingenden Seite gezählt. ${notes.join('; ')}.`;
};

/** What staff and tablature cannot show, without a full stop. */
export const remarkWords: typeof English.remarkWords = (remark) => {
  if (remark.kind === 'courses') return `Chöre ${signs(remark.courses)}: Notiert ist jeweils die erste Saite`;
  const over = remark.strings ? `, nur ${onStrings(remark.strings)}` : '';
  return `Kapodaster am Bund ${fretWords(remark.fret)}${over}`;
};
