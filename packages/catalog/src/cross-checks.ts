/**
 * What must agree between data files.
 */
import type { DataFiles, Filed } from './data-files.ts';
import { type FileProblem, formatPath } from './file-problem.ts';
import { INSTRUMENT_KINDS, KIND_NAMES } from './instrument-kind.ts';
import { instrumentKey, modeKey } from './name-key.ts';

/** Something said in a file that must hold against the other files. */
interface Statement {
  readonly file: string;
  readonly path: readonly PropertyKey[];
  readonly value: string;
}

/** Every disagreement between files. */
export function crossCheck(files: DataFiles): readonly FileProblem[] {
  return [
    ...checkCitations(files),
    ...checkFileNames(files.families, ({ slug }) => slug, 'slug'),
    ...checkFileNames(files.instruments, ({ id }) => id, 'id'),
    ...checkUnique(familyIdentities(files), (steps) => steps, 'a family that no other file describes'),
    ...checkUnique(familyNames(files), modeKey, 'a name that no other family has'),
    ...checkUnique(instrumentNames(files), instrumentKey, 'a name that no other instrument has'),
    ...checkUnique(instrumentOrders(files), (order) => order, 'a place that no other instrument has'),
    ...checkKinds(files),
  ];
}

function checkCitations(files: DataFiles): readonly FileProblem[] {
  if (files.sources === undefined) return [];
  const known = new Set(files.sources.value.map(({ id }) => id));
  return citations(files)
    .filter(({ value }) => !known.has(value))
    .map((citation) => problemOf(citation, 'expected the id of an entry of data/sources.json'));
}

function citations(files: DataFiles): readonly Statement[] {
  return [
    ...files.families,
    ...files.traditions,
    ...files.instruments,
    ...filed(files.notServed),
    ...filed(files.conflicts),
  ].flatMap(({ file, value }) => citedIn(file, value, []));
}

/** Every id under a key that says so, wherever it stands in a file. */
function citedIn(file: string, value: unknown, path: readonly PropertyKey[]): readonly Statement[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => {
    const here = [...path, Array.isArray(value) ? Number(key) : key];
    const isCitation = /^(?:s|handFrameS)ources$/.test(key) && Array.isArray(inside);
    return isCitation
      ? inside.map((id, at) => ({ file, path: [...here, at], value: String(id) }))
      : citedIn(file, inside, here);
  });
}

function checkFileNames<T>(
  files: readonly Filed<T>[],
  idOf: (value: T) => string,
  field: string,
): readonly FileProblem[] {
  return files
    .filter(({ file, value }) => !file.endsWith(`/${idOf(value)}.json`))
    .map(({ file, value }) =>
      problemOf({ file, path: [field], value: idOf(value) }, 'expected the name of the file without .json'),
    );
}

function checkUnique(
  statements: readonly Statement[],
  keyOf: (value: string) => string,
  expected: string,
): readonly FileProblem[] {
  const firsts = new Map<string, Statement>();
  return statements.flatMap((statement) => {
    const key = keyOf(statement.value);
    const first = firsts.get(key);
    if (first === undefined) {
      firsts.set(key, statement);
      return [];
    }
    return [problemOf(statement, `expected ${expected} (see ${first.file}: ${formatPath(first.path)})`)];
  });
}

/** A family is known by its modes in any rotation: the one whose steps come first when sorted as text. */
function familyIdentities(files: DataFiles): readonly Statement[] {
  return files.families.map(({ file, value }) => ({
    file,
    path: ['head'],
    value: value.modes.map(({ steps }) => steps).toSorted()[0] ?? '',
  }));
}

function familyNames(files: DataFiles): readonly Statement[] {
  return files.families.flatMap(({ file, value }) => [
    { file, path: ['name'], value: value.name },
    ...value.aliases.map(({ name }, at) => ({ file, path: ['aliases', at, 'name'], value: name })),
  ]);
}

/** The names of instruments, of those as well that are not served. */
function instrumentNames(files: DataFiles): readonly Statement[] {
  return [
    ...files.instruments.flatMap(({ file, value }) => namesOf(file, [], value)),
    ...filed(files.notServed).flatMap(({ file, value }) =>
      value.flatMap((entry, at) => namesOf(file, [at], entry)),
    ),
  ];
}

/** An instrument's id may equal one of its own names. */
function namesOf(
  file: string,
  path: readonly PropertyKey[],
  { id, name, aliases }: { readonly id: string; readonly name: string; readonly aliases: readonly string[] },
): readonly Statement[] {
  const own = [
    { file, path: [...path, 'name'], value: name },
    ...aliases.map((alias, at) => ({ file, path: [...path, 'aliases', at], value: alias })),
  ];
  const isNamedById = own.some(({ value }) => instrumentKey(value) === instrumentKey(id));
  return isNamedById ? own : [{ file, path: [...path, 'id'], value: id }, ...own];
}

function instrumentOrders(files: DataFiles): readonly Statement[] {
  return files.instruments.map(({ file, value }) => ({ file, path: ['order'], value: String(value.order) }));
}

/** Kinds follow one another in lists: an instrument stands among its own. */
function checkKinds({ instruments }: DataFiles): readonly FileProblem[] {
  return instruments.flatMap(({ file, value: { kind, order } }, at) => {
    const before = instruments[at - 1]?.value.kind ?? kind;
    if (INSTRUMENT_KINDS.indexOf(kind) >= INSTRUMENT_KINDS.indexOf(before)) return [];
    const reason = `expected a place among ${KIND_NAMES[kind]}, before ${KIND_NAMES[before]}`;
    return [problemOf({ file, path: ['order'], value: String(order) }, reason)];
  });
}

function problemOf({ file, path, value }: Statement, reason: string): FileProblem {
  return { file, path: formatPath(path), reason: `${reason}, got ${JSON.stringify(value)}` };
}

function filed<T>(value: T | undefined): readonly T[] {
  return value === undefined ? [] : [value];
}
