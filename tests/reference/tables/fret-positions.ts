/**
 * Where frets lie, in millimetres from the nut.
 */

const KOCH = 'M. Koch, Building Electric Guitars, Calculating fret distances';
const LUTHIERS_TABLE = "a luthier's published 24-fret table for 25 in, distances to the bridge";

/** What, scale length, fret, distance, tolerance of the rounding in print, source. */
export const publishedFrets: readonly (readonly [string, number, number, number, number, string])[] = [
  ['fret 12 lies at half the scale length', 648.0, 12, 324.0, 0.001, KOCH],
  ['25.5 in / 17.817 = 1.431 in to fret 1', 647.7, 1, 36.347, 0.02, KOCH],
  ['25.5 in: fret 2 at 1.431 + 1.351 = 2.782 in', 647.7, 2, 70.663, 0.02, KOCH],
  ['650 mm: fret 1 at 36.48 mm', 650.0, 1, 36.48, 0.01, KOCH],
  ['650 mm: fret 2 at 36.48 + 34.43 = 70.91 mm', 650.0, 2, 70.91, 0.02, KOCH],
  ['650 mm: fret 12 at 325 mm', 650.0, 12, 325.0, 0.001, KOCH],
  ['25 in (635 mm): saddle to fret 1 599.360 mm', 635.0, 1, 35.64, 0.002, LUTHIERS_TABLE],
  ['25 in (635 mm): saddle to fret 5 475.712 mm', 635.0, 5, 159.288, 0.002, LUTHIERS_TABLE],
  ['25 in (635 mm): saddle to fret 7 423.812 mm', 635.0, 7, 211.188, 0.002, LUTHIERS_TABLE],
  ['25 in (635 mm): saddle to fret 19 211.906 mm', 635.0, 19, 423.094, 0.002, LUTHIERS_TABLE],
  [
    '25 in (635 mm): saddle to fret 24 158.750 mm (a quarter of the scale)',
    635.0,
    24,
    476.25,
    0.002,
    LUTHIERS_TABLE,
  ],
];

/** M. Koch: each next fret lies the remaining length divided by this constant farther on. */
export const fretConstant = 17.817;

/** Landmarks as fractions of the scale length; 12 and 24 are exact (Koch; Buckland), the others computed. */
export const landmarks: readonly (readonly [number, number])[] = [
  [5, 0.2508],
  [7, 0.3326],
  [12, 0.5],
  [19, 0.6663],
  [24, 0.75],
];

export const ruleOfEighteenSource =
  'a published worked example of the rule of 18 for 350 mm; J. Buckland, Rule of 18 vs Rule of 17.817, Guild of American Luthiers (2021)';

/** Fret and distance for 350 mm by the rule of 18, rounded at every step in print. */
export const ruleOfEighteenFrets: readonly (readonly [number, number])[] = [
  [1, 19.44],
  [7, 115.4],
  [12, 173.72],
];

/** Frets 1 to 24 to a thousandth of a millimetre: computed, not published. */
export const computedFrets: readonly (readonly [string, number, readonly number[]])[] = [
  [
    '25.5 in, rounded to the usual metric figure',
    648.0,
    [
      36.369, 70.698, 103.099, 133.682, 162.549, 189.795, 215.512, 239.786, 262.697, 284.322, 304.734, 324.0,
      342.185, 359.349, 375.55, 390.841, 405.274, 418.897, 431.756, 443.893, 455.348, 466.161, 476.367, 486.0,
    ],
  ],
  [
    '25.5 in exactly',
    647.7,
    [
      36.353, 70.665, 103.051, 133.62, 162.473, 189.707, 215.412, 239.675, 262.575, 284.191, 304.593, 323.85,
      342.026, 359.182, 375.376, 390.66, 405.087, 418.703, 431.556, 443.687, 455.138, 465.945, 476.146,
      485.775,
    ],
  ],
  [
    '24.75 in exactly',
    628.65,
    [
      35.283, 68.587, 100.02, 129.69, 157.695, 184.127, 209.076, 232.625, 254.852, 275.832, 295.634, 314.325,
      331.967, 348.618, 364.335, 379.17, 393.172, 406.389, 418.863, 430.638, 441.751, 452.241, 462.142,
      471.487,
    ],
  ],
  [
    'classical guitar, metric',
    650.0,
    [
      36.482, 70.916, 103.417, 134.095, 163.05, 190.381, 216.177, 240.526, 263.508, 285.2, 305.674, 325.0,
      343.241, 360.458, 376.709, 392.047, 406.525, 420.19, 433.089, 445.263, 456.754, 467.6, 477.837, 487.5,
    ],
  ],
  [
    'long-scale electric bass, 34 in exactly',
    863.6,
    [
      48.47, 94.22, 137.402, 178.16, 216.631, 252.943, 287.216, 319.566, 350.1, 378.921, 406.124, 431.8,
      456.035, 478.91, 500.501, 520.88, 540.116, 558.271, 575.408, 591.583, 606.85, 621.26, 634.862, 647.7,
    ],
  ],
];
