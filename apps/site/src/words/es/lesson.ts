/**
 * Los textos de las lecciones y de lo que muestran otros sitios. Spanish.
 */
import type * as English from '../en/lesson.ts';
import type { SameShape } from '../languages.ts';
import { counted } from './numbers.ts';

export const LESSON: SameShape<typeof English.LESSON> = {
  add: 'Añadir a una lección',
  title: 'Una lección',
  description: 'Un título, una nota y una serie de páginas, cada una tal como se eligió, en un solo enlace.',
  lead: 'Una lección es un enlace que contiene un título, una nota y una serie de páginas, cada una tal como la elegiste. No se guarda nada en otro lugar: quien tiene el enlace tiene la lección.',
  empty:
    'Todavía no hay ninguna página. Abre una ronda o una escala, elige instrumento, afinación y lo demás, y pulsa encima «Añadir a una lección».',
  without: 'Una lección está en la parte de su enlace que solo un script puede leer; por eso necesita uno.',
  failed: 'No se pudieron cargar los nombres de las páginas; los enlaces funcionan igual.',
  pages: 'Páginas',
  pageNames: 'Las páginas de esta lección',
  change: 'Cambiar esta lección',
  titleField: 'Título',
  noteField: 'Nota',
  up: 'Subir',
  down: 'Bajar',
  remove: 'Quitar',
  send: 'Enviarla',
  link: 'Enlace a esta lección',
  open: 'Abrir la lección',
  print: 'Imprimir',
  copyByHand: 'No se pudo copiar; cópialo de la barra de direcciones.',
  another: 'Para añadir otra página, ábrela y pulsa encima «Añadir a una lección».',
  walk: 'Por la lección',
  previous: 'Anterior',
  next: 'Siguiente',
  copy: 'Copiar el enlace',
  copied: 'El enlace está copiado.',
  notCopied: 'No se pudo copiar; está seleccionado, así que cópialo a mano.',
  code: 'Código QR de esta lección',
  noCode: 'Esta lección es demasiado larga para un código QR. Su enlace funciona igual.',
  embed: 'Mostrarla en otro sitio',
  embedCode: 'HTML para otro sitio',
  startAnew: 'Empezar una lección nueva',
  changed:
    'Este enlace se ha alterado o cortado por el camino. Se muestra lo que aún se puede leer; pide el enlace entero a quien lo envió.',
  notPage: 'Se omite, porque no es una página de este sitio:',
  tooMany: 'Solo se muestran las primeras páginas; una lección tiene como máximo',
};

export const EMBED: SameShape<typeof English.EMBED> = {
  round: 'Una ronda, para otro sitio',
  scale: 'Una escala, para otro sitio',
  description: 'Una página para mostrar dentro de una página de otro sitio.',
  without: 'Esta imagen necesita un script.',
  none: 'La dirección no nombra nada que se conozca aquí.',
  waiting: 'Un momento …',
};

export const pagesWords: typeof English.pagesWords = (count) => counted(count, 'página', 'páginas');

export const pageOf: typeof English.pageOf = (at, count) => `página ${at} de ${count}`;
