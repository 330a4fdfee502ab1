/**
 * For tests: copies of the data with one value changed, and what loading them says.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { loadCatalogue } from './load.ts';

const DATA = fileURLToPath(new URL('../../../data', import.meta.url));

/** A folder of its own for the copies of one test file. */
export function makeFolder(): string {
  return mkdtempSync(join(tmpdir(), 'catalogue-'));
}

/** Removes the folder and every copy in it. */
export function removeFolder(folder: string): void {
  rmSync(folder, { recursive: true });
}

/** A copy of the data in which the value at a path of a file is another one, or gone. */
export function dataWith(
  folder: string,
  file: string,
  path: readonly (string | number)[],
  value: unknown,
): string {
  const copy = mkdtempSync(join(folder, 'data-'));
  cpSync(DATA, copy, { recursive: true });
  const root: unknown = { root: JSON.parse(readFileSync(join(copy, file), 'utf8')) };
  const parents = ['root', ...path.slice(0, -1)];
  const holder = parents.reduce((inside: unknown, part) => Reflect.get(Object(inside), part), root);
  const last = path.at(-1) ?? '';
  if (value === undefined) Reflect.deleteProperty(Object(holder), last);
  else Reflect.set(Object(holder), last, value);
  writeFileSync(join(copy, file), JSON.stringify(Reflect.get(Object(root), 'root')));
  return copy;
}

/** The message of the error that loading throws; empty where it throws none. */
export function messageOf(data: string): string {
  try {
    loadCatalogue(data);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
  return '';
}
