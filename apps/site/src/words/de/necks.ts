/**
 * Griffbretter und Fingersätze in Worten. German.
 */
import { formatDegree } from '@stillroot/core';
import type * as English from '../en/necks.ts';
import { signs } from '../signs.ts';

/** `Bünde 4 bis 8`, or `Leere Saiten bis Bund 4`. */
export const areaWords: typeof English.areaWords = ({ from, to }) =>
  from === 0 ? `Leere Saiten bis Bund ${to}` : `Bünde ${from} bis ${to}`;

/** `in einer Lage, ab Bund 5` */
export const styleFrom: typeof English.styleFrom = (style, fret) =>
  `${style}, ab ${fret === 0 ? 'den leeren Saiten' : `Bund ${fret}`}`;

/** A drawing in words, for those who do not see it: a fingering note by note, else string by string. */
export const neckInWords: typeof English.neckInWords = ({ neck, marks }, scale, fingering) => {
  if (!fingering) {
    const lines = neck.strings.map(({ number, startSlot }) => {
      const places = marks
        .filter(({ string }) => string === number)
        .map(({ slot, degree }) => {
          const note = signs(scale.notes[degree - 1] ?? '');
          return slot === startSlot ? `leer ${note}` : `${neck.slots[slot]?.fret} ${note}`;
        });
      return `Saite ${number}: ${places.join(', ')}`;
    });
    return `${lines.join('. ')}.`;
  }
  const notes = fingering.notes.map(({ string, fret, finger, note, degree }) => {
    const where = fret === 0 ? `Saite ${string} leer` : `Saite ${string} Bund ${fret} Finger ${finger}`;
    const sign = signs(formatDegree(degree, scale.mode.alterations[degree - 1] ?? 0));
    return `${sign} ${signs(note)}: ${where}`;
  });
  return `${neck.strings.length} Saiten, von der am höchsten klingenden Seite gezählt. ${notes.join('; ')}.`;
};

const WIDE = /^The hand opens (\d+) mm here.* reaches (\d+) mm\./;

/** A caution of core's in German; one that is not known stays as it is. */
export const cautionWords: typeof English.cautionWords = (caution) => {
  const [, opening, reach] = WIDE.exec(caution) ?? [];
  if (opening !== undefined)
    return `Die Hand öffnet sich hier auf ${opening} mm; das ist weit für eine Hand, die ${reach} mm reicht. Beginne höher auf dem Griffbrett, nimm einen Kapodaster oder lass die Hand wandern, und halte oder wiederhole die Dehnung nicht lange; eine Lehrkraft kann zeigen, was deiner Hand entspricht.`;
  if (caution.startsWith('General information only'))
    return 'Nur allgemeine Hinweise: Wärme dich auf, steigere Dauer und Tempo schrittweise und mache oft Pausen. Höre auf, wenn Schmerzen, Taubheit oder Kribbeln auftreten, und suche ärztlichen Rat; in Fragen der Technik hilft eine ausgebildete Lehrkraft.';
  return caution;
};
