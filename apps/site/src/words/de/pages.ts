/**
 * Die Texte der Seiten selbst. German.
 */
import type * as English from '../en/pages.ts';
import type { SameShape } from '../languages.ts';

export const PAGES: SameShape<typeof English.PAGES> = {
  homeRoundLead:
    'Eine Familie von Skalen hat sieben Modi. Hier stehen alle sieben auf einem Grundton, in einer Lage des Griffbretts; die Pfeile zeigen, welche Töne sich seit dem vorigen Modus bewegt haben.',
  homeFamilies: 'Die Familien',
  homeFamiliesLead:
    'Es gibt 462 Möglichkeiten, über einem Grundton sieben der zwölf Töne zu wählen. Sie bilden 66 Familien zu je sieben Modi.',
  namedFamilies: 'Familien mit eigenem Namen',
  otherFamilies: 'Die übrigen Familien, nach ihren systematischen Namen',
  homeInstruments: 'Die Instrumente',

  roundsTitle: 'Runden',
  roundsLead:
    'Eine Runde sind alle sieben Modi einer Familie von einem Grundton aus, in einer Lage des Griffbretts: Spiele die Seite von oben nach unten und höre, wie eine Skala zur nächsten wird.',
  roundsOnExample:
    'Die Links führen zu den Runden auf A; jede Runde nennt auf ihrer Seite die anderen Grundtöne. Diese Seiten sind auf Englisch.',
  roundOnRoots: 'Diese Runde auf anderen Grundtönen',
  otherOrders: 'In anderer Reihenfolge',

  familiesTitle: 'Familien',
  familiesLead:
    'Eine Familie sind die sieben Modi, die durch Drehung auseinander hervorgehen, benannt nach ihrem bekanntesten Mitglied. Alle 66 sind hier.',
  familyModes: 'Ihre sieben Modi',
  chordsOn: 'Akkorde auf den Stufen',
  chordsOf: 'Akkorde auf den Stufen von',
  alsoCalled: 'Auch genannt:',
  roundsFrom: 'Die Runde auf jedem Grundton',

  problemStatus: 'HTTP-Status',
  problemDescription: 'Jeder Pfad der API, was er nimmt und was er antwortet:',

  modesTitle: 'Modi',
  modesLead:
    'Alle 462 Modi, jeder unter dem Kirchenmodus, dem er am nächsten ist, der nächste zuerst. Jeder Modus hat einen systematischen Namen; viele haben weitere.',
  readFrom: 'Abgeleitet von',
  modeOnRoots: 'Auf jedem Grundton',
  systematicName: 'Systematischer Name',
  otherNames: 'Namen in den Quellen, und wer sie gibt',
  conflicts: 'Ein Name, mehrere Skalen',
  conflictLead: 'Die Quellen sind sich über diese Namen nicht einig; beide Verwendungen bleiben stehen.',
  neighbours: 'Nachbarn',
  neighboursLead: 'Eine Stufe entfernt, um einen Halbton, auf demselben Grundton.',
  parallels: 'Dieselbe Familie auf diesem Grundton',
  parallelsLead:
    'Die anderen Modi der Familie auf demselben Grundton, und was sich bewegt, um sie zu erreichen.',
  relatives: 'Dieselben Töne von anderen Grundtönen',
  sharingSix: 'Skalen mit sechs gemeinsamen Tönen',
  neck: 'Auf dem Griffbrett',
  stringByString: 'Saite für Saite',
  fretNoteDegree: 'Bund, Ton und Stufe',

  notes: 'Töne',
  strictNotes: 'Töne, je ein Buchstabe',
  readableNotes: 'Töne, zum Lesen',
  degrees: 'Stufen',
  degree: 'Stufe',
  semitones: 'Halbtöne',
  stepsUp: 'Schritt aufwärts',
  formula: 'Formel',
  steps: 'Schritte',
  chords: 'Akkorde',
  triad: 'Dreiklang',
  seventh: 'Septakkord',
  onA: 'auf A',
  readableNote:
    'Mit jedem Buchstaben einmal geschrieben braucht diese Skala mehr als doppelte Vorzeichen. Die untere Zeile nennt dieselben Klänge so, dass man sie lesen kann; Buchstaben dürfen sich dort wiederholen.',
  kinder: 'Besser lesbar geschrieben als',
  sameSound: 'derselbe Klang',

  instrumentsTitle: 'Instrumente',
  instrumentsLead:
    'Alle Bundinstrumente, die es hier gibt, mit ihren üblichen Stimmungen. Eine eigene Stimmung lässt sich überall eingeben, wo ein Instrument gewählt wird.',
  tunings: 'Stimmungen',
  tuning: 'Stimmung',
  openStrings: 'Leere Saiten, von tief nach hoch',
  reentrant: 'rückläufig',
  scaleLength: 'Mensur',
  fretCount: 'Bünde',
  naturals: 'Die Stammtöne auf seinem Griffbrett',
  everyNote: 'Jeder Ton seines Griffbretts',
  fretByFret: 'Töne, Bund für Bund',
  everyNoteLead:
    'In der üblichen Stimmung, Saiten von der am tiefsten klingenden Seite. B ist das deutsche H, B♭ das deutsche B.',
  fret: 'Bund',
  fromNut: 'ab Sattel',
  roundsOnIt: 'Runden darauf',
  sources: 'Quellen',
  usual: 'üblich',
  asPicture: 'Dasselbe als Bild',

  lostTitle: 'Diese Seite gibt es nicht',
  lostLead:
    'Vielleicht enthält die Adresse einen Tippfehler. Die Namen der Modi stehen in Adressen englisch, als Wörter und Ziffern, Kreuze ausgeschrieben:',
  lostNear: 'Vielleicht war eines davon gemeint:',

  showPicture: 'Das Bild zeigen',
  withoutScript:
    'Ohne Skript sind die Seiten für die sechssaitige Gitarre gezeichnet. Dasselbe Bild für ein anderes Instrument, mit englischem Namen:',
};
