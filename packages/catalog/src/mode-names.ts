/**
 * Every name of every mode, gathered from the families' files and those of other traditions.
 */
import type { DataFiles } from './data-files.ts';
import type { Source, SourcedName } from './entries.ts';
import { type FileProblem, formatPath } from './file-problem.ts';
import { modeKey } from './name-key.ts';

/** A name, the mode it is given to, and where that stands. */
export interface Naming {
  readonly file: string;
  readonly path: readonly PropertyKey[];
  readonly steps: string;
  readonly name: string;
  readonly sourceIds: readonly string[];
  readonly isRecalled: boolean;
  readonly tradition?: string;
}

/** All namings: the families' in their order, then the traditions'. */
export function gatherNamings(files: DataFiles): readonly Naming[] {
  const ofFamilies = files.families.flatMap(({ file, value }) =>
    value.modes.flatMap(({ steps, names }, mode) =>
      names.map(({ name, sources, recalled = false }, at) => ({
        file,
        path: ['modes', mode, 'names', at, 'name'],
        steps,
        name,
        sourceIds: sources,
        isRecalled: recalled,
      })),
    ),
  );
  const ofTraditions = files.traditions.flatMap(({ file, value }) =>
    value.scales.flatMap(({ number, name, aliases, steps }, scale) => {
      const tradition = number === undefined ? value.tradition : `${value.tradition} ${number}`;
      const common = { file, steps, sourceIds: value.sources, tradition };
      return [
        { ...common, path: ['scales', scale, 'name'], name, isRecalled: false },
        ...aliases.map((alias, at) => ({
          ...common,
          path: ['scales', scale, 'aliases', at],
          name: alias,
          isRecalled: true,
        })),
      ];
    }),
  );
  return [...ofFamilies, ...ofTraditions];
}

/** Names given to two modes that `conflicts.json` does not speak of. */
export function checkNamings(files: DataFiles, namings: readonly Naming[]): readonly FileProblem[] {
  if (files.conflicts === undefined) return [];
  const admitted = new Set(files.conflicts.value.map(({ name }) => modeKey(name)));
  const firsts = new Map<string, Naming>();
  return namings.flatMap((naming) => {
    const key = modeKey(naming.name);
    const first = firsts.get(key) ?? naming;
    firsts.set(key, first);
    if (first.steps === naming.steps || admitted.has(key)) return [];
    const reason = `expected a name for one mode, or an entry in data/conflicts.json; ${first.file}: ${formatPath(first.path)} gives "${naming.name}" to ${first.steps}, this to ${naming.steps}`;
    return [{ file: naming.file, path: formatPath(naming.path), reason }];
  });
}

/** The names of one mode; where files give it the same name, they become one with all their sources. */
export function mergeNamings(
  namings: readonly Naming[],
  sourcesById: ReadonlyMap<string, Source>,
): readonly SourcedName[] {
  const groups = Map.groupBy(namings, ({ name }) => modeKey(name));
  return [...groups.values()].flatMap((group): SourcedName[] => {
    const [first] = group;
    if (first === undefined) return [];
    const ids = new Set(group.flatMap(({ sourceIds }) => sourceIds));
    const tradition = group.find((naming) => naming.tradition !== undefined)?.tradition;
    return [
      {
        name: first.name,
        sources: [...ids].flatMap((id) => sourcesById.get(id) ?? []),
        isRecalled: group.every(({ isRecalled }) => isRecalled),
        ...(tradition === undefined ? {} : { tradition }),
      },
    ];
  });
}
