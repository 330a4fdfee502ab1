/**
 * Writes the answers of the catalogue as files, for a host that only serves files: `pnpm export [folder]`.
 * A file has the path of its address; an answer in JSON ends in `.json`, beside its packed copies. A list of
 * the header fields goes with them.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { CATALOGUE } from '@stillroot/catalog';
import { EVERYDAY_ROOTS, ROOTS } from '@stillroot/core';
import { digestSources } from './data-version.ts';
import { Desk } from './desk.ts';
import { bytesOf, type Prepared, pack } from './prepared.ts';

/** What is written. */
export interface ExportOptions {
  readonly folder: string;
  /** Only so many of each kind of address; all of them where absent. */
  readonly most?: number;
  /** Whether brotli and gzip copies are written as well. */
  readonly isPacked?: boolean;
}

/** What was written. */
export interface Exported {
  readonly files: number;
  readonly bytes: number;
}

/** Every address of the catalogue whose answer depends on nothing but names. */
export function catalogueAddresses(most = Number.POSITIVE_INFINITY): readonly string[] {
  const kinds: readonly (readonly string[])[] = [
    ['/v1/families', '/v1/instruments'],
    CATALOGUE.families.map(({ slug }) => `/v1/families/${slug}`),
    CATALOGUE.modes.map(({ slug }) => `/v1/modes/${slug}`),
    CATALOGUE.instruments.map(({ id }) => `/v1/instruments/${id}`),
    CATALOGUE.modes.flatMap(({ slug }) =>
      ROOTS.map(({ name }) => `/v1/modes/${slug}/${encodeURIComponent(name)}`),
    ),
    CATALOGUE.families.flatMap(({ slug }) =>
      EVERYDAY_ROOTS.map(({ name }) => `/v1/rounds/${slug}/${encodeURIComponent(name)}`),
    ),
  ];
  return kinds.flatMap((addresses) => addresses.slice(0, most));
}

/** Writes the files. */
export async function exportAnswers({ folder, most, isPacked = true }: ExportOptions): Promise<Exported> {
  const desk = new Desk({ dataVersion: digestSources(), mostKeptBytes: 0, trustedProxies: 0 });
  let files = 0;
  let bytes = 0;
  const write = async (path: string, body: Buffer | string): Promise<void> => {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, body);
    files += 1;
    bytes += body.length;
  };
  for (const address of catalogueAddresses(most)) {
    const { prepared } = desk.answerTo(address);
    if (prepared.status !== 200) throw new Error(`${address} answers ${prepared.status}`);
    // A sharp stands in a file's name as it is; servers decode addresses before they look for files.
    const path = join(folder, `${decodeURIComponent(address)}.json`);
    await write(path, bytesOf(prepared.identity));
    if (!isPacked || !prepared.isPackable) continue;
    await write(`${path}.br`, bytesOf(await pack(prepared, 'br')));
    await write(`${path}.gz`, bytesOf(await pack(prepared, 'gzip')));
  }
  await write(join(folder, 'v1', '_headers'), headersFile(desk));
  return { files, bytes };
}

/** The fields that every file is to be served with, in the common form of static hosts (no source). */
function headersFile(desk: Desk): string {
  const { fields } = (desk.answerTo('/v1/families').prepared as Prepared).identity;
  const own = new Set(['ETag', 'Content-Length', 'Link']);
  const lines: string[] = [];
  for (let at = 0; at < fields.length; at += 2) {
    if (!own.has(fields[at] as string)) lines.push(`  ${fields[at]}: ${fields[at + 1]}`);
  }
  return `/v1/*\n${lines.join('\n')}\n`;
}

if (import.meta.main) {
  const folder = resolve(process.argv[2] ?? 'export');
  const begun = performance.now();
  const { files, bytes } = await exportAnswers({ folder });
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  console.log(`${files} files, ${(bytes / 1e6).toFixed(0)} MB, in ${seconds} s: ${folder}`);
}
