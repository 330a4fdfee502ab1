/**
 * Grados y movimientos en palabras. Spanish. A degree against the major scale is an interval above the
 * root, so it has the interval's name (common practice, no source).
 */
import { formatDegree } from '@stillroot/core';
import type * as English from '../en/degrees.ts';
import { signs } from '../signs.ts';
import { modeName } from './names.ts';
import { joined } from './numbers.ts';

const INTERVALS = ['', 'unísono', 'segunda', 'tercera', 'cuarta', 'quinta', 'sexta', 'séptima'];
const TIMES = ['', '', 'doblemente ', 'triplemente ', 'cuádruplemente ', 'quíntuplemente '];
const SEMITONES = ['', 'un semitono', 'un tono', 'tres semitonos', 'cuatro semitonos', 'cinco semitonos'];

/** Degrees that are perfect in the major scale; the others are major there. */
const PERFECT = [1, 4, 5];

/**
 * A degree as it sounds against the major scale, without an article.
 * @example degreeWords(4, 1)  // 'cuarta aumentada'
 * @example degreeWords(7, -2) // 'séptima disminuida'
 */
export const degreeWords: typeof English.degreeWords = (degree, alteration) =>
  `${INTERVALS[degree] ?? `${degree}.º grado`} ${quality(degree, alteration)}`;

/**
 * A mode read from its base.
 * @example baseWords(base, alterations) // 'dórico con cuarta aumentada'
 */
export const baseWords: typeof English.baseWords = (base, alterations) => {
  const name = modeName(base.name);
  if (base.moved.length === 0) return name;
  const moved = base.moved.map(({ degree }) => degreeWords(degree, alterations[degree - 1] ?? 0));
  return `${name} con ${joined(moved)}`;
};

/** A degree with its sign: `♭3`. */
export const degreeSign: typeof English.degreeSign = (degree, alteration) =>
  signs(formatDegree(degree, alteration));

/** Which way and how far a degree moves: `baja un semitono`; of several, `bajan un semitono`. */
export const moveVerb: typeof English.moveVerb = (by, count = 1) => {
  const size = Math.abs(by);
  const [one, several] = by < 0 ? ['baja', 'bajan'] : ['sube', 'suben'];
  return `${count === 1 ? one : several} ${SEMITONES[size] ?? `${size} semitonos`}`;
};

/** A move of one degree: `6 baja un semitono`. */
export const moveWords: typeof English.moveWords = ({ degree, by }) => `${degree} ${moveVerb(by)}`;

/** Several moves in one line, those of one kind together. */
export const movesWords: typeof English.movesWords = (moved) =>
  [...Map.groupBy(moved, ({ by }) => by)]
    .map(
      ([by, moves]) => `${joined(moves.map(({ degree }) => String(degree)))} ${moveVerb(by, moves.length)}`,
    )
    .join(', ');

/** The note a degree leaves and the one it goes to: `F♯ → F`. */
export const moveNotes: typeof English.moveNotes = ({ degree }, before, after) =>
  `${signs(before.notes[degree - 1] ?? '')} → ${signs(after.notes[degree - 1] ?? '')}`;

/** An interval's quality, feminine as intervals are. */
function quality(degree: number, alteration: number): string {
  const isPerfect = PERFECT.includes(degree);
  if (alteration === 0) return isPerfect ? 'justa' : 'mayor';
  if (alteration > 0) return `${TIMES[alteration] ?? `${alteration} veces `}aumentada`;
  if (alteration === -1 && !isPerfect) return 'menor';
  const size = isPerfect ? -alteration : -alteration - 1;
  return `${TIMES[size] ?? `${size} veces `}disminuida`;
}
