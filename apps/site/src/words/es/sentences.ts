/**
 * Frases y giros con algo que completar. Spanish.
 */
import type * as English from '../en/sentences.ts';
import type { SameShape } from '../languages.ts';
import { fromTo } from '../spanish-articles.ts';
import { capitalised, counted, joined, numberWord, ordinal, ordinalWord } from './numbers.ts';

export const NOUNS: SameShape<typeof English.NOUNS> = {
  mode: ['modo', 'modos'],
  note: ['nota', 'notas'],
  semitone: ['semitono', 'semitonos'],
  step: ['paso', 'pasos'],
  tuning: ['afinación', 'afinaciones'],
  family: ['familia', 'familias'],
};

export const modeAt: typeof English.modeAt = (degree) => `${ordinalWord(degree)} modo`;

export const placeInFamily: typeof English.placeInFamily = (inWords, degree, family) =>
  `${inWords}; el ${modeAt(degree)} de la familia ${family}.`;

export const placeInParent: typeof English.placeInParent = (degree, parent) =>
  `El ${modeAt(degree)} de ${parent}`;

export const placeOfParent: typeof English.placeOfParent = (family) =>
  `La escala madre de la familia ${family}`;

export const withRound: typeof English.withRound = (place, family, root, path) =>
  `${place}; en la <a href="${path}" hreflang="en">ronda «${family}» desde ${root}</a>.`;

export const notesShared: typeof English.notesShared = (scales) =>
  scales
    .map(({ count, name }, at) => {
      if (count === 7) return at === 0 ? `las siete notas en común con ${name}` : `las siete con ${name}`;
      const notes = count === 1 ? 'nota' : 'notas';
      return at === 0
        ? `${numberWord(count)} ${notes} en común con ${name}`
        : `${numberWord(count)} con ${name}`;
    })
    .join(', ');

export const onRoot: typeof English.onRoot = (root) => `sobre ${root}`;

export const derivedFrom: typeof English.derivedFrom = (base) => `Derivados del ${base}`;

export const familyTitle: typeof English.familyTitle = (name) => `${name}, una familia de modos`;

export const familyDescription: typeof English.familyDescription = (name, modes) =>
  `La familia ${name} y sus siete modos: ${joined(modes)}.`;

export const roundDescription: typeof English.roundDescription = (title, root) =>
  `${title}: sus siete modos sobre ${root}, en una zona del mástil, con las notas que se mueven entre ellos.`;

export const instrumentDescription: typeof English.instrumentDescription = (name, tunings) =>
  `${name}: ${counted(tunings, ...NOUNS.tuning)}, su mástil con sus notas, y rondas para tocar.`;

export const movedInAll: typeof English.movedInAll = (notes, semitones) =>
  `En total se ${notes === 1 ? 'mueve' : 'mueven'} ${counted(notes, ...NOUNS.note)}, ${counted(semitones, ...NOUNS.semitone)} en suma.`;

export const brightAndDark: typeof English.brightAndDark = (brightest, darkest) =>
  `El modo más brillante: ${brightest}; el más oscuro: ${darkest}.`;

export const pairName: typeof English.pairName = (first, second) => joined([first, second]);

export const movesFromTo: typeof English.movesFromTo = (first, second, moves) =>
  `${capitalised(fromTo(first, second))}: ${moves}.`;

export const againstFirst: typeof English.againstFirst = (first, other, what, inCommon) =>
  `De ${first} a ${other}: ${what}; ${numberWord(inCommon)} ${inCommon === 1 ? 'nota' : 'notas'} en común.`;

export const routeName: typeof English.routeName = (from, to) => capitalised(fromTo(from, to));

export const routeOn: typeof English.routeOn = (from, to, root) => `${routeName(from, to)} sobre ${root}`;

export const stripWords: typeof English.stripWords = (semitones, steps) =>
  `Grados en los semitonos ${semitones.join(' ')}; pasos ${steps.join(' ')}`;

export const mapPlace: typeof English.mapPlace = (degree, family, brightness) =>
  `${ordinal(degree)} modo de la familia ${family}, brillo ${brightness}`;

export const stepsOf: typeof English.stepsOf = (sizes, all) => `Pasos de ${joined(sizes)} semitonos: ${all}`;

export const found: typeof English.found = (what) => `Resultados: ${what}.`;

export const FROM_MEMORY: SameShape<typeof English.FROM_MEMORY> = ', de memoria';

export const bestKnownOf: typeof English.bestKnownOf = (shown, all) =>
  `Las ${shown} más conocidas de ${all}.`;
