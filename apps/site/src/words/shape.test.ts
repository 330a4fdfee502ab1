/**
 * The texts of every language have the same shape as the English ones, and none is empty. The types say the
 * first at build time; this says it of the folders as well.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { SameShape } from './languages.ts';
import { LANGUAGES } from './languages.ts';

type English = typeof import('./en/sentences.ts');
// Fails to compile where a language lacks a name or a function takes something else.
const typed: readonly SameShape<English>[] = [
  await import('./de/sentences.ts'),
  await import('./es/sentences.ts'),
];

test('sentences are typed alike', () => {
  expect(typed).toHaveLength(2);
});

const OTHERS = LANGUAGES.map(({ code }) => code).filter((code) => code !== 'en');
const files = (code: string): readonly string[] => readdirSync(join(import.meta.dirname, code)).toSorted();
const loaded = async (code: string, file: string): Promise<Record<string, unknown>> =>
  (await import(join(import.meta.dirname, code, file))) as Record<string, unknown>;

test.each(OTHERS)('%s has the files of English', (code) => {
  expect(files(code)).toEqual(files('en'));
  expect(files(code).length).toBeGreaterThan(12);
});

test.each(OTHERS.flatMap((code) => files('en').map((file) => [code, file] as const)))(
  '%s/%s has the shape of English, and no empty text',
  async (code, file) => {
    const [english, other] = await Promise.all([loaded('en', file), loaded(code, file)]);
    expect(shapeOf(other)).toEqual(shapeOf(english));
    expect(textsOf(other).filter((text) => text.trim() === '')).toEqual([]);
  },
);

/** Sentences of some length that two languages share were most likely forgotten. */
test.each(OTHERS)('%s translates what is longer than a few words', async (code) => {
  const same = await Promise.all(
    files('en').map(async (file) => {
      const [english, other] = await Promise.all([loaded('en', file), loaded(code, file)]);
      const known = new Set(textsOf(english));
      return textsOf(other).filter((text) => text.split(' ').length > 3 && known.has(text));
    }),
  );
  expect(same.flat()).toEqual([]);
});

/** Every name with what it holds: a text, a function or more names. */
function shapeOf(value: unknown): unknown {
  if (value === null || typeof value !== 'object') return typeof value;
  return Object.fromEntries(
    Object.entries(value)
      .map(([name, one]) => [name, shapeOf(one)] as const)
      .toSorted(([a], [b]) => a.localeCompare(b)),
  );
}

function textsOf(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(textsOf) : [];
}
