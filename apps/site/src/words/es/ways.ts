/**
 * Los textos de los enlaces de una página a lo que le corresponde en otras. Spanish.
 */
import type * as English from '../en/ways.ts';
import type { SameShape } from '../languages.ts';

export const WAYS: SameShape<typeof English.WAYS> = {
  compareWith: 'Comparar con el',
  routeFrom: 'Ruta desde el',
  onMap: 'En el mapa',
  homeFind: '¿Buscas una escala concreta?',
  homeSearch: 'Busca por nombre, notas, fórmula o pasos',
  homeMore: 'Más caminos',
  mapLead: 'Los 462 modos en una imagen: una columna es una familia, la altura es el brillo.',
  compareLead: 'De dos a cuatro escalas sobre una tónica, grado por grado y en un solo mástil.',
  routesLead: 'De una escala a otra, una nota y un semitono cada vez.',
  searchLead: 'Por nombre, por notas, por fórmula o por pasos; los errores al escribir se perdonan.',
};
