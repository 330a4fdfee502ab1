/**
 * The index of the search, from the catalogue.
 */
import { CATALOGUE, modePreference } from '@stillroot/catalog';
import { openStringNames, type Tuning } from '@stillroot/core';
import type { SearchFile } from '../search/search-file.ts';
import { instrumentName, nameForms } from '../words/names.ts';
import { signs } from '../words/signs.ts';
import { tuningName } from '../words/tunings.ts';

/** All names of modes, families, instruments and tunings. */
export function searchFile(): SearchFile {
  return {
    modes: CATALOGUE.modes.map(({ mode, slug, name, aliases }) => [
      modePreference(mode),
      slug,
      name,
      ...aliases,
      ...[name, ...aliases].flatMap(ownName),
    ]),
    families: CATALOGUE.families.map(({ head, slug, name, aliases }) => [
      head.mode.index,
      slug,
      name,
      ...aliases,
      ...ownName(name),
    ]),
    instruments: CATALOGUE.instruments.map(({ id, name, aliases, tunings }) => [
      id,
      [...new Set([name, ...aliases, instrumentName({ id, name })])],
      tunings.map((tuning) => [
        tuning.id,
        tuning.name,
        lettersOf(tuning),
        ...[`${tuningName({ id }, tuning)} ${instrumentName({ id, name })}`].filter(
          (own) => own !== `${signs(tuning.name)} ${name}`,
        ),
      ]),
    ]),
  };
}

/** A mode's name as the language of this build writes it, where that is another. */
function ownName(name: string): readonly string[] {
  return nameForms(name).filter((own) => own !== signs(name));
}

/** The open strings low to high without their octaves: `D A D G A D`. */
function lettersOf(tuning: Tuning): string {
  return openStringNames(tuning)
    .map((name) => name.replace(/-?\d+$/, ''))
    .join(' ');
}
