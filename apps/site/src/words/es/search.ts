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
  hint: 'Un nombre, siete notas o menos, acordes, grados, o pasos en semitonos; con una tónica o un instrumento si quieres. Las notas, do re mi o con letras: la o A.',
  listsTitle: 'Todo en listas',
  without:
    'La búsqueda necesita un script. Sin él, todo lo que encuentra está en estas listas, y tu navegador puede buscar dentro de una página.',
  listModes: 'Los 462 modos, con sus fórmulas',
  listFamilies: 'Las 66 familias',
  listInstruments: 'Todos los instrumentos',
  listMap: 'El mapa: todos los modos en una imagen y en una tabla',

  examples: {
    name: 'frijio dominnante',
    alias: 'menor natural',
    /** The English name of the mode that the other name is of. */
    aliasMeans: 'Aeolian',
    place: '4.º modo de la menor armónica',
    root: 'dórico #4 en fa#',
    notes: 'la si do re mi fa sol#',
    fewNotes: 'do mi sol sib',
    instrument: 'bajo de cinco cuerdas',
    where: 'mi frigio en bajo desde el traste 7',
  },

  waysTitle: 'Qué se puede escribir',
  wayHead: 'Escribe',
  meansHead: 'y encuentra',
  wayName: 'un nombre, también con errores o solo empezado',
  wayAlias: 'otro nombre',
  wayPlace: 'el lugar de un modo en su familia',
  wayRoot: 'un nombre sobre una tónica',
  wayNotes: 'notas, la tónica probable primero',
  wayFewNotes: 'algunas notas, en cada escala que las contiene',
  wayChords: 'acordes, en cada escala que los contiene',
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
  inEnglish: 'Leído con do re mi; las páginas escriben las notas en inglés:',
  tookB:
    'B se leyó como si bemol, como en los nombres alemanes y escandinavos. Para el si natural escribe H:',
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
