/**
 * Los textos de las propias páginas. Spanish.
 */
import type * as English from '../en/pages.ts';
import type { SameShape } from '../languages.ts';

export const PAGES: SameShape<typeof English.PAGES> = {
  homeRoundLead:
    'Una familia de escalas tiene siete modos. Aquí están los siete sobre una tónica, en una zona del mástil; las flechas muestran qué notas se han movido desde el modo anterior.',
  homeFamilies: 'Las familias',
  homeFamiliesLead:
    'Hay 462 maneras de elegir siete de las doce notas sobre una tónica. Forman 66 familias de siete modos cada una.',
  namedFamilies: 'Familias con nombre propio',
  otherFamilies: 'Las demás familias, por sus nombres sistemáticos',
  homeInstruments: 'Los instrumentos',

  roundsTitle: 'Rondas',
  roundsLead:
    'Una ronda son los siete modos de una familia desde una tónica, en una zona del mástil: toca la página de arriba abajo y oye cómo una escala se convierte en la siguiente.',
  roundsOnExample:
    'Los enlaces llevan a las rondas desde A; cada ronda tiene las demás tónicas en su página. Esas páginas están en inglés.',
  roundOnRoots: 'Esta ronda desde otras tónicas',
  otherOrders: 'En otros órdenes',

  familiesTitle: 'Familias',
  familiesLead:
    'Una familia son los siete modos que son rotaciones unos de otros, y lleva el nombre de su miembro más conocido. Aquí están las 66.',
  familyModes: 'Sus siete modos',
  chordsOn: 'Acordes sobre los grados',
  chordsOf: 'Acordes sobre los grados de',
  alsoCalled: 'También llamada',
  roundsFrom: 'La ronda desde cada tónica',

  problemStatus: 'Estado HTTP',
  problemDescription: 'Cada ruta de la API, con lo que recibe y lo que responde:',

  modesTitle: 'Modos',
  modesLead:
    'Los 462 modos, cada uno bajo el modo eclesiástico al que más se acerca, el más cercano primero. Cada modo tiene un nombre sistemático; muchos tienen otros.',
  readFrom: 'Modo del que derivan',
  modeOnRoots: 'Sobre cada tónica',
  systematicName: 'Nombre sistemático',
  otherNames: 'Nombres en las fuentes, y quién los da',
  conflicts: 'Un nombre, varias escalas',
  conflictLead: 'Las fuentes no coinciden en estos nombres; se conservan ambos usos.',
  neighbours: 'Vecinos',
  neighboursLead: 'A un grado de distancia, por un semitono, sobre la misma tónica.',
  parallels: 'La misma familia sobre esta tónica',
  parallelsLead: 'Los demás modos de la familia sobre la misma tónica, y qué se mueve para llegar a ellos.',
  relatives: 'Las mismas notas desde otras tónicas',
  sharingSix: 'Escalas que comparten seis notas',
  neck: 'En el mástil',
  stringByString: 'Cuerda por cuerda',
  fretNoteDegree: 'Traste, nota y grado',

  notes: 'Notas',
  strictNotes: 'Notas, una letra cada una',
  readableNotes: 'Notas, para leer',
  degrees: 'Grados',
  degree: 'Grado',
  semitones: 'Semitonos',
  stepsUp: 'Paso hacia arriba',
  formula: 'Fórmula',
  steps: 'Pasos',
  chords: 'Acordes',
  triad: 'Tríada',
  seventh: 'Acorde de séptima',
  onA: 'sobre A',
  readableNote:
    'Escrita con cada letra una sola vez, esta escala necesita más que dobles alteraciones. La línea inferior nombra los mismos sonidos de modo que se puedan leer; allí las letras pueden repetirse.',
  kinder: 'Más fácil de leer escrita como',
  sameSound: 'los mismos sonidos',

  instrumentsTitle: 'Instrumentos',
  instrumentsLead:
    'Todos los instrumentos de trastes que hay aquí, con sus afinaciones habituales. Una afinación propia se puede escribir dondequiera que se elija un instrumento.',
  tunings: 'Afinaciones',
  tuning: 'Afinación',
  openStrings: 'Cuerdas al aire, de grave a aguda',
  reentrant: 'reentrante',
  scaleLength: 'Tiro de cuerda',
  fretCount: 'Trastes',
  naturals: 'Las notas naturales en su mástil',
  everyNote: 'Todas las notas de su mástil',
  fretByFret: 'Notas, traste por traste',
  everyNoteLead: 'En la afinación habitual, cuerdas desde el lado más grave.',
  fret: 'Traste',
  fromNut: 'desde la cejuela',
  roundsOnIt: 'Rondas en él',
  sources: 'Fuentes',
  usual: 'habitual',
  asPicture: 'Lo mismo como imagen',

  lostTitle: 'Esta página no existe',
  lostLead:
    'Puede haber un error en la dirección. Los nombres de los modos están en las direcciones en inglés, con palabras y números, y los sostenidos en letras:',
  lostNear: 'Quizá se buscaba algo de esto:',

  showPicture: 'Mostrar la imagen',
  withoutScript:
    'Sin script, las páginas están dibujadas para la guitarra de seis cuerdas. La misma imagen para otro instrumento, por su nombre en inglés:',
};
