/**
 * Títulos que escriben por igual el servidor y el navegador. Spanish.
 */
import type * as English from '../en/titles.ts';
import { signs } from '../signs.ts';
import { fromTo } from '../spanish-articles.ts';
import { modeName } from './names.ts';
import { capitalised, joined } from './numbers.ts';

/** `La ronda «menor armónica» desde A` */
export const roundTitle: typeof English.roundTitle = (familyName, root) =>
  `La ronda «${modeName(familyName)}» desde ${signs(root.name)}`;

/** `Comparación sobre A: dórico, frigio y locrio` */
export const comparisonTitle: typeof English.comparisonTitle = (modeNames, root) =>
  `Comparación sobre ${signs(root.name)}: ${joined(modeNames.map(modeName))}`;

/** `Del lidio al locrio, nota a nota` */
export const routeTitle: typeof English.routeTitle = (fromName, toName) =>
  `${capitalised(fromTo(modeName(fromName), modeName(toName)))}, nota a nota`;
