/**
 * What has been published about the set of all seven-note scales, and about the diatonic one among them.
 */

export const rootedCountSource =
  'J. M. Barbour, Synthetic Musical Scales, American Mathematical Monthly 36 (1929), 462 scales on one tonic (recalled, seen in a secondary account), confirmed by R. M. Mason, Journal of Music Theory 14/1 (1970)';

export const familyCountSource =
  'A. Saglam and B. Polat, A Classification of Seven Tone Scales, 66 formulas (abstract)';

/** Scale and formula. */
type Named = readonly (readonly [string, string])[];

export const properSource =
  'D. Rothenberg, A Model for Pattern Perception with Musical Applications, Mathematical Systems Theory 11 (1978); the list of five through Wikipedia, Rothenberg propriety, and Major Locrian scale';

export const properScales: Named = [
  ['diatonic', '1 2 3 4 5 6 7'],
  ['melodic minor ascending', '1 2 b3 4 5 6 7'],
  ['harmonic minor', '1 2 b3 4 5 b6 7'],
  ['harmonic major', '1 2 3 4 5 b6 7'],
  ['major Locrian', '1 2 3 4 b5 b6 b7'],
];

export const ancohemitonicSource =
  'Wikipedia, Anhemitonic scale (names); a mathematics page on heptatonic scales (the count of six)';

/** No two semitone steps in a row. */
export const ancohemitonicScales: Named = [
  ['diatonic', '1 2 3 4 5 6 7'],
  ['melodic minor', '1 2 b3 4 5 6 7'],
  ['harmonic minor', '1 2 b3 4 5 b6 7'],
  ['harmonic major', '1 2 3 4 5 b6 7'],
  ['Hungarian major', '1 #2 3 #4 5 6 b7'],
  ['Romanian major', '1 b2 3 #4 5 6 b7'],
];

export const perfectlyBalancedSource = 'Wikipedia, Hungarian minor scale';

export const maximallyEvenSource =
  'J. Clough and J. Douthett, Maximally Even Sets, Journal of Music Theory 35 (1991), through Wikipedia, Maximal evenness';

export const myhillSource =
  'J. Clough and G. Myerson, Variety and Multiplicity in Diatonic Systems, Journal of Music Theory 29 (1985)';

export const deepSource =
  'C. Gamer, Some Combinational Resources of Equal-Tempered Systems, Journal of Music Theory 11 (1967), through Wikipedia, Deep scale property';

/** The chromatic cluster 7-1 has the last two properties by the letter of their definitions: computed. */
export const cluster = '1111116';
