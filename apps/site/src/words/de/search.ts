/**
 * Die Texte der Suche. German.
 */
import type * as English from '../en/search.ts';
import type { SameShape } from '../languages.ts';

export const SEARCH: SameShape<typeof English.SEARCH> = {
  title: 'Suche',
  description:
    'Finde einen Modus, eine Familie oder ein Instrument unter jedem seiner Namen, eine Skala nach ihren Tönen, ihrer Formel oder ihren Schritten.',
  lead: 'Nach Name, Tönen, Formel oder Schritten. Tippfehler werden verziehen.',
  field: 'Was suchst du?',
  button: 'Suchen',
  hint: 'Ein Name, sieben Töne oder weniger, Akkorde, Stufen, oder Schritte in Halbtönen; wenn du willst, mit Grundton oder Instrument. H, B und Fis heißen wie im Deutschen.',
  listsTitle: 'Alles in Listen',
  without:
    'Die Suche braucht ein Skript. Ohne Skript steht alles, was sie findet, in diesen Listen, und dein Browser kann auf einer Seite suchen.',
  listModes: 'Alle 462 Modi mit ihren Formeln',
  listFamilies: 'Alle 66 Familien',
  listInstruments: 'Alle Instrumente',
  listMap: 'Die Karte: alle Modi in einem Bild und als Tabelle',

  examples: {
    name: 'phrygich dominnant',
    alias: 'natürliches Moll',
    /** The English name of the mode that the other name is of. */
    aliasMeans: 'Aeolian',
    place: '4. Modus von harmonisch Moll',
    root: 'dorisch #4 in Fis',
    notes: 'A H C D E F Gis',
    fewNotes: 'C E G B',
    instrument: 'fünfsaitiger Bass',
    where: 'E phrygisch auf Bass ab Bund 7',
  },

  waysTitle: 'Was sich eingeben lässt',
  wayHead: 'Eingabe',
  meansHead: 'findet',
  wayName: 'einen Namen, auch mit Tippfehlern oder nur den Anfang',
  wayAlias: 'einen anderen Namen',
  wayPlace: 'den Platz eines Modus in seiner Familie',
  wayRoot: 'einen Namen auf einem Grundton',
  wayNotes: 'Töne, den wahrscheinlichen Grundton zuerst',
  wayFewNotes: 'einige Töne, in jeder Skala, die sie enthält',
  wayChords: 'Akkorde, in jeder Skala, die sie enthält',
  wayFormula: 'eine Formel',
  wayDegrees: 'einige Stufen, in jedem Modus, der sie hat',
  waySteps: 'Schritte in Halbtönen, oder als T und S, W und H',
  wayInstrument: 'ein Instrument oder eine Stimmung',
  wayWhere: 'eine Skala auf einem Instrument, ab einem Bund',

  mode: ['Modus', 'Modi'],
  scale: ['Skala', 'Skalen'],
  family: ['Familie', 'Familien'],
  instrument: ['Instrument oder Stimmung', 'Instrumente und Stimmungen'],
  modes: 'Modi',
  scales: 'Skalen',
  families: 'Familien',
  instruments: 'Instrumente und Stimmungen',
  inEnglish: 'In deutschen Namen gelesen; die Seiten schreiben Töne englisch:',
  tookB: 'B ist hier das deutsche B, englisch B♭. Ist das englische B gemeint, tippe H:',
  nothing: 'Nichts gefunden.',
  nothingLead: 'Vielleicht hilft eine andere Schreibweise oder eine der Möglichkeiten unten.',
  firstOf: 'die ersten',
  of: 'von',
  alsoCalled: 'auch genannt:',
  familyOf: 'eine Familie von sieben Modi',
  tuningOf: 'eine Stimmung für:',
  lacks: 'ohne',
  ofTheNotes: 'der Töne',
  failed:
    'Das Verzeichnis der Suche konnte nicht geladen werden. Die Listen unten enthalten alles; versuche es später noch einmal.',
};
