import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { filesIn, removeFile, writeOver } from './files.ts';

const top = mkdtempSync(join(tmpdir(), 'files-'));
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const textOf = (path: string): string => readFileSync(join(top, path), 'utf8');

afterAll(() => rmSync(top, { recursive: true }));

describe('a file is written', () => {
  test('with the folders that it needs', () => {
    writeOver(join(top, 'modes/dorian/a/index.html'), bytes('A Dorian'));
    expect(textOf('modes/dorian/a/index.html')).toBe('A Dorian');
  });

  test.each([
    ['a shorter one', 'A', 'A Dorian ♯4'],
    ['a longer one', 'A Dorian ♯4, and more', 'A Dorian ♯4'],
    ['one with content', 'A Dorian', ''],
  ])('over %s, of which nothing is left', (_which, before, after) => {
    writeFileSync(join(top, 'over.html'), before);
    writeOver(join(top, 'over.html'), bytes(after));
    expect(textOf('over.html')).toBe(after);
  });
});

describe('the files of a folder', () => {
  test('are those in all its folders, with slashes', () => {
    for (const path of ['some/b.txt', 'some/in/a.txt', 'some/in/deep/c.txt'])
      writeOver(join(top, path), bytes(path));
    mkdirSync(join(top, 'some/empty'));
    expect(filesIn(join(top, 'some')).toSorted()).toEqual(['b.txt', 'in/a.txt', 'in/deep/c.txt']);
  });

  test('are none where there is no folder', () => {
    expect(filesIn(join(top, 'nowhere'))).toEqual([]);
  });
});

test('a file is removed with the folders that it leaves empty, and no others', () => {
  for (const path of ['old/modes/a/index.html', 'old/modes/b/index.html', 'old/index.html'])
    writeOver(join(top, path), bytes(path));
  removeFile(join(top, 'old'), 'modes/a/index.html');
  expect(readdirSync(join(top, 'old/modes'))).toEqual(['b']);
  removeFile(join(top, 'old'), 'modes/b/index.html');
  removeFile(join(top, 'old'), 'index.html');
  expect(readdirSync(join(top, 'old'))).toEqual([]);
  expect(existsSync(join(top, 'old'))).toBe(true);
});
