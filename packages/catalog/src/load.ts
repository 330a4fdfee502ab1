/**
 * Loading: all data files, checked each on its own and against one another, become one catalogue.
 */
import { fileURLToPath } from 'node:url';
import { type Mode, UNIVERSE } from '@stillroot/core';
import type { ConflictFile } from './conflict-file.ts';
import { crossCheck } from './cross-checks.ts';
import { readDataFiles } from './data-files.ts';
import type {
  Catalogue,
  Conflict,
  FamilyEntry,
  InstrumentEntry,
  ModeEntry,
  Source,
  TuningEntry,
} from './entries.ts';
import { errorOf, type FileProblem } from './file-problem.ts';
import type { InstrumentFile } from './instrument-file.ts';
import { buildFamilies } from './mode-entries.ts';
import { checkNamings, gatherNamings } from './mode-names.ts';
import type { SourceFile } from './source-file.ts';

/**
 * Reads a data folder.
 * @param dataFolder the folder that holds `sources.json`, `families` and the rest
 * @throws an Error that lists every problem, one a line: the file, the path inside it, and the reason
 */
export function loadCatalogue(dataFolder: URL | string): Catalogue {
  const files = readDataFiles(typeof dataFolder === 'string' ? dataFolder : fileURLToPath(dataFolder));
  const namings = gatherNamings(files);
  const problems = [...files.problems, ...crossCheck(files), ...checkNamings(files, namings)];
  if (problems.length > 0) throw errorOf(problems);

  const sources = (files.sources?.value ?? []).map(buildSource);
  const sourcesById = new Map(sources.map((source) => [source.id, source]));
  const conflicts = buildConflicts(files.conflicts?.value ?? [], sourcesById);
  const families = buildFamilies({ families: files.families, namings, conflicts, sourcesById });
  const clashes = [...checkModes(families), ...checkFamilies(families)];
  if (clashes.length > 0) throw errorOf(clashes);

  const modes = families.flatMap((family) => family.modes).toSorted((a, b) => a.mode.index - b.mode.index);
  const instruments = files.instruments.map(({ value }) => buildInstrument(value, sourcesById));
  const notServed = (files.notServed?.value ?? []).map(({ recalled, ...entry }) => ({
    ...entry,
    isRecalled: recalled,
    sources: pick(entry.sources, sourcesById),
  }));
  return { modes, families, instruments, notServed, sources, conflicts };
}

function buildSource({ recalled, ...source }: SourceFile[number]): Source {
  return { ...source, isRecalled: recalled };
}

function buildConflicts(
  conflicts: ConflictFile,
  sourcesById: ReadonlyMap<string, Source>,
): readonly Conflict[] {
  return conflicts.map((conflict) => ({
    ...conflict,
    uses: conflict.uses.map(({ steps, who, sources = [] }) => ({
      mode: UNIVERSE.modesById.get(steps) as Mode,
      who,
      sources: pick(sources, sourcesById),
    })),
  }));
}

function buildInstrument(file: InstrumentFile, sourcesById: ReadonlyMap<string, Source>): InstrumentEntry {
  const {
    order: _,
    tunings: [standard, ...others],
    ...rest
  } = file;
  return {
    ...rest,
    tunings: [buildTuning(standard, sourcesById), ...others.map((one) => buildTuning(one, sourcesById))],
    sources: pick(file.sources, sourcesById),
    handFrameSources: pick(file.handFrameSources, sourcesById),
  };
}

function buildTuning(
  { reentrant, recalled = false, sources, ...tuning }: InstrumentFile['tunings'][number],
  sourcesById: ReadonlyMap<string, Source>,
): TuningEntry {
  return {
    ...tuning,
    isReentrant: reentrant,
    isRecalled: recalled,
    ...(sources === undefined ? {} : { sources: pick(sources, sourcesById) }),
  };
}

function pick(ids: readonly string[], sourcesById: ReadonlyMap<string, Source>): readonly Source[] {
  return ids.flatMap((id) => sourcesById.get(id) ?? []);
}

/** Displayed names and slugs must tell all modes apart; a family's name is then to be changed. */
function checkModes(families: readonly FamilyEntry[]): readonly FileProblem[] {
  const entries = families.flatMap((family) => family.modes.map((mode) => ({ family, mode })));
  return clashesAmong(
    entries,
    ({ mode }) => mode.slug,
    ({ family, mode }, other) => ({
      file: `data/families/${family.slug}.json`,
      path: `modes[${mode.degree - 1}].names[0].name`,
      reason: `expected a name whose slug no other mode has, got ${named(mode)}, which is ${named(other.mode)} too`,
    }),
  );
}

function checkFamilies(families: readonly FamilyEntry[]): readonly FileProblem[] {
  return clashesAmong(
    families,
    ({ slug }) => slug,
    (family, other) => ({
      file: `data/families/${family.slug}.json`,
      path: 'slug',
      reason: `expected a slug that no other family has, got "${family.slug}", which ${other.id} has too`,
    }),
  );
}

function clashesAmong<T>(
  entries: readonly T[],
  slugOfEntry: (entry: T) => string,
  describe: (entry: T, other: T) => FileProblem,
): readonly FileProblem[] {
  const groups = Map.groupBy(entries, slugOfEntry);
  return [...groups.values()].flatMap(([first, ...others]) =>
    first === undefined ? [] : others.map((other) => describe(first, other)),
  );
}

function named({ name, mode }: ModeEntry): string {
  return `"${name}" (${mode.id})`;
}
