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

/** All ways in which the name of a mode or a family is written, the displayed one first. */
export function nameForms(name: string): readonly string[] {
  return [modeName(name)];
}

/** A chord on a root: `A m7`. */
export function chordName(rootName: string, kind: string): string {
  return `${signs(rootName)} ${signs(kind)}`;
}

/** The name of an instrument, as it stands within a sentence. */
export function instrumentName({ name }: { readonly id: string; readonly name: string }): string {
  return name;
}

/** What else players of this language call an instrument; in English that is in the catalogue. */
export function instrumentAliases(_: { readonly id: string; readonly name: string }): readonly string[] {
  return [];
}
