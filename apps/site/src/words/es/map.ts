/**
 * Los textos del mapa. Spanish.
 */
import type * as English from '../en/map.ts';
import type { SameShape } from '../languages.ts';

export const MAP: SameShape<typeof English.MAP> = {
  title: 'El mapa de los modos',
  description:
    'Los 462 modos de las 66 familias de siete notas en una imagen: una columna es una familia, la altura es el brillo, y los vecinos están a una fila de distancia.',
  lead: 'Los 462 modos en una imagen. Una columna es una familia, de pasos iguales a la izquierda a desiguales a la derecha; cuanto más alta una marca, más brillante su modo.',

  pictureLabel: 'Mapa de los modos, se desplaza',
  skip: 'Saltar la imagen: las tablas de abajo dicen lo mismo',
  zoom: 'Tamaño',
  sizes: [
    ['whole', 'entero'],
    ['1', 'normal'],
    ['2', 'doble'],
    ['4', 'cuádruple'],
  ],
  keysHint:
    'Con el teclado: Tab para entrar en el mapa, después las flechas (arriba es más brillante, a los lados están las familias siguientes), Intro para abrir, + y − para cambiar el tamaño. Con el ratón: arrastra para mover, la rueda con la tecla Control para cambiar el tamaño.',
  brighter: 'brillante',
  darker: 'oscuro',
  largestSteps: 'paso más grande',

  keyTitle: 'Cómo se lee',
  keyDegree:
    'Número y figura dicen qué modo de su familia es: una figura tiene tantos vértices como su número, el disco es el primero.',
  keyChurch: 'Los siete modos eclesiásticos están rellenos; cuelgan en la primera columna.',
  keyNamed: 'Un contorno grueso tiene un nombre corriente, uno fino lleva el nombre que da la regla.',
  keyLowered: 'derivado de su modo eclesiástico con grados rebajados',
  keyRaised: 'derivado de su modo eclesiástico con grados elevados',

  showsTitle: 'Qué muestra',
  showsRows:
    'Sube un grado de cualquier modo un semitono y estarás una fila más arriba, vayas adonde vayas. Por eso los vecinos están siempre en las filas inmediatas de arriba y de abajo, y una ruta de un modo a otro es una subida.',
  showsMiddle:
    'Cada familia cuelga en torno a la línea del dórico: los siete modos de una familia son, por término medio, exactamente tan brillantes como el dórico. Cuanto más iguales los pasos, más cerca quedan de ella; la escala mayor es la que más cerca queda, con siete filas seguidas.',
  showsMirror:
    'Invierte los pasos de una familia y tendrás su imagen especular, tan brillante por debajo de la línea como antes por encima. Las dos están una junto a otra, como la menor armónica y la mayor armónica; una familia que es su propia imagen está sola, como la escala mayor, cuyo dórico se lee igual en los dos sentidos.',
  showsNames:
    'Todas las familias con nombre propio están a la izquierda: ninguna tiene un paso de más de tres semitonos.',

  tablesTitle: 'El mapa en palabras',
  tablesLead:
    'Familia por familia, cada una con sus modos de brillante a oscuro; el número delante de un modo es su grado, el de detrás su brillo.',
  familyHead: 'Familia',
  modesHead: 'Modos de brillante a oscuro',
  mirrorOf: 'imagen especular de la familia',
  ownMirror: 'su propia imagen especular',

  neighbours: 'Vecinos',
  neighboursLead: 'a un grado y un semitono de distancia',
  compareWith: 'Comparar con el',
  routeFrom: 'Ruta desde el',
  pointed: 'Aquí se nombra la marca que señalas; lo que tiene al lado está debajo de la imagen.',
  point: 'Señala una marca, o llega a una con las flechas, para ver qué es y qué modos tiene al lado.',
};
