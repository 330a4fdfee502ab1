/**
 * Names of modes, scales and instruments, as the catalogue has them. British English.
 */
import { signs } from '../signs.ts';

/** The name of a mode or a family, with signs: `Dorian ♯4`. */
export function modeName(name: string): string {
  return signs(name);
}

/** The name of a mode on a root: `A Dorian ♯4`. */
export function scaleOn(rootName: string, name: string): string {
  return `${signs(rootName)} ${signs(name)}`;
}

/** The name of an instrument, as it stands within a sentence. */
export function instrumentName({ name }: { readonly id: string; readonly name: string }): string {
  return name;
}
