/**
 * Los textos de las rutas. Spanish.
 */
import type * as English from '../en/routes.ts';
import type { SameShape } from '../languages.ts';

export const ROUTES: SameShape<typeof English.ROUTES> = {
  title: 'Rutas entre escalas',
  description:
    'De un modo a otro sobre la misma tónica, una nota y un semitono cada vez, pasando por escalas con nombre donde las haya.',
  lead: 'De un modo a otro sobre la misma tónica, una nota y un semitono cada vez. De todos los caminos más cortos, este pasa por las escalas más conocidas.',
  fromField: 'De',
  toField: 'A',
  without:
    'Para encontrar una ruta entre modos a tu elección hace falta un script. Las rutas de abajo están sin él.',
  failed: 'No se pudieron cargar los nombres de los modos. La página está completa; inténtalo más tarde.',

  start: 'inicio',
  step: 'paso',
  sameScale: 'Es el mismo modo: nada se mueve.',
  back: 'El mismo camino de vuelta',
  compare: 'Los dos extremos, uno junto al otro',
  others: 'Encontrar una ruta entre dos modos cualesquiera',
  moreTitle: 'Más rutas',
};
