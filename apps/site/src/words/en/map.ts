/**
 * The texts of the map. British English.
 */

export const MAP = {
  title: 'The map of the modes',
  description:
    'All 462 modes of the 66 seven-note families in one picture: a column is a family, height is brightness, and neighbours lie one row apart.',
  lead: 'All 462 modes in one picture. A column is a family, from even steps at the left to uneven ones at the right; the higher a mark, the brighter its mode.',

  pictureLabel: 'Map of the modes, scrolls',
  skip: 'Skip the picture: the tables below say the same',
  zoom: 'Size',
  sizes: [
    ['whole', 'whole'],
    ['1', 'plain'],
    ['2', 'twice'],
    ['4', 'four times'],
  ],
  keysHint:
    'With the keyboard: Tab into the map, then the arrow keys (up is brighter, left and right are the next families), Enter to open, + and − to change the size. With a mouse: drag to move, the wheel with the Control key to change the size.',
  brighter: 'bright',
  darker: 'dark',
  largestSteps: 'largest steps',

  keyTitle: 'How to read it',
  keyDegree:
    'Number and shape say which mode of its family it is: a shape has as many corners as its number, the disc is the first.',
  keyChurch: 'The seven church modes are full; they hang in the first column.',
  keyNamed: 'A strong outline has a name in the trade, a thin one is named by the rule.',
  keyLowered: 'read from its church mode with lowered degrees',
  keyRaised: 'read from its church mode with raised degrees',

  showsTitle: 'What it shows',
  showsRows:
    'Raise one degree of any mode by a semitone and you are one row higher, wherever you land. So neighbours always lie in the rows next above and below, and a route from one mode to another is a climb.',
  showsMiddle:
    'Every family hangs about the line of Dorian: the seven modes of a family are, on the average, exactly as bright as Dorian. The more even the steps, the closer they stay to it; the major scale stays closest of all, with seven rows in succession.',
  showsMirror:
    'Turn a family’s steps round and you have its mirror image, as bright below the line as it was above. The two stand side by side, like harmonic minor and harmonic major; a family that is its own mirror image stands alone, like the major scale, whose Dorian reads the same both ways.',
  showsNames:
    'Every family with a name of its own stands at the left: none of them has a step of more than three semitones.',

  tablesTitle: 'The map in words',
  tablesLead:
    'Family by family, each with its modes from bright to dark; the number before a mode is its degree, the one after it its brightness.',
  familyHead: 'Family',
  modesHead: 'Modes from bright to dark',
  mirrorOf: 'mirror image of',
  ownMirror: 'its own mirror image',

  neighbours: 'Neighbours',
  neighboursLead: 'one degree by one semitone away',
  compareWith: 'Compare with',
  routeFrom: 'Route from',
  pointed: 'The mark you point at is named here; what is next to it stands below the picture.',
  point:
    'Point at a mark, or move to one with the arrow keys, to see what it is and which modes are next to it.',
} as const;
