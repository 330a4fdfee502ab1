/**
 * Los textos de la interfaz. Spanish.
 */
import type * as English from '../en/interface.ts';
import type { SameShape } from '../languages.ts';

export const SITE_NAME: SameShape<typeof English.SITE_NAME> = 'Stillroot';

export const SITE_SENTENCE: SameShape<typeof English.SITE_SENTENCE> =
  'Cada modo de cada escala de siete notas, desde una tónica y en una zona del mástil, en el instrumento de trastes que tengas en las manos.';

export const NAVIGATION: SameShape<typeof English.NAVIGATION> = {
  skip: 'Saltar al contenido',
  label: 'Principal',
  rounds: 'Rondas',
  families: 'Familias',
  modes: 'Modos',
  instruments: 'Instrumentos',
  map: 'Mapa',
  compare: 'Comparar',
  routes: 'Rutas',
  search: 'Buscar',
  lesson: 'Lección',
  trail: 'Estás aquí',
  languages: 'Idiomas',
};

export const LABEL_NAMES: SameShape<typeof English.LABEL_NAMES> = {
  degrees: 'grados',
  notes: 'notas',
  fingers: 'dedos',
};

export const STYLE_NAMES: SameShape<typeof English.STYLE_NAMES> = {
  position: 'en una posición',
  'three-per-string': 'tres por cuerda',
  'one-string': 'sobre una cuerda',
  'two-octaves': 'en dos octavas',
  'whole-range': 'en toda la extensión',
  'across-the-neck': 'por el mástil, zona por zona',
};

export const ORDER_NAMES: SameShape<typeof English.ORDER_NAMES> = {
  parent: 'por grado de la escala madre',
  brightness: 'de brillante a oscuro',
  'fewest-moves': 'con el menor número de notas movidas',
};

export const CHOOSER: SameShape<typeof English.CHOOSER> = {
  family: 'Familia',
  root: 'Tónica',
  instrument: 'Instrumento',
  tuning: 'Afinación',
  typedTuning: 'Escrita a mano …',
  openStrings: 'Cuerdas al aire, de grave a aguda',
  openStringsHint: 'Por ejemplo B1-E2-A2-D3-G3-B3-E4; el do central es C4.',
  tuningHint: 'Déjalo vacío para la habitual, o escribe las cuerdas al aire, de grave a aguda: E1-A1-D2-G2.',
  capo: 'Cejilla en el traste',
  labels: 'Rótulos',
  hand: 'Mano',
  right: 'diestra',
  left: 'zurda',
  style: 'Disposición',
  fret: 'Desde el traste',
  anywhere: 'cualquiera',
  reach: 'Alcance en mm',
  order: 'Orden',
  show: 'Mostrar esta ronda',
  goToPicture: 'Ir a los mástiles',
  change: 'cambiar',
  summary: 'Elegir instrumento, afinación, cejilla, mano y más',
  ownSummary: 'Elegir afinación, cejilla, mano y rótulos',
  roundSummary: 'Elegir familia, tónica, instrumento, afinación y más',
  failed: 'No se pudieron cargar los demás instrumentos. La página está completa; inténtalo más tarde.',
  capoShort: 'cejilla en el traste',
  notInstrument: 'uno de los instrumentos de la lista',
  notMode:
    'el nombre de un modo como frigio dominante, un lugar como 4.º modo de la menor armónica, una fórmula, o siete pasos',
  notTuning: 'una afinación de este instrumento, o cuerdas al aire como E2-A2-D3-G3-B3-E4',
};

export const FIGURES: SameShape<typeof English.FIGURES> = {
  scrollHint: 'se desplaza hacia los lados',
  before: 'Notas movidas',
  cannot: 'Esto no se puede tocar:',
  insteadOf: 'Lo más cercano que sí se puede:',
  leftOut: 'Se omite:',
  opens: 'la mano se abre',
  stays: 'la mano no se mueve',
  travels: 'la mano se desplaza',
  openString: 'al aire',
  string: 'Cuerda',
  frets: 'Trastes',
  fingers: 'Dedos',
  notes: 'Notas',
};

export const KEY: SameShape<typeof English.KEY> = {
  shapes: 'Una figura tiene tantos vértices como indica su grado; el disco es la tónica.',
  lowered: 'rebajado respecto a la escala mayor',
  raised: 'elevado respecto a la escala mayor',
  moved: 'dónde estaba una nota en el modo anterior; la flecha muestra adónde fue',
  quiet: 'en la escala, pero no en esta digitación',
};
