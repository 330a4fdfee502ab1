/**
 * The seven church modes: formula, semitones, the white key they end on, the degree of the major scale they
 * begin on, and the sum of their alterations.
 */

export const source =
  'H. Glarean, Dodecachordon (1547), book 2, and H. S. Powers, Locrian, in The New Grove; the formulas follow from the white-key octaves, the finals are also recalled';

/** Name, formula, semitones, final on the white keys, degree of the major scale, sum of alterations. */
export const churchModes: readonly (readonly [string, string, string, string, number, number])[] = [
  ['Ionian', '1 2 3 4 5 6 7', '0 2 4 5 7 9 11', 'C', 1, 0],
  ['Dorian', '1 2 b3 4 5 6 b7', '0 2 3 5 7 9 10', 'D', 2, -2],
  ['Phrygian', '1 b2 b3 4 5 b6 b7', '0 1 3 5 7 8 10', 'E', 3, -4],
  ['Lydian', '1 2 3 #4 5 6 7', '0 2 4 6 7 9 11', 'F', 4, 1],
  ['Mixolydian', '1 2 3 4 5 6 b7', '0 2 4 5 7 9 10', 'G', 5, -1],
  ['Aeolian', '1 2 b3 4 5 b6 b7', '0 2 3 5 7 8 10', 'A', 6, -3],
  ['Locrian', '1 b2 b3 4 b5 b6 b7', '0 1 3 5 6 8 10', 'B', 7, -5],
];

/** A. Neely, Brightness/Darkness in Modes (2010), and teaching pages. */
export const brightnessOrder = [
  'Lydian',
  'Ionian',
  'Mixolydian',
  'Dorian',
  'Aeolian',
  'Phrygian',
  'Locrian',
] as const;

/** The brighter, the darker, the degree as it is in the brighter and as it is in the darker. */
export const brightnessSteps: readonly (readonly [string, string, string, string])[] = [
  ['Lydian', 'Ionian', '#4', '4'],
  ['Ionian', 'Mixolydian', '7', 'b7'],
  ['Mixolydian', 'Dorian', '3', 'b3'],
  ['Dorian', 'Aeolian', '6', 'b6'],
  ['Aeolian', 'Phrygian', '2', 'b2'],
  ['Phrygian', 'Locrian', '5', 'b5'],
];

/** Pitch classes shared on one root, rows and columns in order of brightness: computed, not published. */
export const sharedPitchClasses: readonly (readonly number[])[] = [
  [7, 6, 5, 4, 3, 2, 2],
  [6, 7, 6, 5, 4, 3, 2],
  [5, 6, 7, 6, 5, 4, 3],
  [4, 5, 6, 7, 6, 5, 4],
  [3, 4, 5, 6, 7, 6, 5],
  [2, 3, 4, 5, 6, 7, 6],
  [2, 2, 3, 4, 5, 6, 7],
];

/** Degrees spelled alike on one root, in the same order: computed, not published. */
export const sharedDegrees: readonly (readonly number[])[] = [
  [7, 6, 5, 4, 3, 2, 1],
  [6, 7, 6, 5, 4, 3, 2],
  [5, 6, 7, 6, 5, 4, 3],
  [4, 5, 6, 7, 6, 5, 4],
  [3, 4, 5, 6, 7, 6, 5],
  [2, 3, 4, 5, 6, 7, 6],
  [1, 2, 3, 4, 5, 6, 7],
];
