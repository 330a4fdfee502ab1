/**
 * Reading one data file: JSON, then its schema.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { z } from 'zod';
import { type FileProblem, formatPath } from './file-problem.ts';

/** A file that was read: its value, or what is wrong with it. */
export type FileReading<T> =
  | { readonly file: string; readonly value: T }
  | { readonly file: string; readonly problems: readonly FileProblem[] };

/**
 * Reads and checks a JSON file.
 * @param folder the data folder
 * @param name the file inside it, joined by `/`
 */
export function readDataFile<S extends z.ZodType>(
  folder: string,
  name: string,
  schema: S,
): FileReading<z.output<S>> {
  const file = `data/${name}`;
  let value: unknown;
  try {
    value = JSON.parse(readFileSync(join(folder, name), 'utf8'));
  } catch (error) {
    const reason = `cannot be read as JSON: ${error instanceof Error ? error.message : String(error)}`;
    return { file, problems: [{ file, path: '', reason }] };
  }
  const result = schema.safeParse(value);
  if (result.success) return { file, value: result.data };
  const problems = result.error.issues.map(({ path, message }) => ({
    file,
    path: formatPath(path),
    reason: reasonOf(message, valueAt(value, path)),
  }));
  return { file, problems };
}

/** The message, then what was there, where that is short enough to show. */
function reasonOf(message: string, found: unknown): string {
  const expected = message
    .replace(/^(?:Invalid (?:input|option|string)|Too (?:small|big)): /, '')
    .replace(/, received .*$/, '');
  const shown = JSON.stringify(found);
  if (shown === undefined) return `${expected}, got nothing`;
  if (typeof found === 'object' && found !== null) return expected;
  return `${expected}, got ${shown.length > 60 ? `${shown.slice(0, 57)}...` : shown}`;
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inside, part) =>
      typeof inside === 'object' && inside !== null && Object.hasOwn(inside, part)
        ? Reflect.get(inside, part)
        : undefined,
    value,
  );
}
