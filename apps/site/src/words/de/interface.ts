/**
 * Die Texte der Oberfläche. German.
 */
import type * as English from '../en/interface.ts';
import type { SameShape } from '../languages.ts';

export const SITE_NAME: SameShape<typeof English.SITE_NAME> = 'Stillroot';

export const SITE_SENTENCE: SameShape<typeof English.SITE_SENTENCE> =
  'Jeder Modus jeder siebentönigen Skala, von einem Grundton aus und in einer Lage des Griffbretts, auf jedem Bundinstrument, das du in der Hand hast.';

export const NAVIGATION: SameShape<typeof English.NAVIGATION> = {
  skip: 'Zum Inhalt springen',
  label: 'Hauptmenü',
  rounds: 'Runden',
  families: 'Familien',
  modes: 'Modi',
  instruments: 'Instrumente',
  map: 'Karte',
  compare: 'Vergleich',
  routes: 'Wege',
  search: 'Suche',
  lesson: 'Lektion',
  trail: 'Du bist hier',
  languages: 'Sprachen',
};

export const LABEL_NAMES: SameShape<typeof English.LABEL_NAMES> = {
  degrees: 'Stufen',
  notes: 'Töne',
  fingers: 'Finger',
};

export const STYLE_NAMES: SameShape<typeof English.STYLE_NAMES> = {
  position: 'in einer Lage',
  'three-per-string': 'drei Töne je Saite',
  'one-string': 'auf einer Saite',
  'two-octaves': 'über zwei Oktaven',
  'whole-range': 'über den ganzen Umfang',
  'across-the-neck': 'über das Griffbrett, Lage für Lage',
};

export const ORDER_NAMES: SameShape<typeof English.ORDER_NAMES> = {
  parent: 'nach der Stufe der Stammskala',
  brightness: 'von hell nach dunkel',
  'fewest-moves': 'mit den wenigsten bewegten Tönen',
};

export const CHOOSER: SameShape<typeof English.CHOOSER> = {
  family: 'Familie',
  root: 'Grundton',
  instrument: 'Instrument',
  tuning: 'Stimmung',
  typedTuning: 'Selbst eingeben …',
  openStrings: 'Leere Saiten, von tief nach hoch',
  openStringsHint: 'Zum Beispiel B1-E2-A2-D3-G3-B3-E4; das eingestrichene C ist C4, B ist das deutsche H.',
  tuningHint:
    'Leer lassen für die übliche Stimmung, oder leere Saiten von tief nach hoch eingeben: E1-A1-D2-G2.',
  capo: 'Kapodaster am Bund',
  labels: 'Beschriftung',
  hand: 'Hand',
  right: 'rechtshändig',
  left: 'linkshändig',
  style: 'Anordnung',
  fret: 'Ab Bund',
  anywhere: 'egal',
  reach: 'Spannweite in mm',
  order: 'Reihenfolge',
  show: 'Diese Runde zeigen',
  goToPicture: 'Zu den Griffbrettern',
  change: 'ändern',
  summary: 'Instrument, Stimmung, Kapodaster, Hand und mehr wählen',
  ownSummary: 'Stimmung, Kapodaster, Hand und Beschriftung wählen',
  roundSummary: 'Familie, Grundton, Instrument, Stimmung und mehr wählen',
  failed:
    'Die anderen Instrumente konnten nicht geladen werden. Die Seite selbst ist vollständig; versuche es später noch einmal.',
  capoShort: 'Kapodaster am Bund',
  notInstrument: 'eines der Instrumente aus der Liste',
  notMode:
    'der Name eines Modus wie Phrygisch dominant, ein Platz wie 4. Modus von Harmonisch Moll, eine Formel, oder sieben Schritte',
  notTuning: 'eine Stimmung dieses Instruments, oder leere Saiten wie E2-A2-D3-G3-B3-E4',
};

export const FIGURES: SameShape<typeof English.FIGURES> = {
  scrollHint: 'lässt sich seitwärts schieben',
  before: 'Bewegte Töne',
  cannot: 'Das ist nicht spielbar:',
  insteadOf: 'Am nächsten kommt:',
  leftOut: 'Ausgelassen:',
  opens: 'die Hand öffnet sich auf',
  stays: 'die Hand bleibt liegen',
  travels: 'die Hand wandert',
  openString: 'leer',
  string: 'Saite',
  frets: 'Bünde',
  fingers: 'Finger',
  notes: 'Töne',
};

export const KEY: SameShape<typeof English.KEY> = {
  shapes: 'Eine Form hat so viele Ecken, wie ihre Stufe zählt; die Scheibe ist der Grundton.',
  lowered: 'gegenüber der Durtonleiter erniedrigt',
  raised: 'gegenüber der Durtonleiter erhöht',
  moved: 'wo ein Ton im vorigen Modus lag; der Pfeil zeigt, wohin er ging',
  quiet: 'in der Skala, aber nicht Teil dieses Fingersatzes',
};
