/**
 * Stufen und Bewegungen in Worten. German. A degree against the major scale is an interval above the root,
 * so it has the interval's name (common practice, no source).
 */
import { formatDegree } from '@stillroot/core';
import type * as English from '../en/degrees.ts';
import { signs } from '../signs.ts';
import { modeName } from './names.ts';
import { joined, numberWord } from './numbers.ts';

const INTERVALS = ['', 'Prime', 'Sekunde', 'Terz', 'Quarte', 'Quinte', 'Sexte', 'Septime'];
const TIMES = ['', '', 'doppelt ', 'dreifach ', 'vierfach ', 'fünffach '];

/** Degrees that are perfect in the major scale; the others are major there. */
const PERFECT = [1, 4, 5];

/**
 * A degree as it sounds against the major scale, without an article.
 * @example degreeWords(4, 1)  // 'übermäßige Quarte'
 * @example degreeWords(7, -2) // 'verminderte Septime'
 */
export const degreeWords: typeof English.degreeWords = (degree, alteration) =>
  `${quality(degree, alteration)}e ${INTERVALS[degree] ?? `${degree}. Stufe`}`;

/**
 * A mode read from its base.
 * @example baseWords(base, alterations) // 'Dorisch mit übermäßiger Quarte'
 */
export const baseWords: typeof English.baseWords = (base, alterations) => {
  const name = modeName(base.name);
  if (base.moved.length === 0) return name;
  const moved = base.moved.map(
    ({ degree }) => `${quality(degree, alterations[degree - 1] ?? 0)}er ${INTERVALS[degree] ?? ''}`,
  );
  return `${name} mit ${joined(moved)}`;
};

/** A degree with its sign: `♭3`. */
export const degreeSign: typeof English.degreeSign = (degree, alteration) =>
  signs(formatDegree(degree, alteration));

/** Which way and how far a degree moves: `fällt um einen Halbton`; of several, `fallen um einen Halbton`. */
export const moveVerb: typeof English.moveVerb = (by, count = 1) => {
  const size = Math.abs(by);
  const distance =
    size === 1 ? 'einen Halbton' : size === 2 ? 'einen Ganzton' : `${numberWord(size)} Halbtöne`;
  const [one, several] = by < 0 ? ['fällt', 'fallen'] : ['steigt', 'steigen'];
  return `${count === 1 ? one : several} um ${distance}`;
};

/** A move of one degree: `6 fällt um einen Halbton`. */
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

/** An interval's quality without its ending: `übermäßig`. */
function quality(degree: number, alteration: number): string {
  const isPerfect = PERFECT.includes(degree);
  if (alteration === 0) return isPerfect ? 'rein' : 'groß';
  if (alteration > 0) return `${TIMES[alteration] ?? `${alteration}-fach `}übermäßig`;
  if (alteration === -1 && !isPerfect) return 'klein';
  const size = isPerfect ? -alteration : -alteration - 1;
  return `${TIMES[size] ?? `${size}-fach `}vermindert`;
}
