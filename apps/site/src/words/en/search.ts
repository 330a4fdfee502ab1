/**
 * The texts of the search. British English.
 */

export const SEARCH = {
  title: 'Search',
  description:
    'Find a mode, a family or an instrument by any of its names, a scale by its notes, its formula or its steps.',
  lead: 'By name, by notes, by formula or by steps. Slips of typing are forgiven.',
  field: 'What are you looking for?',
  button: 'Search',
  hint: 'A name, seven notes or fewer, chords, degrees, or steps in semitones; with a root or an instrument if you like.',
  listsTitle: 'Everything in lists',
  without:
    'The search needs a script. Without one, all that it finds stands in these lists, and your browser can search within a page.',
  listModes: 'All 462 modes, with their formulas',
  listFamilies: 'All 66 families',
  listInstruments: 'All instruments',
  listMap: 'The map: all modes in one picture, and as a table',

  /** What can be typed, as examples. */
  examples: {
    name: 'phrigian dominent',
    alias: 'acoustic',
    /** The English name of the mode that the other name is of. */
    aliasMeans: 'Lydian dominant',
    place: '4th mode of harmonic minor',
    root: 'dorian #4 in F#',
    notes: 'A B C D E F G#',
    fewNotes: 'C E G Bb',
    instrument: 'five string bass',
    where: 'E phrygian on bass from fret 7',
  },

  waysTitle: 'What can be typed',
  wayHead: 'Type',
  meansHead: 'and find',
  wayName: 'a name, also with slips or only begun',
  wayAlias: 'another name',
  wayPlace: 'the place of a mode in its family',
  wayRoot: 'a name on a root',
  wayNotes: 'notes, the likely root first',
  wayFewNotes: 'some notes, in every scale that holds them',
  wayChords: 'chords, in every scale that holds them',
  wayFormula: 'a formula',
  wayDegrees: 'some degrees, in every mode that has them',
  waySteps: 'steps in semitones, or as T and S, W and H',
  wayInstrument: 'an instrument or a tuning',
  wayWhere: 'a scale on an instrument, from a fret',

  mode: ['mode', 'modes'],
  scale: ['scale', 'scales'],
  family: ['family', 'families'],
  instrument: ['instrument or tuning', 'instruments and tunings'],
  modes: 'Modes',
  scales: 'Scales',
  families: 'Families',
  instruments: 'Instruments and tunings',
  inEnglish: 'Read in your own names of notes; the pages have English ones:',
  tookB: 'B was taken for B flat, as German and Scandinavian names have it. For the English B type H:',
  nothing: 'Nothing was found.',
  nothingLead: 'Another spelling may help, or one of the ways below.',
  firstOf: 'the first',
  of: 'of',
  alsoCalled: 'also called',
  familyOf: 'a family of seven modes',
  tuningOf: 'a tuning of the',
  lacks: 'lacks',
  ofTheNotes: 'of the notes',
  failed: 'The index of the search could not be fetched. The lists below hold everything; try again later.',
} as const;
