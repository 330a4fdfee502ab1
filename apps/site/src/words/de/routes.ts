/**
 * Die Texte der Wege. German.
 */
import type * as English from '../en/routes.ts';
import type { SameShape } from '../languages.ts';

export const ROUTES: SameShape<typeof English.ROUTES> = {
  title: 'Wege zwischen Skalen',
  description:
    'Von einem Modus zu einem anderen auf demselben Grundton, je ein Ton um einen Halbton, über Skalen mit Namen, wo es welche gibt.',
  lead: 'Von einem Modus zu einem anderen auf demselben Grundton, je ein Ton um einen Halbton. Von allen kürzesten Wegen ist dies der über die bekanntesten Skalen.',
  fromField: 'Von',
  toField: 'Zu',
  without:
    'Um einen Weg zwischen Modi eigener Wahl zu finden, braucht es ein Skript. Die Wege unten gibt es auch ohne.',
  failed:
    'Die Namen der Modi konnten nicht geladen werden. Die Seite selbst ist vollständig; versuche es später noch einmal.',

  start: 'Anfang',
  step: 'Schritt',
  sameScale: 'Das ist derselbe Modus: Nichts bewegt sich.',
  back: 'Denselben Weg zurück',
  compare: 'Beide Enden nebeneinander',
  others: 'Einen Weg zwischen zwei beliebigen Modi finden',
  moreTitle: 'Weitere Wege',
};
