/**
 * Scales spelled in print, and some spelled from memory.
 */

/** What the names of the scales stand for. */
export const formulas: Readonly<Record<string, string>> = {
  'harmonic minor': '1 2 b3 4 5 b6 7',
  'melodic minor (ascending)': '1 2 b3 4 5 6 7',
  'natural minor': '1 2 b3 4 5 b6 b7',
  major: '1 2 3 4 5 6 7',
  altered: '1 b2 b3 b4 b5 b6 b7',
  'leading whole-tone': '1 2 3 #4 #5 #6 7',
  'Enigmatic (ascending)': '1 b2 3 #4 #5 #6 7',
  Persian: '1 b2 3 4 b5 b6 7',
  'Hungarian major': '1 #2 3 #4 5 6 b7',
  'Hungarian minor': '1 2 b3 #4 5 b6 7',
  'Neapolitan minor': '1 b2 b3 4 5 b6 7',
  'Neapolitan major': '1 b2 b3 4 5 6 7',
  'Lydian augmented': '1 2 3 #4 #5 6 7',
  'half diminished': '1 2 b3 4 b5 b6 b7',
  'Aeolian dominant': '1 2 3 4 5 b6 b7',
  'Phrygian dominant': '1 b2 3 4 5 b6 b7',
  'Ukrainian Dorian': '1 2 b3 #4 5 6 b7',
  'jazz minor': '1 2 b3 4 5 6 7',
  'harmonic major': '1 2 3 4 5 b6 7',
  'Super Locrian bb7 (mode 7 of harmonic minor)': '1 b2 b3 b4 b5 b6 bb7',
  'Locrian bb7 (mode 7 of harmonic major)': '1 b2 b3 4 b5 b6 bb7',
  'Kanakangi (mela 1)': '1 b2 bb3 4 5 b6 bb7',
  'Rasikapriya (mela 72) = Lydian #2 #6': '1 #2 3 #4 5 #6 7',
  Dorian: '1 2 b3 4 5 6 b7',
};

/** Root, scale, notes, source: read in the source. */
export const spelledInPrint: readonly (readonly [string, string, string, string])[] = [
  ['G#', 'harmonic minor', 'G# A# B C# D# E F##', 'Wikipedia, G-sharp minor'],
  ['G#', 'melodic minor (ascending)', 'G# A# B C# D# E# F##', 'Wikipedia, G-sharp minor'],
  ['F#', 'melodic minor (ascending)', 'F# G# A B C# D# E#', 'Wikipedia, F-sharp minor'],
  ['Ab', 'natural minor', 'Ab Bb Cb Db Eb Fb Gb', 'Wikipedia, A-flat minor'],
  ['Ab', 'melodic minor (ascending)', 'Ab Bb Cb Db Eb F G', 'Wikipedia, A-flat minor'],
  ['C#', 'major', 'C# D# E# F# G# A# B#', 'C. E. Gardner, Essentials of Music Theory: Elementary (1912)'],
  [
    'G#',
    'major',
    'G# A# B# C# D# E# F##',
    'C. E. Gardner, Essentials of Music Theory: Elementary (1912); Wikipedia, Theoretical key',
  ],
  ['A#', 'major', 'A# B# C## D# E# F## G##', 'C. E. Gardner, Essentials of Music Theory: Elementary (1912)'],
  [
    'Cb',
    'major',
    'Cb Db Eb Fb Gb Ab Bb',
    'C. E. Gardner, Essentials of Music Theory: Elementary (1912) (signature of seven flats)',
  ],
  [
    'C',
    'altered',
    'C Db Eb Fb Gb Ab Bb',
    'Wikipedia, Altered scale; F. Busoni, Sketch of a New Esthetic of Music (1907), unnamed example, seen in a Dutch quotation with one misprint',
  ],
  [
    'Gb',
    'melodic minor (ascending)',
    'Gb Ab Bbb Cb Db Eb F',
    'G. Slayden, Characteristic Chords of the Melodic Minor Scale (web table), roots of the seven chords',
  ],
  ['C', 'leading whole-tone', 'C D E F# G# A# B', 'Wikipedia, Major Locrian scale'],
  ['C', 'Enigmatic (ascending)', 'C Db E F# G# A# B', 'Wikipedia, Enigmatic scale'],
  ['G', 'Enigmatic (ascending)', 'G Ab B C# D# E# F#', 'Wikipedia, Heptatonic scale'],
  ['C', 'Persian', 'C Db E F Gb Ab B', 'Wikipedia, Persian scale'],
  ['C', 'Hungarian major', 'C D# E F# G A Bb', 'Wikipedia, Hungarian major scale'],
  ['C', 'Hungarian minor', 'C D Eb F# G Ab B', 'Wikipedia, Hungarian minor scale'],
  ['B', 'Hungarian minor', 'B C# D E# F# G A#', 'Wikipedia, Hungarian minor scale'],
  ['A', 'Hungarian minor', 'A B C D# E F G#', 'Wikipedia, Hungarian minor scale'],
  ['C', 'Neapolitan minor', 'C Db Eb F G Ab B', 'Wikipedia, Neapolitan scale'],
  ['C', 'Neapolitan major', 'C Db Eb F G A B', 'Wikipedia, Neapolitan scale'],
  ['A', 'Neapolitan major', 'A Bb C D E F# G#', 'Wikipedia, Neapolitan scale'],
  ['C', 'Lydian augmented', 'C D E F# G# A B', 'Wikipedia, Lydian augmented scale'],
  ['C', 'half diminished', 'C D Eb F Gb Ab Bb', 'Wikipedia, Half diminished scale'],
  ['C', 'Aeolian dominant', 'C D E F G Ab Bb', 'Wikipedia, Aeolian dominant scale'],
  ['E', 'Phrygian dominant', 'E F G# A B C D', 'Wikipedia, Phrygian dominant scale'],
  ['C', 'Ukrainian Dorian', 'C D Eb F# G A Bb', 'Wikipedia, Ukrainian Dorian scale'],
  ['A', 'Ukrainian Dorian', 'A B C D# E F# G', 'Wikipedia, Ukrainian Dorian scale'],
  ['C', 'jazz minor', 'C D Eb F G A B', 'Wikipedia, Jazz minor scale'],
  [
    'B',
    'harmonic major',
    'B C# D# E F# G A#',
    'Wikipedia, Harmonic major scale (letters seen; accidentals dropped in the copy, described in words)',
  ],
  [
    'B#',
    'altered',
    'B# C# D# E F# G# A#',
    'a theory forum answer: super Locrian as degree 7 of C# melodic minor',
  ],
];

/** Root, scale, notes, where they come from: recalled or derived, not read. */
export const spelledFromMemory: readonly (readonly [string, string, string, string])[] = [
  [
    'Fb',
    'major',
    'Fb Gb Ab Bbb Cb Db Eb',
    'Wikipedia, Key signature (F-flat major, 8 flats: the count was seen, not the note list)',
  ],
  [
    'Db',
    'natural minor',
    'Db Eb Fb Gb Ab Bbb Cb',
    'Wikipedia, Key signature (D-flat minor, 8 flats: the count was seen, not the note list)',
  ],
  ['F', 'altered', 'F Gb Ab Bbb Cb Db Eb', 'derived from G-flat melodic minor'],
  ['C', 'Super Locrian bb7 (mode 7 of harmonic minor)', 'C Db Eb Fb Gb Ab Bbb', 'common practice, no source'],
  [
    'G#',
    'Super Locrian bb7 (mode 7 of harmonic minor)',
    'G# A B C D E F',
    'common practice, no source (notes of A harmonic minor from G#)',
  ],
  [
    'A',
    'Locrian bb7 (mode 7 of harmonic major)',
    'A Bb C D Eb F Gb',
    'common practice, no source (notes of B-flat harmonic major from A)',
  ],
  [
    'C',
    'Kanakangi (mela 1)',
    'C Db Ebb F G Ab Bbb',
    'swaras R1 G1 D1 N1, as in the table of melas; staff spelling from memory',
  ],
  [
    'C',
    'Rasikapriya (mela 72) = Lydian #2 #6',
    'C D# E F# G A# B',
    'swaras R3 G3 M2 D3 N3, as in the table of melas; staff spelling from memory',
  ],
  ['Gb', 'Dorian', 'Gb Ab Bbb Cb Db Eb Fb', 'common practice, no source (notes of F-flat major)'],
];
