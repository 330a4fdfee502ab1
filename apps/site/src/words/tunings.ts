/**
 * The names of tunings, in the language of this build.
 */
import { TUNING_NAMES } from '#words/tunings.ts';
import { signs } from './signs.ts';

/** A tuning of an instrument by its name, with signs: `Drop D`. */
export function tuningName(
  instrument: { readonly id: string },
  { id, name }: { readonly id: string; readonly name: string },
): string {
  return signs(TUNING_NAMES.get(`${instrument.id}/${id}`) ?? name);
}
