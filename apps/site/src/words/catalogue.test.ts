/**
 * What the catalogue says in English is said in every other language: all of it, and nothing that is not there.
 */
import { CATALOGUE } from '@stillroot/catalog';
import { describe, expect, test } from 'vitest';
import * as de from './de/catalogue.ts';
import { TUNING_NAMES as TUNINGS_IN_GERMAN } from './de/tunings.ts';
import * as en from './en/catalogue.ts';
import { TUNING_NAMES as TUNINGS_IN_ENGLISH } from './en/tunings.ts';
import * as es from './es/catalogue.ts';
import { TUNING_NAMES as TUNINGS_IN_SPANISH } from './es/tunings.ts';

const tunings = CATALOGUE.instruments.flatMap((instrument) =>
  instrument.tunings.map((tuning) => ({ ...tuning, key: `${instrument.id}/${tuning.id}` })),
);

/** What there is to be said in English, by its key. */
const TOLD = {
  INSTRUMENT_NOTES: CATALOGUE.instruments.flatMap(({ id, note }) => (note ? [[id, note] as const] : [])),
  TUNING_NOTES: tunings.flatMap(({ key, note }) => (note ? [[key, note] as const] : [])),
  CONFLICT_USES: CATALOGUE.conflicts.flatMap(({ name, uses }) =>
    uses.map(({ mode, who }) => [`${name}/${mode.id}`, who] as const),
  ),
  CONFLICT_NOTES: CATALOGUE.conflicts.flatMap(({ name, note }) => (note ? [[name, note] as const] : [])),
  FAMILY_NOTES: CATALOGUE.families.flatMap(({ slug, note }) => (note ? [[slug, note] as const] : [])),
  // These have no title that was published, only words of ours.
  SOURCES: CATALOGUE.sources.flatMap(({ id, author, title }) =>
    ['various', 'common practice'].includes(author) ? [[id, title] as const] : [],
  ),
} as const;
const KINDS = Object.keys(TOLD) as readonly (keyof typeof TOLD)[];

/** Numbers and notes with their octaves, the comma or the half written as in English. */
const factsIn = (words: string): readonly string[] =>
  [
    ...new Set(
      words
        .replaceAll('½', '.5')
        .replaceAll(/(\d),(?=\d)/g, '$1.')
        .replaceAll('♯', '#')
        .match(/\b[A-G]#?\d\b|\d{2,}(?:\.\d+)?/g) ?? [],
    ),
  ].toSorted();

test('English says what stands in the catalogue', () => {
  const own = Object.values(en).filter((value) => value instanceof Map);
  expect(own.map(({ size }) => size)).toEqual(own.map(() => 0));
  expect(own).toHaveLength(KINDS.length + 1);
  expect(TUNINGS_IN_ENGLISH.size).toBe(0);
  for (const kind of KINDS) expect(TOLD[kind].length).toBeGreaterThan(2);
});

describe.each([
  ['de', de, TUNINGS_IN_GERMAN],
  ['es', es, TUNINGS_IN_SPANISH],
] as const)('%s', (_code, words, names) => {
  test.each(KINDS)('%s: every one is there, and none is left over', (kind) => {
    expect([...words[kind].keys()].toSorted()).toEqual(TOLD[kind].map(([key]) => key).toSorted());
    for (const [key, english] of TOLD[kind]) expect(words[kind].get(key)).not.toBe(english);
  });

  test.each(['INSTRUMENT_NOTES', 'TUNING_NOTES'] as const)('%s: the same numbers', (kind) => {
    // Centuries have Roman numerals in Spanish.
    for (const [key, english] of TOLD[kind])
      expect([key, factsIn((words[kind].get(key) ?? '').replace('siglo XVI', '16'))]).toEqual([
        key,
        factsIn(english),
      ]);
  });

  test('every tuning has a name, and none is left over', () => {
    expect([...names.keys()].toSorted()).toEqual(tunings.map(({ key }) => key).toSorted());
  });

  test('a name of a tuning has the letters of the English one, and no English but terms of the trade', () => {
    for (const { key, name } of tunings) {
      const own = names.get(key) ?? '';
      expect(own, key).not.toMatch(
        /\b(?:low|high|down|step|courses?|strings?|fourths|fifths|tuning|as|with|fret|above|below|re-entrant)\b/,
      );
      const strings = /(?:[A-Ga-g][#b]?[′']? ){2,}[A-Ga-g][#b]?[′']?/.exec(name)?.[0];
      const signed = strings
        ?.replaceAll('#', '♯')
        .replaceAll(/([A-G])b/g, '$1♭')
        .replaceAll("'", '′');
      if (signed) expect(own, key).toContain(signed);
    }
  });

  test('what is not served is told, all of it', () => {
    expect([...words.NOT_SERVED.keys()].toSorted()).toEqual(
      CATALOGUE.notServed.map(({ id }) => id).toSorted(),
    );
    for (const { id, reason } of CATALOGUE.notServed)
      expect(factsIn(words.NOT_SERVED.get(id)?.reason ?? '')).toEqual(factsIn(reason));
  });

  test('years and traditions are told', () => {
    const years = CATALOGUE.sources.map(({ year }) => words.yearWords(year));
    expect(
      years.filter((year) => /undated|later|century|\bed\b/.test(year) && !/ed\. \d/.test(year)),
    ).toEqual([]);
    const traditions = CATALOGUE.modes.flatMap((mode) =>
      mode.names.flatMap(({ tradition }) => tradition ?? []),
    );
    expect(traditions.length).toBeGreaterThan(70);
    expect(traditions.map(words.traditionWords).filter((told) => /Carnatic|Hindustani/.test(told))).toEqual(
      [],
    );
  });
});
