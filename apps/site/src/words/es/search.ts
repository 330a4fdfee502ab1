/**
 * Los textos de la búsqueda. Spanish.
 */
import type * as English from '../en/search.ts';
import type { SameShape } from '../languages.ts';

export const SEARCH: SameShape<typeof English.SEARCH> = {
  title: 'Buscar',
  description:
    'Encuentra un modo, una familia o un instrumento por cualquiera de sus nombres, o una escala por sus notas, su fórmula o sus pasos.',
  lead: 'Por nombre, por notas, por fórmula o por pasos. Los errores al escribir se perdonan.',
  field: '¿Qué buscas?',
  button: 'Buscar',
  hint: 'Un nombre, siete notas o menos, grados, o pasos en semitonos; con una tónica o un instrumento si quieres. Las notas, con letras: A es la.',
  listsTitle: 'Todo en listas',
  without:
    'La búsqueda necesita un script. Sin él, todo lo que encuentra está en estas listas, y tu navegador puede buscar dentro de una página.',
  listModes: 'Los 462 modos, con sus fórmulas',
  listFamilies: 'Las 66 familias',
  listInstruments: 'Todos los instrumentos',
  listMap: 'El mapa: todos los modos en una imagen y en una tabla',

  waysTitle: 'Qué se puede escribir',
  wayHead: 'Escribe',
  meansHead: 'y encuentra',
  wayName: 'un nombre, también con errores o solo empezado',
  wayAlias: 'otro nombre',
  wayPlace: 'el lugar de un modo en su familia',
  wayRoot: 'un nombre sobre una tónica',
  wayNotes: 'notas, la tónica probable primero',
  wayFewNotes: 'algunas notas, en cada escala que las contiene',
  wayFormula: 'una fórmula',
  wayDegrees: 'algunos grados, en cada modo que los tiene',
  waySteps: 'pasos en semitonos, o como T y S, W y H',
  wayInstrument: 'un instrumento o una afinación',
  wayWhere: 'una escala en un instrumento, desde un traste',

  mode: ['modo', 'modos'],
  scale: ['escala', 'escalas'],
  family: ['familia', 'familias'],
  instrument: ['instrumento o afinación', 'instrumentos y afinaciones'],
  modes: 'Modos',
  scales: 'Escalas',
  families: 'Familias',
  instruments: 'Instrumentos y afinaciones',
  nothing: 'No se encontró nada.',
  nothingLead: 'Quizá ayude otra grafía, o una de las maneras de abajo.',
  firstOf: 'se muestran',
  of: 'de',
  alsoCalled: 'también se llama',
  familyOf: 'una familia de siete modos',
  tuningOf: 'una afinación de:',
  lacks: 'sin',
  ofTheNotes: 'de las notas',
  failed:
    'No se pudo cargar el índice de la búsqueda. Las listas de abajo lo contienen todo; inténtalo más tarde.',
};

export const EXAMPLES: SameShape<typeof English.EXAMPLES> = {
  slips: 'frigio dominnante',
  alias: 'menor natural',
  aliasMeans: 'Aeolian',
  place: '4.º modo de la menor armónica',
  onRoot: 'dórico #4 en F#',
  instrument: 'bajo de cinco cuerdas',
  where: 'E frigio en bajo desde el traste 7',
};
