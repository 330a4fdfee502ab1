/**
 * Los textos de lo que se puede elegir, y de cómo se cuenta una digitación. Spanish.
 */
import type * as English from '../en/choices.ts';
import type { SameShape } from '../languages.ts';
import { fretWords } from '../measures.ts';
import { counted, joined, lengthWords, tenths } from './numbers.ts';

export const CHOICES: SameShape<typeof English.CHOICES> = {
  onTheNeck: 'En el mástil',
  theHand: 'Mano y digitación',
  theView: 'En la página',
  more: 'Cuerdas de la cejilla, trastes, tamaño de la mano, rótulos, nombres de notas y más',
  transpose: 'Afinado más agudo o más grave (semitonos)',
  capoStrings: 'Cejilla sobre las cuerdas',
  capoStringsHint: 'Por ejemplo 1-3; todas si está vacío.',
  frets: 'Número de trastes',
  scaleLength: 'Tiro de cuerda en mm',
  scaleLengthHint: 'Uno, o el de la cuerda más grave y el de la más aguda: 686-648.',
  own: 'el suyo',
  all: 'todas',
  handSize: 'Tamaño de la mano',
  open: 'Cuerdas al aire',
  sharing: 'Los siete comparten',
  compare: 'Flechas desde',
  names: 'Nombres de las notas',
  accidentals: 'Alteraciones',
  tuningHint: 'Por ejemplo mi2-la2-re3-sol3-si3-mi4, E A d g b e′, DADGAD o drop re.',
  capoFrets: 'Este mástil tiene los trastes',
  notStrings: 'números de cuerdas como 1,2,3 o 1-3',
  notLength: 'una longitud en milímetros como 648, o dos como 686-648',
};

export const OPEN_NAMES: SameShape<typeof English.OPEN_NAMES> = {
  'near-the-nut': 'donde la mano está cerca de la cejuela',
  anywhere: 'en cualquier parte',
  never: 'nunca',
};

export const SHARING_NAMES: SameShape<typeof English.SHARING_NAMES> = {
  'one-area': 'una sola zona',
  'own-areas': 'zonas propias, lo más cerca posible',
};

export const COMPARE_NAMES: SameShape<typeof English.COMPARE_NAMES> = {
  above: 'el modo de arriba',
  base: 'el modo eclesiástico del que deriva cada uno',
  first: 'el primer modo',
};

export const NAMING_NAMES: SameShape<typeof English.NAMING_NAMES> = {
  english: 'Inglés: F♯ B♭ B',
  german: 'Alemán: Fis B H',
  romance: 'Latino: fa♯ si♭ si',
  dutch: 'Neerlandés: Fis Bes B',
  scandinavian: 'Escandinavo: Fiss B H',
  numbers: 'Números: 6 10 11, C es 0',
};

export const ACCIDENTAL_NAMES: SameShape<typeof English.ACCIDENTAL_NAMES> = {
  signs: 'signos: ♯ ♭',
  ascii: 'texto simple: # b',
};

const SIZES = { small: 'pequeña', medium: 'mediana', large: 'grande' } as const;

export const handSizeName: typeof English.handSizeName = (size, reachMm) =>
  `${SIZES[size]}, alcanza ${reachMm} mm`;

export const READING: SameShape<typeof English.READING> = {
  readAs: 'Leído como',
  guessed: 'octavas supuestas',
  helmholtz: 'en notación de Helmholtz',
  alsoOf: 'También las cuerdas al aire de:',
  isNamed: 'Conocida como',
  inEnglish: 'en inglés',
  couldMean: 'También podría significar',
};

export const COSTS: SameShape<typeof English.COSTS> = {
  another: 'Otra manera de tocarlo',
  next: 'Siguiente',
  previous: 'Anterior',
  noMore: 'No hay más.',
  against: 'Frente a',
  ownBase: 'Es él mismo un modo eclesiástico.',
};

export const answerWords: typeof English.answerWords = (at, count) =>
  `Manera ${at} de ${count}, la mejor primero.`;

export const costWords: typeof English.costWords = ({ travelMm, shifts, stretchMm, stringChanges }) => {
  const travel =
    shifts === 0
      ? 'la mano no se mueve'
      : travelMm === 0
        ? `la mano no se mueve, y un dedo se desliza ${counted(shifts, 'vez', 'veces')}`
        : `la mano se desplaza ${lengthWords(travelMm)} en ${counted(shifts, 'cambio', 'cambios')}`;
  const stretch =
    stretchMm === 0
      ? 'ningún dedo se estira'
      : `los dedos se estiran ${lengthWords(stretchMm)} más allá de sus trastes, sumando todas las notas`;
  const changes =
    stringChanges === 0
      ? 'ningún cambio de cuerda incómodo'
      : counted(stringChanges, 'cambio de cuerda incómodo', 'cambios de cuerda incómodos');
  return `${travel}; ${stretch}; ${changes}`;
};

export const positionWords: typeof English.positionWords = (positions) => {
  const frets = positions.map(fretWords);
  return positions.length === 1
    ? `la mano está en el traste ${frets[0]}`
    : `la mano está en los trastes ${frets.join(', ')}, uno tras otro`;
};

export const chainWords: typeof English.chainWords = (count) =>
  count === 1
    ? 'Una zona cubre todos los trastes, desde la cejuela hacia arriba.'
    : `${count} zonas cubren todos los trastes, desde la cejuela hacia arriba.`;

export const shiftWords: typeof English.shiftWords = ({ fromFret, toFret, distanceMm }) => {
  if (fromFret === toFret) return `Sin cambio: el dedo 1 queda en el traste ${fretWords(fromFret)}.`;
  const way = toFret > fromFret ? 'sube' : 'baja';
  return `Cambio: el dedo 1 ${way} del traste ${fretWords(fromFret)} al traste ${fretWords(toFret)}, ${lengthWords(distanceMm)}.`;
};

export const beyondWords: typeof English.beyondWords = ({ string, frets, spanMm }) =>
  `Cuerda ${string}: los trastes ${joined(frets.map(fretWords))} a la vez abarcan ${lengthWords(spanMm)}.`;

export const readingWords: typeof English.readingWords = (names, notation, isGuessed) => {
  const how = isGuessed ? `, ${READING.guessed}` : notation === 'helmholtz' ? ` ${READING.helmholtz}` : '';
  return `${READING.readAs} ${names}${how}.`;
};

export const beginsHigher: typeof English.beginsHigher = (fret, reachMm) =>
  `Ninguna octava de tónica a tónica empieza en el traste ${fretWords(fret)} con un alcance de ${lengthWords(reachMm)}; esta es la siguiente hacia arriba.`;

export const roundBeginsHigher: typeof English.roundBeginsHigher = (fret, reachMm) =>
  `Los siete no empiezan todos en el traste ${fretWords(fret)} con un alcance de ${lengthWords(reachMm)}; esta es la siguiente zona hacia arriba.`;

export const areaInWords: typeof English.areaInWords = ({ from, to }) =>
  from === 0
    ? `cuerdas al aire hasta el traste ${fretWords(to)}`
    : `trastes ${fretWords(from)} a ${fretWords(to)}`;

const KINDS: SameShape<Readonly<Record<Parameters<typeof English.kindName>[0], string>>> = {
  guitar: 'guitarras',
  bass: 'bajos',
  ukulele: 'ukeleles',
  mandolin: 'familia de la mandolina',
  'bouzouki-cittern': 'buzukis y cistros',
  banjo: 'banjos',
  'latin-american': 'instrumentos latinoamericanos',
  bandurria: 'familia de la bandurria',
  'balalaika-domra': 'balalaicas y domras',
  lute: 'laúdes y vihuelas',
  dulcimer: 'dulcémeles',
  pipa: 'pipas',
};

export const kindName: typeof English.kindName = (kind) => KINDS[kind];

export const onStrings: typeof English.onStrings = (strings) =>
  `en ${strings.length === 1 ? 'la cuerda' : 'las cuerdas'} ${joined(strings.map(String))}`;

export const scaleLengthWords: typeof English.scaleLengthWords = (lengthsMm) =>
  `tiro de cuerda de ${lengthsMm.map((length) => tenths(length)).join(' a ')} mm`;

export const fretCountWords: typeof English.fretCountWords = (count) => counted(count, 'traste', 'trastes');
