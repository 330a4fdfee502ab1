/**
 * The files of the built site. What is there is written over in place, which is several times faster than
 * to remove thousands of files and to make them anew.
 */
import {
  closeSync,
  existsSync,
  ftruncateSync,
  mkdirSync,
  openSync,
  readdirSync,
  rmdirSync,
  unlinkSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';

/** Writes a file, over an old one or with the folders that it needs. */
export function writeOver(file: string, content: Uint8Array): void {
  const opened = existsSync(file) ? openSync(file, 'r+') : create(file);
  try {
    for (let at = 0; at < content.length; ) at += writeSync(opened, content, at, content.length - at, at);
    ftruncateSync(opened, content.length);
  } finally {
    closeSync(opened);
  }
}

/** The paths of all files in a folder, from it on, with slashes; none where there is no such folder. */
export function filesIn(folder: string, path = ''): readonly string[] {
  const here = join(folder, path);
  if (!existsSync(here)) return [];
  return readdirSync(here, { withFileTypes: true }).flatMap((entry) => {
    const inside = `${path}${entry.name}`;
    return entry.isDirectory() ? filesIn(folder, `${inside}/`) : [inside];
  });
}

/** Removes a file of a folder, and the folders around it that it leaves empty. */
export function removeFile(folder: string, path: string): void {
  unlinkSync(join(folder, path));
  for (let around = dirname(path); around !== '.'; around = dirname(around)) {
    if (readdirSync(join(folder, around)).length > 0) return;
    rmdirSync(join(folder, around));
  }
}

function create(file: string): number {
  mkdirSync(dirname(file), { recursive: true });
  return openSync(file, 'w');
}
