/**
 * Qué no está bien en algo escrito o elegido. Spanish.
 */
import type { Expectation } from '@stillroot/core';
import type * as English from '../en/problems.ts';
import { reasonWords } from './reasons.ts';

/** A problem in a sentence. */
export const problemWords: typeof English.problemWords = ({ value, expected, expectation }) => {
  const right = expectation ? expectationWords(expectation) : expected;
  return value === '' ? `Se espera ${right}.` : `«${value}»: se espera ${right}.`;
};

/** A problem away from its field, which is named. */
export const problemOf: typeof English.problemOf = (label, problem) =>
  label ? `${label} – ${problemWords(problem)}` : problemWords(problem);

function expectationWords(expected: Expectation): string {
  switch (expected.kind) {
    case 'root':
      return 'una de las 21 tónicas: una letra de A a G, sola o con b o # (nombres ingleses: A es la, B es si)';
    case 'note':
      return 'una letra de A a G y luego b o #, como A, Bb, F# (nombres ingleses: A es la, B es si)';
    case 'pitch':
      return 'una nota con su octava (el do central es C4), como E2, F#1 o Bb3';
    case 'helmholtz-pitch':
      return "una nota en la notación de Helmholtz, como E, (que es E1), E (E2), e (E3) o e' (E4)";
    case 'chord':
      return 'un cifrado de acorde, como Am, E7, Bbmaj7, C#m7b5, Dsus4, G7(b9) o D/F#';
    case 'string-count':
      return `de 1 a ${expected.most} cuerdas al aire, de grave a aguda, como E2-A2-D3-G3-B3-E4; aquí hay ${expected.given}`;
    case 'open-strings':
      return "cuerdas al aire, de grave a aguda, con números de octava (E2-A2-D3-G3-B3-E4), según Helmholtz (E A d g b e') o solo con letras (E A D G B E o EADGBE)";
    case 'rising-strings':
      return 'cuerdas que suban cada una sobre la anterior y acaben en G9 o antes, o sus octavas (E2-A2-D3)';
    case 'one-notation':
      return 'un número de octava como en las otras cuerdas, por ejemplo E2: una sola notación para todas';
    case 'semitones':
      return `un número entero de semitonos de ${expected.from} a ${expected.to}, para que la afinación quede entre las notas MIDI 0 y ${expected.highestMidi}`;
    case 'sounding-to':
      return `cuerdas al aire cuyo último traste no suene más agudo que ${expected.highest}`;
    case 'one-length':
      return 'una longitud o las de las dos cuerdas exteriores, no ambas cosas';
    case 'length-mm':
      return `una longitud en milímetros de ${expected.from} a ${expected.to}`;
    case 'fret-count':
      return `un número entero de trastes de ${expected.from} a ${expected.to}`;
    case 'first-fret':
      return `bastantes para el primer traste de este mástil, que es el número ${expected.fret}`;
    case 'capo-fret':
      return `un traste de este mástil de 0 (ninguno) a ${expected.highest}`;
    case 'fret':
      return `un traste de este mástil, de 0 (al aire) a ${expected.highest}`;
    case 'string-numbers':
      return `cuerdas de este mástil por su número, de 1 a ${expected.count}`;
    case 'string-below-capo':
      return `al menos una cuerda que llegue por debajo del traste ${expected.fret}`;
    case 'playable-round':
      return `una ronda que se pueda tocar: ${reasonWords(expected.reason)}`;
    case 'playable-fingering':
      return `una digitación que se pueda tocar${expected.reason ? `: ${reasonWords(expected.reason)}` : ''}`;
    case 'musicxml-octaves':
      return 'notas en las octavas 0 a 9, las únicas que tiene MusicXML';
    case 'notes':
      return 'una digitación con al menos una nota';
    case 'piece-length':
      return `una pieza de no más de ${expected.mostNotes} notas y ${expected.mostBars} compases; esta tiene ${expected.notes} notas y ${expected.bars} compases`;
    case 'tempo':
      return `un número de ${expected.from} a ${expected.to}: pulsos por minuto`;
    case 'meter':
      return `de ${expected.from} a ${expected.to} pulsos sobre ${expected.units.join(', ')}, como 4/4 o 7/8`;
    case 'vamp':
      return `de 1 a ${expected.most} grados del 1 al 7, como 1,4`;
    case 'whole-number':
      return `un número entero de ${expected.from} a ${expected.to}`;
    case 'one-of':
      return `uno de ${expected.choices.join(', ')}`;
  }
}
