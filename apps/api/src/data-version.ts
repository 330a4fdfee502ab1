/**
 * The version of the data: a digest of everything that answers are made from. The same version gives the
 * same answers.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

const FOLDERS = [
  'data',
  'packages/core/src',
  'packages/catalog/src',
  'packages/notation/src',
  'packages/contract/src',
  'apps/api/src',
] as const;

/** Reads and digests the sources: 12 characters that may stand in an address. */
export function digestSources(): string {
  const hash = createHash('sha256');
  for (const folder of FOLDERS) {
    const names = readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(json|ts)$/.test(name) && !name.endsWith('.test.ts'))
      .map((name) => name.replaceAll('\\', '/'))
      .toSorted();
    for (const name of names) hash.update(name).update(readFileSync(join(ROOT, folder, name)));
  }
  return hash.digest('base64url').slice(0, 12);
}
