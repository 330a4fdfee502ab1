/**
 * Die Texte zu dem, was sich wählen lässt, und dazu, wie ein Fingersatz beschrieben wird. German.
 */
import type * as English from '../en/choices.ts';
import type { SameShape } from '../languages.ts';
import { fretWords } from '../measures.ts';
import { counted, joined, lengthWords, tenths } from './numbers.ts';

export const CHOICES: SameShape<typeof English.CHOICES> = {
  onTheNeck: 'Am Griffbrett',
  theHand: 'Hand und Fingersatz',
  theView: 'Auf der Seite',
  more: 'Kapodaster-Saiten, Bünde, Handgröße, Beschriftung, Tonnamen und mehr',
  transpose: 'Höher oder tiefer gestimmt (Halbtöne)',
  capoStrings: 'Kapodaster auf Saiten',
  capoStringsHint: 'Zum Beispiel 1-3; alle, wenn leer.',
  frets: 'Zahl der Bünde',
  scaleLength: 'Mensur in mm',
  scaleLengthHint: 'Eine, oder tiefste und höchste Saite: 686-648.',
  own: 'die eigene',
  all: 'alle',
  handSize: 'Größe der Hand',
  open: 'Leere Saiten',
  sharing: 'Die sieben teilen',
  compare: 'Pfeile von',
  names: 'Namen der Töne',
  accidentals: 'Vorzeichen',
  tuningHint: 'Zum Beispiel H1-E2-A2-D3-G3-H3-E4, E A d g h e′, DADGAD oder Drop D.',
  capoFrets: 'Dieses Griffbrett hat die Bünde',
  notStrings: 'Nummern von Saiten wie 1,2,3 oder 1-3',
  notLength: 'eine Länge in Millimetern wie 648, oder zwei wie 686-648',
};

export const OPEN_NAMES: SameShape<typeof English.OPEN_NAMES> = {
  'near-the-nut': 'wo die Hand nahe am Sattel ist',
  anywhere: 'überall',
  never: 'nie',
};

export const SHARING_NAMES: SameShape<typeof English.SHARING_NAMES> = {
  'one-area': 'eine Lage',
  'own-areas': 'eigene Lagen, so nah wie möglich',
};

export const COMPARE_NAMES: SameShape<typeof English.COMPARE_NAMES> = {
  above: 'dem Modus darüber',
  base: 'dem Kirchenmodus, von dem jeder abgeleitet ist',
  first: 'dem ersten Modus',
};

export const NAMING_NAMES: SameShape<typeof English.NAMING_NAMES> = {
  english: 'Englisch: F♯ B♭ B',
  german: 'Deutsch: Fis B H',
  romance: 'Romanisch: fa♯ si♭ si',
  dutch: 'Niederländisch: Fis Bes B',
  scandinavian: 'Skandinavisch: Fiss B H',
  numbers: 'Zahlen: 6 10 11, C ist 0',
};

export const ACCIDENTAL_NAMES: SameShape<typeof English.ACCIDENTAL_NAMES> = {
  signs: 'Zeichen: ♯ ♭',
  ascii: 'einfacher Text: # b',
};

const SIZES = { small: 'klein', medium: 'mittel', large: 'groß' } as const;

export const handSizeName: typeof English.handSizeName = (size, reachMm) =>
  `${SIZES[size]}, reicht ${reachMm} mm`;

export const READING: SameShape<typeof English.READING> = {
  readAs: 'Gelesen als',
  guessed: 'Oktaven vermutet',
  helmholtz: 'in Helmholtz-Schreibweise',
  alsoOf: 'Auch die leeren Saiten von:',
  isNamed: 'Bekannt als',
  inEnglish: 'englisch',
  couldMean: 'Es könnte auch heißen',
};

export const COSTS: SameShape<typeof English.COSTS> = {
  another: 'Eine andere Möglichkeit, es zu spielen',
  next: 'Nächste',
  previous: 'Vorige',
  noMore: 'Mehr gibt es nicht.',
  against: 'Gegenüber',
  ownBase: 'Er ist selbst ein Kirchenmodus.',
};

export const answerWords: typeof English.answerWords = (at, count) =>
  `Möglichkeit ${at} von ${count}, die beste zuerst.`;

export const costWords: typeof English.costWords = ({ travelMm, shifts, stretchMm, stringChanges }) => {
  const travel =
    shifts === 0
      ? 'die Hand bleibt liegen'
      : travelMm === 0
        ? `die Hand bleibt liegen, und ein Finger rutscht ${counted(shifts, 'Mal')}`
        : `die Hand wandert ${lengthWords(travelMm)} in ${counted(shifts, 'Lagenwechsel')}`;
  const stretch =
    stretchMm === 0
      ? 'kein Finger streckt sich'
      : `die Finger strecken sich ${lengthWords(stretchMm)} über ihre eigenen Bünde hinaus, alle Töne zusammengezählt`;
  const changes =
    stringChanges === 0
      ? 'kein unbequemer Saitenwechsel'
      : counted(stringChanges, 'unbequemer Saitenwechsel', 'unbequeme Saitenwechsel');
  return `${travel}; ${stretch}; ${changes}`;
};

export const positionWords: typeof English.positionWords = (positions) => {
  const frets = positions.map(fretWords);
  return positions.length === 1
    ? `die Hand liegt am Bund ${frets[0]}`
    : `die Hand liegt nacheinander an den Bünden ${frets.join(', ')}`;
};

export const chainWords: typeof English.chainWords = (count) =>
  count === 1
    ? 'Eine Lage umfasst jeden Bund, vom Sattel aufwärts.'
    : `${count} Lagen umfassen jeden Bund, vom Sattel aufwärts.`;

export const shiftWords: typeof English.shiftWords = ({ fromFret, toFret, distanceMm }) => {
  if (fromFret === toFret) return `Kein Lagenwechsel: Finger 1 bleibt am Bund ${fretWords(fromFret)}.`;
  const way = toFret > fromFret ? 'hinauf' : 'hinunter';
  return `Lagenwechsel: Finger 1 von Bund ${fretWords(fromFret)} ${way} zu Bund ${fretWords(toFret)}, ${lengthWords(distanceMm)}.`;
};

export const beyondWords: typeof English.beyondWords = ({ string, frets, spanMm }) =>
  `Saite ${string}: Die Bünde ${joined(frets.map(fretWords))} zugleich sind ${lengthWords(spanMm)} weit.`;

export const readingWords: typeof English.readingWords = (names, notation, isGuessed) => {
  const how = isGuessed ? `, ${READING.guessed}` : notation === 'helmholtz' ? ` ${READING.helmholtz}` : '';
  return `${READING.readAs} ${names}${how}.`;
};

export const beginsHigher: typeof English.beginsHigher = (fret, reachMm) =>
  `Keine Oktave von Grundton zu Grundton beginnt am ${fretWords(fret)}. Bund innerhalb einer Reichweite von ${lengthWords(reachMm)}; dies ist die nächste darüber.`;

export const roundBeginsHigher: typeof English.roundBeginsHigher = (fret, reachMm) =>
  `Nicht alle sieben beginnen am ${fretWords(fret)}. Bund innerhalb einer Reichweite von ${lengthWords(reachMm)}; dies ist die nächste Lage darüber.`;

export const areaInWords: typeof English.areaInWords = ({ from, to }) =>
  from === 0 ? `leere Saiten bis Bund ${fretWords(to)}` : `Bünde ${fretWords(from)} bis ${fretWords(to)}`;

const KINDS: SameShape<Readonly<Record<Parameters<typeof English.kindName>[0], string>>> = {
  guitar: 'Gitarren',
  bass: 'Bässe',
  ukulele: 'Ukulelen',
  mandolin: 'Mandolinenfamilie',
  'bouzouki-cittern': 'Bouzoukis und Cistern',
  banjo: 'Banjos',
  'latin-american': 'lateinamerikanische Instrumente',
  bandurria: 'Bandurria-Familie',
  'balalaika-domra': 'Balalaikas und Domras',
  lute: 'Lauten und Vihuelas',
  dulcimer: 'Dulcimer',
  pipa: 'Pipas',
};

export const kindName: typeof English.kindName = (kind) => KINDS[kind];

export const onStrings: typeof English.onStrings = (strings) =>
  `auf ${strings.length === 1 ? 'Saite' : 'den Saiten'} ${joined(strings.map(String))}`;

export const scaleLengthWords: typeof English.scaleLengthWords = (lengthsMm) =>
  `Mensur ${lengthsMm.map((length) => tenths(length)).join(' bis ')} mm`;

export const fretCountWords: typeof English.fretCountWords = (count) => counted(count, 'Bund', 'Bünde');
