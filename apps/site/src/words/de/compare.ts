/**
 * Die Texte der Vergleiche. German.
 */
import type * as English from '../en/compare.ts';
import type { SameShape } from '../languages.ts';

export const COMPARE: SameShape<typeof English.COMPARE> = {
  title: 'Skalen vergleichen',
  description:
    'Zwei bis vier Skalen auf einem Grundton, Stufe für Stufe: was sich bewegt, welche Töne sie teilen, und wo sie auf dem Griffbrett liegen.',
  lead: 'Zwei bis vier Skalen auf einem Grundton, Stufe für Stufe: was sich bewegt, was bleibt, und wo es auf dem Griffbrett liegt.',
  first: 'Erste Skala',
  second: 'Zweite Skala',
  third: 'Dritte Skala, falls gewünscht',
  fourth: 'Vierte Skala, falls gewünscht',
  without:
    'Um Skalen eigener Wahl zu vergleichen, braucht es ein Skript. Die Vergleiche unten gibt es auch ohne.',

  degreeByDegree: 'Stufe für Stufe',
  degree: 'Stufe',
  stays: 'bleibt',
  sameScale: 'nichts bewegt sich',
  inAllOf: 'in allen',
  inBoth: 'in beiden',
  notShared: 'Nicht gemeinsam, in',
  onOneNeck: 'Auf einem Griffbrett',
  keyRoot: 'der Grundton',
  keyShared: ', blass gezeichnet',
  onlyIn: 'unter einer Marke: nur in',

  churchTitle: 'Die Kirchenmodi untereinander',
  churchLead:
    'Von hell nach dunkel. Ein Feld sagt, welche Stufen sich auf dem Weg vom Modus links zum Modus darüber bewegen, und wohin; es führt zum Vergleich der beiden Modi.',
  churchFrom: 'Von … zu …',
  basesTitle: 'Modi mit eigenem Namen neben dem Kirchenmodus, von dem sie abgeleitet sind',
  others: 'Andere Skalen vergleichen, bis zu vier',
};
