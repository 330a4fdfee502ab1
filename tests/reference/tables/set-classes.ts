/**
 * The 38 set classes of seven pitch classes. Where a class is not its own inversion, form A holds the prime
 * form and form B its inversion.
 */

export const source =
  'A. Forte, The Structure of Atonal Music (1973), appendix 1, as given by the chord tables of the music21 library and checked against Music.Theory.Z.Forte_1973 of the hmt library; the printed page is recalled';

export const rahnSource =
  'J. Rahn, Basic Atonal Theory (1980, recalled), as listed by Music.Theory.Z.Rahn_1980 of the hmt library';

/** Name, prime form, interval vector, the class with the same vector, steps of form A, steps of form B. */
export const setClasses: readonly (readonly [
  string,
  string,
  string,
  string | undefined,
  string,
  string | undefined,
])[] = [
  ['7-1', '0 1 2 3 4 5 6', '6 5 4 3 2 1', undefined, '1111116', undefined],
  ['7-2', '0 1 2 3 4 5 7', '5 5 4 3 3 1', undefined, '1111125', '2111115'],
  ['7-3', '0 1 2 3 4 5 8', '5 4 4 4 3 1', undefined, '1111134', '3111114'],
  ['7-4', '0 1 2 3 4 6 7', '5 4 4 3 3 2', undefined, '1111215', '1211115'],
  ['7-5', '0 1 2 3 5 6 7', '5 4 3 3 4 2', undefined, '1112115', '1121115'],
  ['7-6', '0 1 2 3 4 7 8', '5 3 3 4 4 2', undefined, '1111314', '1311114'],
  ['7-7', '0 1 2 3 6 7 8', '5 3 2 3 5 3', undefined, '1113114', '1131114'],
  ['7-8', '0 2 3 4 5 6 8', '4 5 4 4 2 2', undefined, '2111124', undefined],
  ['7-9', '0 1 2 3 4 6 8', '4 5 3 4 3 2', undefined, '1111224', '2211114'],
  ['7-10', '0 1 2 3 4 6 9', '4 4 5 3 3 2', undefined, '1111233', '2111133'],
  ['7-11', '0 1 3 4 5 6 8', '4 4 4 4 4 1', undefined, '1211124', '2111214'],
  ['7-Z12', '0 1 2 3 4 7 9', '4 4 4 3 4 2', '7-Z36', '1111323', undefined],
  ['7-13', '0 1 2 4 5 6 8', '4 4 3 5 3 2', undefined, '1121124', '2112114'],
  ['7-14', '0 1 2 3 5 7 8', '4 4 3 3 5 2', undefined, '1112214', '1221114'],
  ['7-15', '0 1 2 4 6 7 8', '4 4 2 4 4 3', undefined, '1122114', undefined],
  ['7-16', '0 1 2 3 5 6 9', '4 3 5 4 3 2', undefined, '1112133', '1211133'],
  ['7-Z17', '0 1 2 4 5 6 9', '4 3 4 5 4 1', '7-Z37', '1121133', undefined],
  ['7-Z18', '0 1 2 3 5 8 9', '4 3 4 4 4 2', '7-Z38', '1112313', '1321113'],
  ['7-19', '0 1 2 3 6 7 9', '4 3 4 3 4 3', undefined, '1113123', '1113213'],
  ['7-20', '0 1 2 4 7 8 9', '4 3 3 4 5 2', undefined, '1123113', '1132113'],
  ['7-21', '0 1 2 4 5 8 9', '4 2 4 6 4 1', undefined, '1121313', '1211313'],
  ['7-22', '0 1 2 5 6 8 9', '4 2 4 5 4 2', undefined, '1131213', undefined],
  ['7-23', '0 2 3 4 5 7 9', '3 5 4 3 5 1', undefined, '2111223', '2211123'],
  ['7-24', '0 1 2 3 5 7 9', '3 5 3 4 4 2', undefined, '1112223', '2221113'],
  ['7-25', '0 2 3 4 6 7 9', '3 4 5 3 4 2', undefined, '2112123', '2121123'],
  ['7-26', '0 1 3 4 5 7 9', '3 4 4 5 3 2', undefined, '1211223', '2211213'],
  ['7-27', '0 1 2 4 5 7 9', '3 4 4 4 5 1', undefined, '1121223', '2212113'],
  ['7-28', '0 1 3 5 6 7 9', '3 4 4 4 3 3', undefined, '1221123', '2112213'],
  ['7-29', '0 1 2 4 6 7 9', '3 4 4 3 5 2', undefined, '1122123', '2122113'],
  ['7-30', '0 1 2 4 6 8 9', '3 4 3 5 4 2', undefined, '1122213', '1222113'],
  ['7-31', '0 1 3 4 6 7 9', '3 3 6 3 3 3', undefined, '1212123', '2121213'],
  ['7-32', '0 1 3 4 6 8 9', '3 3 5 4 4 2', undefined, '1212213', '1221213'],
  ['7-33', '0 1 2 4 6 8 10', '2 6 2 6 2 3', undefined, '1122222', undefined],
  ['7-34', '0 1 3 4 6 8 10', '2 5 4 4 4 2', undefined, '1212222', undefined],
  ['7-35', '0 1 3 5 6 8 10', '2 5 4 3 6 1', undefined, '1221222', undefined],
  ['7-Z36', '0 1 2 3 5 6 8', '4 4 4 3 4 2', '7-Z12', '1112124', '2121114'],
  ['7-Z37', '0 1 3 4 5 7 8', '4 3 4 5 4 1', '7-Z17', '1211214', undefined],
  ['7-Z38', '0 1 2 4 5 7 8', '4 3 4 4 4 2', '7-Z18', '1121214', '1212114'],
];

/** The two classes whose prime form is another when it is packed from the right. */
export const rahnPrimeForms: Readonly<Record<string, string>> = {
  '7-Z18': '0 1 4 5 6 7 9',
  '7-20': '0 1 2 5 6 7 9',
};

/** Scales and their class: names as in L. Solomon, The List of Chords (1997, 2000), through music21. */
export const namedClasses: readonly (readonly [string, string, string])[] = [
  ['major', '1 2 3 4 5 6 7', '7-35'],
  ['natural minor', '1 2 b3 4 5 b6 b7', '7-35'],
  ['melodic minor ascending', '1 2 b3 4 5 6 7', '7-34'],
  ['Neapolitan major', '1 b2 b3 4 5 6 7', '7-33'],
  ['harmonic minor', '1 2 b3 4 5 b6 7', '7-32A'],
  ['harmonic major', '1 2 3 4 5 b6 7', '7-32B'],
  ['mela 16, Chakravakam', '1 b2 3 4 5 6 b7', '7-32B'],
  ['Hungarian major', '1 #2 3 #4 5 6 b7', '7-31A'],
  ['Neapolitan minor', '1 b2 b3 4 5 b6 7', '7-30A'],
  ['Enigmatic', '1 b2 3 #4 #5 #6 7', '7-24B'],
  ['double harmonic', '1 b2 3 4 5 b6 7', '7-22'],
  ['Hungarian minor', '1 2 b3 #4 5 b6 7', '7-22'],
  ['mela 1, Kanakangi', '1 b2 bb3 4 5 b6 bb7', '7-20B'],
];
