/**
 * Modes of four families with their brightness: sharps minus flats of the formula, double flats counted twice.
 */

export const source = 'A. Neely, Brightness/Darkness in Modes (2010)';

/** Family, degree of its first mode, name, formula, brightness; from the brightest to the darkest. */
export const brightness: readonly (readonly [string, number, string, string, number])[] = [
  ['melodic minor', 3, 'Lydian augmented', '1 2 3 #4 #5 6 7', 2],
  ['melodic minor', 4, 'Lydian b7', '1 2 3 #4 5 6 b7', 0],
  ['melodic minor', 1, 'Ionian b3', '1 2 b3 4 5 6 7', -1],
  ['melodic minor', 5, 'Mixolydian b6', '1 2 3 4 5 b6 b7', -2],
  ['melodic minor', 2, 'Dorian b2', '1 b2 b3 4 5 6 b7', -3],
  ['melodic minor', 6, 'Locrian nat2', '1 2 b3 4 b5 b6 b7', -4],
  ['melodic minor', 7, 'Locrian b4', '1 b2 b3 b4 b5 b6 b7', -6],
  ['harmonic minor', 6, 'Lydian #2', '1 #2 3 #4 5 6 7', 2],
  ['harmonic minor', 3, 'Ionian #5', '1 2 3 4 #5 6 7', 1],
  ['harmonic minor', 4, 'Dorian #4', '1 2 b3 #4 5 6 b7', -1],
  ['harmonic minor', 1, 'Aeolian nat7', '1 2 b3 4 5 b6 7', -2],
  ['harmonic minor', 5, 'Phrygian nat3', '1 b2 3 4 5 b6 b7', -3],
  ['harmonic minor', 2, 'Locrian nat6', '1 b2 b3 4 b5 6 b7', -4],
  ['harmonic minor', 7, 'Locrian b4 bb7', '1 b2 b3 b4 b5 b6 bb7', -7],
  ['harmonic major', 6, 'Lydian #2 #5', '1 #2 3 #4 #5 6 7', 3],
  ['harmonic major', 4, 'Lydian b3', '1 2 b3 #4 5 6 7', 0],
  ['harmonic major', 1, 'Ionian b6', '1 2 3 4 5 b6 7', -1],
  ['harmonic major', 5, 'Mixolydian b2', '1 b2 3 4 5 6 b7', -2],
  ['harmonic major', 2, 'Dorian b5', '1 2 b3 4 b5 6 b7', -3],
  ['harmonic major', 3, 'Phrygian b4', '1 b2 b3 b4 5 b6 b7', -5],
  ['harmonic major', 7, 'Locrian bb7', '1 b2 b3 4 b5 b6 bb7', -6],
  ['major', 4, 'Lydian', '1 2 3 #4 5 6 7', 1],
  ['major', 1, 'Ionian', '1 2 3 4 5 6 7', 0],
  ['major', 5, 'Mixolydian', '1 2 3 4 5 6 b7', -1],
  ['major', 2, 'Dorian', '1 2 b3 4 5 6 b7', -2],
  ['major', 6, 'Aeolian', '1 2 b3 4 5 b6 b7', -3],
  ['major', 3, 'Phrygian', '1 b2 b3 4 5 b6 b7', -4],
  ['major', 7, 'Locrian', '1 b2 b3 4 b5 b6 b7', -5],
];
