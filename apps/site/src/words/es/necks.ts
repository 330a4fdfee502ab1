/**
 * Mástiles y digitaciones en palabras. Spanish.
 */
import { formatDegree } from '@stillroot/core';
import type * as English from '../en/necks.ts';
import { fretWords } from '../measures.ts';
import { signs } from '../signs.ts';
import { onStrings } from './choices.ts';

/** `Trastes 4 a 8`, or `Cuerdas al aire hasta el traste 4`. */
export const areaWords: typeof English.areaWords = ({ from, to }) =>
  from === 0
    ? `Cuerdas al aire hasta el traste ${fretWords(to)}`
    : `Trastes ${fretWords(from)} a ${fretWords(to)}`;

/** `en una posición, desde el traste 5` */
export const styleFrom: typeof English.styleFrom = (style, fret) => `${style}, ${fromFret(fret)}`;

/** `desde el traste 5` */
export const fromFret: typeof English.fromFret = (fret) =>
  `desde ${fret === 0 ? 'las cuerdas al aire' : `el traste ${fretWords(fret)}`}`;

/** A drawing in words, for those who do not see it: a fingering note by note, else string by string. */
export const neckInWords: typeof English.neckInWords = ({ neck, marks }, scale, fingering) => {
  if (!fingering) {
    const lines = neck.strings.map(({ number, startSlot }) => {
      const places = marks
        .filter(({ string }) => string === number)
        .map(({ slot, degree }) => {
          const note = signs(scale.notes[degree - 1] ?? '');
          return slot === startSlot ? `al aire ${note}` : `${fretWords(neck.slots[slot]?.fret ?? 0)} ${note}`;
        });
      return `Cuerda ${number}: ${places.join(', ')}`;
    });
    return `${lines.join('. ')}.`;
  }
  const notes = fingering.notes.map(({ string, fret, finger, note, degree }) => {
    const where =
      fret === 0 ? `cuerda ${string} al aire` : `cuerda ${string} traste ${fretWords(fret)} dedo ${finger}`;
    const sign = signs(formatDegree(degree, scale.mode.alterations[degree - 1] ?? 0));
    return `${sign} ${signs(note)}: ${where}`;
  });
  return `${neck.strings.length} cuerdas, contadas desde el lado más agudo. ${notes.join('; ')}.`;
};

/** What staff and tablature cannot show, without a full stop. */
export const remarkWords: typeof English.remarkWords = (remark) => {
  if (remark.kind === 'courses')
    return `Órdenes ${signs(remark.courses)}: se escribe la primera cuerda de cada uno`;
  const over = remark.strings ? `, solo ${onStrings(remark.strings)}` : '';
  return `Cejilla en el traste ${fretWords(remark.fret)}${over}`;
};
