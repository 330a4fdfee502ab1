/**
 * Die Texte der Links von einer Seite zu dem, was anderswo zu ihr gehört. German.
 */
import type * as English from '../en/ways.ts';
import type { SameShape } from '../languages.ts';

export const WAYS: SameShape<typeof English.WAYS> = {
  compareWith: 'Vergleichen mit',
  routeFrom: 'Weg von',
  onMap: 'Auf der Karte',
  homeFind: 'Suchst du eine bestimmte Skala?',
  homeSearch: 'Nach Name, Tönen, Formel oder Schritten suchen',
  homeMore: 'Weitere Zugänge',
  mapLead: 'Alle 462 Modi in einem Bild: Eine Spalte ist eine Familie, die Höhe ist die Helligkeit.',
  compareLead: 'Zwei bis vier Skalen auf einem Grundton, Stufe für Stufe und auf einem Griffbrett.',
  routesLead: 'Von einer Skala zur anderen, je ein Ton um einen Halbton.',
  searchLead: 'Nach Name, Tönen, Formel oder Schritten; Tippfehler werden verziehen.',
};
