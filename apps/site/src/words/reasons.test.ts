/**
 * Why something cannot be played and what would have been right, in every language: nothing is left out, and
 * every number, note and spelling that English gives is given by the others.
 */
import {
  buildNeck,
  cautionsFor,
  type Expectation,
  fail,
  type Problem,
  parsePitch,
  parseRoot,
  REASON_KINDS,
  type Reason,
  type Result,
  readTuning,
} from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { GUITAR } from '../facts/guitar.ts';
import * as deProblems from './de/problems.ts';
import * as de from './de/reasons.ts';
import * as enProblems from './en/problems.ts';
import * as en from './en/reasons.ts';
import * as esProblems from './es/problems.ts';
import * as es from './es/reasons.ts';

const REASONS: { readonly [Kind in Reason['kind']]: Reason & { readonly kind: Kind } } = {
  'notes-missing': { kind: 'notes-missing', notes: ['F', 'Bb'] },
  'beyond-the-neck': { kind: 'beyond-the-neck', fret: 30, lastFret: 22 },
  'no-octave': { kind: 'no-octave', fret: 19 },
  'no-two-octaves': { kind: 'no-two-octaves', fret: 12 },
  'no-whole-octave': { kind: 'no-whole-octave', fret: 21 },
  'no-octave-on-a-string': { kind: 'no-octave-on-a-string' },
  'one-string-only': { kind: 'one-string-only' },
  'strings-do-not-rise': { kind: 'strings-do-not-rise' },
  'off-the-neck': { kind: 'off-the-neck' },
  'too-wide': { kind: 'too-wide', string: 4, frets: [1, 3, 5], spanMm: 168.2, reachMm: 120 },
  'too-many-fingers': { kind: 'too-many-fingers', string: 2, frets: [7, 8, 9, 10, 11] },
  'gap-in-chain': { kind: 'gap-in-chain' },
  'chain-is-for-one-scale': { kind: 'chain-is-for-one-scale' },
  'no-shared-area': { kind: 'no-shared-area' },
  'modes-left-out': { kind: 'modes-left-out', playable: 3 },
};

const EXPECTATIONS: { readonly [Kind in Expectation['kind']]: Expectation & { readonly kind: Kind } } = {
  root: { kind: 'root' },
  note: { kind: 'note' },
  pitch: { kind: 'pitch' },
  chord: { kind: 'chord' },
  'helmholtz-pitch': { kind: 'helmholtz-pitch' },
  'string-count': { kind: 'string-count', most: 14, given: 40 },
  'open-strings': { kind: 'open-strings' },
  'rising-strings': { kind: 'rising-strings' },
  'one-notation': { kind: 'one-notation' },
  semitones: { kind: 'semitones', from: -12, to: 9, tuning: 'Drop D', highestMidi: 127 },
  'sounding-to': { kind: 'sounding-to', highest: 'G9' },
  'one-length': { kind: 'one-length' },
  'length-mm': { kind: 'length-mm', from: 200, to: 1500 },
  'fret-count': { kind: 'fret-count', from: 5, to: 36 },
  'first-fret': { kind: 'first-fret', fret: 2 },
  'capo-fret': { kind: 'capo-fret', highest: 22 },
  fret: { kind: 'fret', highest: 24 },
  'string-numbers': { kind: 'string-numbers', count: 6 },
  'string-below-capo': { kind: 'string-below-capo', fret: 5 },
  'playable-round': { kind: 'playable-round', reason: REASONS['too-wide'] },
  'playable-fingering': { kind: 'playable-fingering', reason: REASONS['no-octave'] },
  'musicxml-octaves': { kind: 'musicxml-octaves' },
  notes: { kind: 'notes' },
  'piece-length': { kind: 'piece-length', mostNotes: 20_000, mostBars: 2000, notes: 31_415, bars: 2718 },
  tempo: { kind: 'tempo', from: 20, to: 400 },
  meter: { kind: 'meter', from: 1, to: 16, units: [2, 4, 8, 16] },
  vamp: { kind: 'vamp', most: 8 },
  'whole-number': { kind: 'whole-number', from: 0, to: 64 },
  'one-of': { kind: 'one-of', choices: ['up', 'down'] },
};

const OTHERS = [
  ['de', de, deProblems],
  ['es', es, esProblems],
] as const;

/** Numbers of more than one figure, and notes with their octaves: the same in every language but for the comma. */
const factsIn = (words: string): readonly string[] =>
  [
    ...new Set(
      words.replaceAll(/(\d),(?=\d)/g, '$1.').match(/\b[A-G](?:♯|♭|#)?\d\b|\d{2,}(?:\.\d+)?/g) ?? [],
    ),
  ].toSorted();

const problemOf = (result: Result<unknown>): Problem => {
  if (result.ok) throw new Error('this is refused');
  return result.problem;
};

describe.each(OTHERS)('%s', (_code, reasons, problems) => {
  test.each(Object.values(REASONS))('says why: $kind', (reason) => {
    const words = reasons.reasonWords(reason);
    expect(factsIn(words)).toEqual(factsIn(en.reasonWords(reason)));
    expect(words).not.toBe(en.reasonWords(reason));
    expect(words).not.toMatch(/undefined|\.$/);
  });

  test.each(Object.values(EXPECTATIONS))('says what would be right: $kind', (expectation) => {
    const problem = problemOf(fail('field', 'xyz', expectation));
    const words = problems.problemWords(problem);
    expect(factsIn(words)).toEqual(factsIn(enProblems.problemWords(problem)));
    expect(words).not.toContain(problem.expected);
    expect(words).not.toMatch(/undefined/);
    expect(words).toMatch(/xyz.*\.$/);
  });

  test('says what would be right where what was typed is not known', () => {
    const problem = problemOf(fail('capo', '', EXPECTATIONS['capo-fret']));
    expect(problems.problemWords(problem)).toMatch(/^(Erwartet wird|Se espera) .*22\.$/);
    expect(enProblems.problemWords(problem)).toMatch(/^Expected .*22\.$/);
  });

  test('says what to take care of, with the same widths', () => {
    for (const caution of cautionsFor(115.6, 120)) {
      expect(factsIn(reasons.cautionWords(caution))).toEqual(factsIn(en.cautionWords(caution)));
      expect(reasons.cautionWords(caution)).not.toBe(en.cautionWords(caution));
    }
  });
});

test('every kind of reason has an example here', () => {
  expect(Object.keys(REASONS).toSorted()).toEqual([...REASON_KINDS].toSorted());
});

test('what core refuses carries what would be right as data', () => {
  const refused = [
    parseRoot('H'),
    parsePitch('E'),
    readTuning('E2-A2-x'),
    buildNeck(GUITAR, GUITAR.tunings[0], { capoFret: 99 }),
    buildNeck(GUITAR, GUITAR.tunings[0], { frets: 99 }),
  ].map(problemOf);
  expect(refused.map(({ expectation }) => expectation?.kind)).toEqual([
    'root',
    'pitch',
    'pitch',
    'capo-fret',
    'fret-count',
  ]);
});
