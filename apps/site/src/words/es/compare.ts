/**
 * Los textos de las comparaciones. Spanish.
 */
import type * as English from '../en/compare.ts';
import type { SameShape } from '../languages.ts';

export const COMPARE: SameShape<typeof English.COMPARE> = {
  title: 'Comparar escalas',
  description:
    'De dos a cuatro escalas sobre una tónica, grado por grado: qué se mueve, qué notas comparten y dónde están en el mástil.',
  lead: 'De dos a cuatro escalas sobre una tónica, grado por grado: qué se mueve, qué queda y dónde está en el mástil.',
  first: 'Primera escala',
  second: 'Segunda escala',
  third: 'Tercera escala, si la hay',
  fourth: 'Cuarta escala, si la hay',
  without:
    'Para comparar escalas a tu elección hace falta un script. Las comparaciones de abajo están sin él.',

  degreeByDegree: 'Grado por grado',
  degree: 'Grado',
  stays: 'queda igual',
  sameScale: 'nada se mueve',
  inAllOf: 'en todas',
  inBoth: 'en ambas',
  notShared: 'No compartidas, en',
  onOneNeck: 'En un solo mástil',
  keyRoot: 'la tónica',
  keyShared: ', dibujadas tenues',
  onlyIn: 'debajo de la figura: solo en',

  churchTitle: 'Los modos eclesiásticos entre sí',
  churchLead:
    'De brillante a oscuro. Cada casilla dice qué grados se mueven al pasar del modo de su izquierda al modo de arriba, y en qué sentido; lleva a la comparación de los dos.',
  churchFrom: 'De … a …',
  basesTitle: 'Modos con nombre propio, junto al modo eclesiástico del que derivan',
  others: 'Comparar otras escalas, hasta cuatro',
};
