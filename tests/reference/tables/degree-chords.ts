/**
 * Chords on the degrees, as literal stacks of thirds on one form of each scale. A half diminished seventh is
 * written m7b5 and a diminished one dim7, where the sources have their signs.
 */

export interface ChordedScale {
  readonly scale: string;
  readonly formula: string;
  readonly triads: string;
  /** Empty where the source gives triads alone. */
  readonly sevenths: string;
  readonly source: string;
}

/** Semitones above the root, as spelled out by the same sources. */
export const chordSemitones: Readonly<Record<string, string>> = {
  maj: '0 4 7',
  min: '0 3 7',
  dim: '0 3 6',
  aug: '0 4 8',
  maj7: '0 4 7 11',
  m7: '0 3 7 10',
  '7': '0 4 7 10',
  m7b5: '0 3 6 10',
  dim7: '0 3 6 9',
  'm(maj7)': '0 3 7 11',
  'maj7#5': '0 4 8 11',
};

export const chordedScales: readonly ChordedScale[] = [
  {
    scale: 'major',
    formula: '1 2 3 4 5 6 7',
    triads: 'maj min min maj maj min dim',
    sevenths: 'maj7 m7 m7 maj7 7 m7 m7b5',
    source:
      'Kostka and Payne ch. 4 (through a slide set that follows the chapter); R. Kelley, Diatonic Chord Qualities (teaching page)',
  },
  {
    scale: 'natural minor',
    formula: '1 2 b3 4 5 b6 b7',
    triads: 'min dim maj min min maj maj',
    sevenths: 'm7 m7b5 maj7 m7 m7 maj7 7',
    source:
      'R. Kelley, Diatonic Chord Qualities (teaching page); Aldwell and Schachter, Harmony and Voice Leading (recalled)',
  },
  {
    scale: 'harmonic minor',
    formula: '1 2 b3 4 5 b6 7',
    triads: 'min dim aug min maj maj dim',
    sevenths: 'm(maj7) m7b5 maj7#5 m7 7 maj7 dim7',
    source:
      'T. Karlsson, Harmony Part II: Seventh Chord Summary; Wikipedia, Ukrainian Dorian scale, chord table of mode 4; triads also in an essay quoting "i, iio, III+, iv, V, VI, viio (harmonic)"',
  },
  {
    scale: 'melodic minor (ascending)',
    formula: '1 2 b3 4 5 6 7',
    triads: 'min min aug maj maj dim dim',
    sevenths: 'm(maj7) m7 maj7#5 7 7 m7b5 m7b5',
    source: 'T. Karlsson, Harmony Part II: Seventh Chord Summary',
  },
  {
    scale: 'harmonic major',
    formula: '1 2 3 4 5 b6 7',
    triads: 'maj dim min min maj aug dim',
    sevenths: 'maj7 m7b5 m7 m(maj7) 7 maj7#5 dim7',
    source: 'T. Karlsson, Harmony Part II: Seventh Chord Summary',
  },
  {
    scale: 'Dorian #4 (mode 4 of harmonic minor)',
    formula: '1 2 b3 #4 5 6 b7',
    triads: 'min maj maj dim min dim aug',
    sevenths: 'm7 7 maj7 dim7 m(maj7) m7b5 maj7#5',
    source: 'Wikipedia, Ukrainian Dorian scale',
  },
  {
    scale: 'Dorian b5 (mode 2 of harmonic major)',
    formula: '1 2 b3 4 b5 6 b7',
    triads: 'dim min min maj aug dim maj',
    sevenths: '',
    source: 'Wikipedia, Ukrainian Dorian scale (triads row)',
  },
  {
    scale: 'Aeolian dominant (mode 5 of melodic minor)',
    formula: '1 2 3 4 5 b6 b7',
    triads: 'maj dim dim min min aug maj',
    sevenths: '7 m7b5 m7b5 m(maj7) m7 maj7#5 7',
    source: 'Wikipedia, Aeolian dominant scale',
  },
];
