/**
 * The texts of the pages themselves, in one place, so that other languages can follow. British English.
 */

export const PAGES = {
  homeRoundLead:
    'A family of scales has seven modes. Here all seven stand on one root, in one area of the neck; the arrows show which notes moved from the mode before.',
  homeFamilies: 'The families',
  homeFamiliesLead:
    'There are 462 ways to choose seven notes of the twelve above a root. They make 66 families of seven modes each.',
  namedFamilies: 'Families with a name of their own',
  otherFamilies: 'The other families, by their systematic names',
  homeInstruments: 'The instruments',

  roundsTitle: 'Rounds',
  roundsLead:
    'A round is all seven modes of a family from one root, in one area of the neck: play down the page and hear one scale turn into the next.',
  roundsOnExample: 'The links lead to the rounds from A; every round has the other roots on its page.',
  roundOnRoots: 'This round from other roots',
  otherOrders: 'In other orders',

  familiesTitle: 'Families',
  familiesLead:
    'A family is the seven modes that are rotations of one another, named after its best-known member. All 66 are here.',
  familyModes: 'Its seven modes',
  chordsOn: 'Chords on the degrees',
  chordsOf: 'Chords on the degrees of',
  alsoCalled: 'Also called',
  roundsFrom: 'The round from each root',

  problemStatus: 'HTTP status',
  problemDescription: 'Every path of the API, with what it takes and what it answers:',

  modesTitle: 'Modes',
  modesLead:
    'All 462 modes, each under the church mode that it is nearest to, the nearest first. Every mode has one systematic name; many have others.',
  readFrom: 'Read from',
  modeOnRoots: 'On each root',
  systematicName: 'Systematic name',
  otherNames: 'Other names, and who gives them',
  conflicts: 'One name, several scales',
  conflictLead: 'Sources disagree about these names; both uses are kept.',
  neighbours: 'Neighbours',
  neighboursLead: 'One degree away, by one semitone, on the same root.',
  parallels: 'The same family on this root',
  parallelsLead: 'The other modes of the family on the same root, and what moves to reach them.',
  relatives: 'The same notes from other roots',
  sharingSix: 'Scales that share six notes',
  neck: 'On the neck',
  stringByString: 'String by string',
  fretNoteDegree: 'Fret, note and degree',

  notes: 'Notes',
  strictNotes: 'Notes, one letter each',
  readableNotes: 'Notes, to read',
  degrees: 'Degrees',
  degree: 'Degree',
  semitones: 'Semitones',
  stepsUp: 'Step up',
  formula: 'Formula',
  steps: 'Steps',
  chords: 'Chords',
  triad: 'Triad',
  seventh: 'Seventh chord',
  onA: 'on A',
  readableNote:
    'Written with each letter once, this scale needs more than double accidentals. The lower line names the same sounds so that they can be read; letters may repeat there.',
  kinder: 'Kinder to read as',
  sameSound: 'the same sounds',

  instrumentsTitle: 'Instruments',
  instrumentsLead:
    'Every fretted instrument here, with its usual tunings. A tuning of your own can be typed wherever an instrument is chosen.',
  tunings: 'Tunings',
  tuning: 'Tuning',
  openStrings: 'Open strings, low to high',
  reentrant: 're-entrant',
  scaleLength: 'Scale length',
  fretCount: 'Frets',
  naturals: 'The naturals on its neck',
  everyNote: 'Every note of its neck',
  fretByFret: 'Notes, fret by fret',
  everyNoteLead: 'In the usual tuning, strings from the lowest-sounding side.',
  fret: 'Fret',
  fromNut: 'from the nut',
  roundsOnIt: 'Rounds on it',
  sources: 'Sources',
  usual: 'usual',
  asPicture: 'The same as a picture',

  lostTitle: 'There is no such page',
  lostLead:
    'The address may have a slip in it. The names of modes stand in addresses as words and numbers, sharps spelled out:',
  lostNear: 'Perhaps one of these was meant:',

  showPicture: 'Show the picture',
  withoutScript:
    'Without a script the pages are drawn for the six-string guitar. The same picture for another instrument, by its name:',
} as const;
