/**
 * Names in the other languages: every family and every mode is named in its own words, and so that the name can
 * stand in any sentence.
 */
import { CATALOGUE } from '@stillroot/catalog';
import { describe, expect, test } from 'vitest';
import * as de from './de/names.ts';
import * as deSentences from './de/sentences.ts';
import { routeTitle as routeInGerman } from './de/titles.ts';
import * as es from './es/names.ts';
import { routeTitle as routeInSpanish } from './es/titles.ts';
import { fromTo, withArticle } from './spanish-articles.ts';

const NAMES: readonly string[] = [
  ...CATALOGUE.families.map(({ name }) => name),
  ...CATALOGUE.modes.map(({ name }) => name),
];

/** Names of other traditions are the same in every language. */
const ALIKE = new Set(['Marwa', 'Purvi', 'Todi']);

const withoutDegrees = (name: string): string => name.replace(/(?: [♭♯𝄫𝄪♮]+[1-7])+$/u, '');
const wordsWith = (named: (name: string) => string): readonly string[] => [
  ...new Set(NAMES.map((name) => withoutDegrees(named(name)))),
];

test('66 families and 462 modes have names', () => {
  expect(NAMES).toHaveLength(66 + 462);
});

test.each([
  ['German', de.modeName],
  ['Spanish', es.modeName],
])('no name is left in English in %s', (_language, named) => {
  const english = new Set(NAMES.map((name) => name.replace(/(?: (?:[b#]+|nat)[1-7])+$/, '')));
  expect(wordsWith(named).filter((name) => english.has(name) && !ALIKE.has(name))).toEqual([]);
  expect(wordsWith(named).length).toBeGreaterThan(30);
});

// An adjective with an ending is declined: `von harmonischem Moll`. One without is the same in every case, and
// a name is a noun, written with a capital (Duden, rules on adjectives as names; recalled).
test('a German name is the same in every case', () => {
  const names = wordsWith(de.modeName);
  expect(names.filter((name) => /^\p{Ll}|\p{L}e[smrn] (?:Moll|Dur)/u.test(name))).toEqual([]);
});

test('in Spanish modes are masculine and scales are feminine', () => {
  const isMode = /^(?:\p{L}*(?:jónico|dórico|frigio|lidio|eólico|locrio))(?: |$)/u;
  const names = wordsWith(es.modeName).filter((name) => !ALIKE.has(name));
  const modes = names.filter((name) => isMode.test(name));
  const scales = names.filter((name) => !isMode.test(name));
  expect(modes.length).toBeGreaterThan(12);
  expect(modes.filter((name) => /a(?: |$)/.test(name))).toEqual([]);
  expect(scales.length).toBeGreaterThan(10);
  expect(scales.filter((name) => /(?:ic|ad|an|ar)o(?: |$)/.test(name))).toEqual([]);
});

describe('in sentences', () => {
  test.each([
    ['Ionian', 'melodic minor', 'Von Ionisch zu Melodisch Moll, Ton für Ton'],
    ['Mixolydian', 'altered', 'Von Mixolydisch zu Alteriert, Ton für Ton'],
    ['Lydian', 'leading whole-tone', 'Von Lydisch zu Ganztönig mit Leitton, Ton für Ton'],
  ])('from %s to %s', (from, to, title) => {
    expect(routeInGerman(from, to)).toBe(title);
  });

  test('in Spanish', () => {
    expect(routeInSpanish('Aeolian', 'harmonic minor')).toBe('Del eólico a la menor armónica, nota a nota');
    expect(routeInSpanish('altered', 'Locrian')).toBe('De la alterada al locrio, nota a nota');
    expect(fromTo('Marwa', 'tonos enteros con sensible')).toBe(
      'de la Marwa a la de tonos enteros con sensible',
    );
  });

  test('every Spanish name has the article of its gender, which runs together with what stands before', () => {
    for (const name of NAMES.map(es.modeName)) {
      const isMasculine = /^\p{L}*(?:ic|i)o(?!\p{L})/u.test(name);
      expect(withArticle(name)).toBe(
        `${isMasculine ? 'el' : name.startsWith('tonos') ? 'la de' : 'la'} ${name}`,
      );
      expect(fromTo(name, name)).not.toMatch(/\b(?:de|a) el\b/);
    }
  });

  test('a place in a family', () => {
    expect(deSentences.mapPlace(4, de.modeName('melodic minor'), '2')).toBe(
      '4. Modus der Familie Melodisch Moll, Helligkeit 2',
    );
  });
});

// Keys in German: major with a capital and minor with a small letter (Ziegenrücker, ABC Musik; recalled).
test.each([
  ['C', 'major', 'C-Dur', 'C mayor'],
  ['F#', 'minor', 'f♯-Moll', 'F♯ menor'],
  ['A', 'harmonic minor', 'A Harmonisch Moll', 'A menor armónica'],
  ['D', 'Dorian #4', 'D Dorisch ♯4', 'D dórico ♯4'],
  ['B', 'Locrian b4 bb7', 'B Lokrisch ♭4 𝄫7', 'B locrio ♭4 𝄫7'],
])('%s %s on its root', (root, name, german, spanish) => {
  expect(de.scaleOn(root, name)).toBe(german);
  expect(es.scaleOn(root, name)).toBe(spanish);
});

test.each([
  ['A', 'min', 'a-Moll', 'A menor'],
  ['Eb', 'maj', 'E♭-Dur', 'E♭ mayor'],
  ['B', 'dim', 'B vermindert', 'B disminuido'],
  ['C', 'aug', 'C übermäßig', 'C aumentado'],
  ['B', 'm7b5', 'B m7♭5', 'B m7♭5'],
  ['C', '1 b3 bb5', 'C, Stufen 1 ♭3 𝄫5', 'C, grados 1 ♭3 𝄫5'],
])('the chord %s %s', (root, kind, german, spanish) => {
  expect(de.chordName(root, kind)).toBe(german);
  expect(es.chordName(root, kind)).toBe(spanish);
});

test('a scale is also searched as it is written in prose', () => {
  expect(de.nameForms('harmonic minor')).toEqual(['Harmonisch Moll', 'harmonisches Moll']);
  expect(es.nameForms('harmonic minor b5')).toEqual(['menor armónica ♭5', 'menor armónico ♭5']);
  expect(de.nameForms('Dorian')).toEqual(['Dorisch']);
});
