/**
 * Titel, die Server und Browser gleich schreiben. German.
 */
import type * as English from '../en/titles.ts';
import { signs } from '../signs.ts';
import { modeName } from './names.ts';
import { joined } from './numbers.ts';

/** `Die Runde „Harmonisch Moll“ auf A` */
export const roundTitle: typeof English.roundTitle = (familyName, root) =>
  `Die Runde „${modeName(familyName)}“ auf ${signs(root.name)}`;

/** `Dorisch, Phrygisch und Lokrisch auf A im Vergleich` */
export const comparisonTitle: typeof English.comparisonTitle = (modeNames, root) =>
  `${joined(modeNames.map(modeName))} auf ${signs(root.name)} im Vergleich`;

/** `Von Lydisch zu Lokrisch, Ton für Ton` */
export const routeTitle: typeof English.routeTitle = (fromName, toName) =>
  `Von ${modeName(fromName)} zu ${modeName(toName)}, Ton für Ton`;
