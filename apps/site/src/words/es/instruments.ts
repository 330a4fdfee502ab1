/**
 * Los textos de las páginas de instrumentos. Spanish.
 */
import type * as English from '../en/instruments.ts';
import type { SameShape } from '../languages.ts';
import { counted, joined, numberWord, tenths } from './numbers.ts';

export const INSTRUMENTS: SameShape<typeof English.INSTRUMENTS> = {
  aliases: 'Otros nombres, casi todos en inglés:',
  find: 'Encontrar un instrumento',
  findHint:
    'Por nombre, número de cuerdas o afinación: mandolina, bajo de cinco cuerdas, mi la re sol, DADGAD.',
  notFound: 'Ningún instrumento cumple todas estas palabras. Quita alguna, o mira la lista entera.',
  failed: 'No se pudo cargar la lista; abajo está entera.',
  notServed: 'Instrumentos que no están aquí',
  notServedLead: 'Hay quien pregunta por ellos. Por qué faltan aquí:',
  strings: 'Cuerdas',
  builtWith: 'se construye con',
  writing: 'Se escribe en',
  fromMemory: 'De memoria, sin comprobar en una fuente:',
  inTuning: 'Ronda',
  tuningFromMemory: 'de memoria',
  roundsLead: 'Desde la nota de su cuerda al aire más grave; una afinación elegida arriba se conserva.',
  picture: 'Imagen',
};

export const foundWords: typeof English.foundWords = (count, of) =>
  count === of ? `Los ${count} instrumentos.` : `${counted(count, 'instrumento', 'instrumentos')} de ${of}.`;

export const stringCountWords: typeof English.stringCountWords = (courses, strings) =>
  courses === strings
    ? counted(strings, 'cuerda', 'cuerdas')
    : `${counted(courses, 'orden', 'órdenes')}, ${counted(strings, 'cuerda', 'cuerdas')}`;

export const rangeWords: typeof English.rangeWords = ({ from, to }, unit = '') =>
  `${from === to ? tenths(from) : `${tenths(from)} a ${tenths(to)}`}${unit}`;

const CLEFS = { G: 'clave de sol', F: 'clave de fa en cuarta', C: 'clave de do en tercera' } as const;

export const writingWords: typeof English.writingWords = ({ sign, octaveChange }, soundingMinusWritten) => {
  const eight = octaveChange === 0 ? '' : ` con un 8 ${octaveChange < 0 ? 'debajo' : 'encima'}`;
  const octaves = Math.abs(soundingMinusWritten) / 12;
  const far = octaves === 1 ? 'una octava' : `${numberWord(octaves)} octavas`;
  const sounds =
    soundingMinusWritten === 0
      ? 'suena como se escribe'
      : `suena ${far} más ${soundingMinusWritten < 0 ? 'grave' : 'agudo'} de lo escrito en la clave sin 8`;
  return `${CLEFS[sign]}${eight}; ${sounds}`;
};

const FIELDS: Readonly<Record<string, string>> = {
  fretsRange: 'los números posibles de trastes',
  frets: 'el número de trastes',
  scaleLengthMm: 'el tiro de cuerda',
  scaleLengthRangeMm: 'los tiros de cuerda posibles',
  clef: 'la clave',
  tunings: 'algunas afinaciones',
  aliases: 'otros nombres',
  midiProgram: 'el sonido en archivos MIDI',
  partialFrets: 'qué trastes hay',
};

export const recalledWords: typeof English.recalledWords = (fields) =>
  joined(fields.map((field) => FIELDS[field] ?? field));
