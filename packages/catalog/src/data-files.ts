/**
 * All data files as they are written, each checked on its own.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { z } from 'zod';
import { type ConflictFile, conflictFileSchema } from './conflict-file.ts';
import { type FamilyFile, familyFileSchema } from './family-file.ts';
import type { FileProblem } from './file-problem.ts';
import { type InstrumentFile, instrumentFileSchema } from './instrument-file.ts';
import { type NotServedFile, notServedFileSchema } from './not-served-file.ts';
import { type FileReading, readDataFile } from './read-file.ts';
import { type SourceFile, sourceFileSchema } from './source-file.ts';
import { type TraditionFile, traditionFileSchema } from './tradition-file.ts';

/** A file's value together with its name, for messages. */
export interface Filed<T> {
  readonly file: string;
  readonly value: T;
}

/** Every data file that could be read, and what is wrong with the others. */
export interface DataFiles {
  /** Absent where the file could not be read: then no citation can be checked. */
  readonly sources: Filed<SourceFile> | undefined;
  /** In their musical order. */
  readonly families: readonly Filed<FamilyFile>[];
  /** In the order in which their names are listed. */
  readonly traditions: readonly Filed<TraditionFile>[];
  readonly conflicts: Filed<ConflictFile> | undefined;
  /** In their order. */
  readonly instruments: readonly Filed<InstrumentFile>[];
  readonly notServed: Filed<NotServedFile> | undefined;
  readonly problems: readonly FileProblem[];
}

/** Reads every data file of a folder. */
export function readDataFiles(folder: string): DataFiles {
  const sources = readDataFile(folder, 'sources.json', sourceFileSchema);
  const conflicts = readDataFile(folder, 'conflicts.json', conflictFileSchema);
  const traditions = ['thaats.json', 'melakarta.json'].map((name) =>
    readDataFile(folder, name, traditionFileSchema),
  );
  const families = readFolder(folder, 'families', familyFileSchema);
  const instruments = readFolder(folder, 'instruments', instrumentFileSchema);
  const notServed = readDataFile(folder, 'not-served.json', notServedFileSchema);
  const readings = [sources, conflicts, notServed, ...traditions, ...families, ...instruments];
  return {
    sources: valuesOf(sources)[0],
    conflicts: valuesOf(conflicts)[0],
    traditions: traditions.flatMap(valuesOf),
    families: families.flatMap(valuesOf).toSorted((a, b) => a.value.order - b.value.order),
    instruments: instruments.flatMap(valuesOf).toSorted((a, b) => a.value.order - b.value.order),
    notServed: valuesOf(notServed)[0],
    problems: readings.flatMap((reading) => ('problems' in reading ? reading.problems : [])),
  };
}

function readFolder<S extends z.ZodType>(
  folder: string,
  inside: string,
  schema: S,
): readonly FileReading<z.output<S>>[] {
  let names: readonly string[];
  try {
    names = readdirSync(join(folder, inside))
      .filter((name) => name.endsWith('.json'))
      .toSorted();
  } catch (error) {
    const file = `data/${inside}`;
    const reason = `cannot be listed: ${error instanceof Error ? error.message : String(error)}`;
    return [{ file, problems: [{ file, path: '', reason }] }];
  }
  return names.map((name) => readDataFile(folder, `${inside}/${name}`, schema));
}

function valuesOf<T>(reading: FileReading<T>): readonly Filed<T>[] {
  return 'value' in reading ? [reading] : [];
}
