/**
 * Mástiles y digitaciones en palabras. Spanish.
 */
import { formatDegree } from '@stillroot/core';
import type * as English from '../en/necks.ts';
import { signs } from '../signs.ts';

/** `Trastes 4 a 8`, or `Cuerdas al aire hasta el traste 4`. */
export const areaWords: typeof English.areaWords = ({ from, to }) =>
  from === 0 ? `Cuerdas al aire hasta el traste ${to}` : `Trastes ${from} a ${to}`;

/** `en una posición, desde el traste 5` */
export const styleFrom: typeof English.styleFrom = (style, fret) =>
  `${style}, desde ${fret === 0 ? 'las cuerdas al aire' : `el traste ${fret}`}`;

/** A drawing in words, for those who do not see it: a fingering note by note, else string by string. */
export const neckInWords: typeof English.neckInWords = ({ neck, marks }, scale, fingering) => {
  if (!fingering) {
    const lines = neck.strings.map(({ number, startSlot }) => {
      const places = marks
        .filter(({ string }) => string === number)
        .map(({ slot, degree }) => {
          const note = signs(scale.notes[degree - 1] ?? '');
          return slot === startSlot ? `al aire ${note}` : `${neck.slots[slot]?.fret} ${note}`;
        });
      return `Cuerda ${number}: ${places.join(', ')}`;
    });
    return `${lines.join('. ')}.`;
  }
  const notes = fingering.notes.map(({ string, fret, finger, note, degree }) => {
    const where = fret === 0 ? `cuerda ${string} al aire` : `cuerda ${string} traste ${fret} dedo ${finger}`;
    const sign = signs(formatDegree(degree, scale.mode.alterations[degree - 1] ?? 0));
    return `${sign} ${signs(note)}: ${where}`;
  });
  return `${neck.strings.length} cuerdas, contadas desde el lado más agudo. ${notes.join('; ')}.`;
};

const WIDE = /^The hand opens (\d+) mm here.* reaches (\d+) mm\./;

/** A caution of core's in Spanish; one that is not known stays as it is. */
export const cautionWords: typeof English.cautionWords = (caution) => {
  const [, opening, reach] = WIDE.exec(caution) ?? [];
  if (opening !== undefined)
    return `Aquí la mano se abre ${opening} mm, mucho para una mano que alcanza ${reach} mm. Empieza más arriba en el mástil, usa una cejilla o deja que la mano se desplace, y no mantengas ni repitas el estiramiento mucho tiempo; un profesor puede mostrarte qué conviene a tu mano.`;
  if (caution.startsWith('General information only'))
    return 'Solo información general: calienta, aumenta el tiempo y el tempo poco a poco y descansa a menudo. Para si sientes dolor, entumecimiento u hormigueo, y consulta a un médico; para la técnica, pregunta a un profesor cualificado.';
  return caution;
};
