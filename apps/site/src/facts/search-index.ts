/**
 * The index of the search, from the catalogue.
 */
import { CATALOGUE, modePreference } from '@stillroot/catalog';
import { openStringNames, type Tuning } from '@stillroot/core';
import type { SearchFile } from '../search/search-file.ts';
import * as ofThisBuild from '../words/names.ts';
import { signs } from '../words/signs.ts';
import { tuningName } from '../words/tunings.ts';

/** How things are called in a language. */
type Names = typeof ofThisBuild;

/** All names of modes, families, instruments and tunings, in English and in the language of this build. */
export function searchFile(names: Names = ofThisBuild): SearchFile {
  const { nameForms, instrumentName, instrumentAliases } = names;
  /** A mode's name as the language writes it, where that is another. */
  const ownNames = (name: string): readonly string[] => nameForms(name).filter((own) => own !== signs(name));
  return {
    modes: CATALOGUE.modes.map(({ mode, slug, name, aliases }) => [
      modePreference(mode),
      slug,
      name,
      ...aliases,
      ...[name, ...aliases].flatMap(ownNames),
    ]),
    families: CATALOGUE.families.map(({ head, slug, name, aliases }) => [
      head.mode.index,
      slug,
      name,
      ...aliases,
      ...ownNames(name),
    ]),
    instruments: CATALOGUE.instruments.map(({ id, name, aliases, tunings }) => {
      const known = [name, ...aliases];
      const ownName = instrumentName({ id, name });
      const others = [...new Set([ownName, ...instrumentAliases({ id, name })])].filter(
        (one) => !known.includes(one),
      );
      const stored = tunings.map(
        (tuning) =>
          [
            tuning.id,
            tuning.name,
            lettersOf(tuning),
            ...[`${tuningName({ id }, tuning)} ${ownName}`].filter(
              (own) => own !== `${signs(tuning.name)} ${ownName}`,
            ),
          ] as const,
      );
      return others.length > 0 ? [id, known, stored, others] : [id, known, stored];
    }),
  };
}

/** The open strings low to high without their octaves: `D A D G A D`. */
function lettersOf(tuning: Tuning): string {
  return openStringNames(tuning)
    .map((name) => name.replace(/-?\d+$/, ''))
    .join(' ');
}
