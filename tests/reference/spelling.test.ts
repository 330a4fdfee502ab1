import { kindestRoot, needsReadable, pitchClassesOf, ROOTS } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { soundsOf } from './by-hand.ts';
import { modeOf, rootOf, scaleOf } from './in-core.ts';
import { formulas, spelledFromMemory, spelledInPrint } from './tables/spelled-scales.ts';

const MAJOR = '1 2 3 4 5 6 7';

describe('scales spelled in print', () => {
  test('are 31', () => {
    expect(spelledInPrint).toHaveLength(31);
  });

  test.each(spelledInPrint)('%s %s is %s (%s)', (root, name, notes) => {
    const formula = formulas[name] ?? '';
    const scale = scaleOf(root, formula);
    expect(scale.mode.formula.join(' ')).toBe(formula);
    expect(scale.notes.join(' ')).toBe(notes);
    expect(pitchClassesOf(scale)).toEqual(soundsOf(notes));
    expect(needsReadable(scale)).toBe(false);
    expect(scale.readable).toEqual(scale.notes);
  });
});

describe('scales spelled from memory (recalled)', () => {
  test('are 9', () => {
    expect(spelledFromMemory).toHaveLength(9);
  });

  test.each(spelledFromMemory)('%s %s is %s (%s)', (root, name, notes) => {
    const scale = scaleOf(root, formulas[name] ?? '');
    expect(scale.notes.join(' ')).toBe(notes);
    expect(pitchClassesOf(scale)).toEqual(soundsOf(notes));
  });
});

describe('key signatures', () => {
  // The circle of fifths; beyond seven as in Wikipedia, Key signature and Theoretical key.
  const accidentals: readonly (readonly [string, number])[] = [
    ['Fb', -8],
    ['Cb', -7],
    ['Gb', -6],
    ['Db', -5],
    ['Ab', -4],
    ['Eb', -3],
    ['Bb', -2],
    ['F', -1],
    ['C', 0],
    ['G', 1],
    ['D', 2],
    ['A', 3],
    ['E', 4],
    ['B', 5],
    ['F#', 6],
    ['C#', 7],
    ['G#', 8],
    ['D#', 9],
    ['A#', 10],
    ['E#', 11],
    ['B#', 12],
  ];

  test.each(accidentals)('%s major has %i sharps (flats below zero)', (root, count) => {
    const written = scaleOf(root, MAJOR).notes.join('');
    expect(written.split('#').length - written.split('b').length).toBe(count);
  });

  test('cover all 21 roots', () => {
    expect(accidentals.map(([root]) => root).toSorted()).toEqual(ROOTS.map((root) => root.name).toSorted());
  });
});

describe('the kindest root', () => {
  // Wikipedia, Theoretical key, for G# and the others beyond seven; common practice, no source, for the rest.
  test.each([
    ['G#', 'Ab'],
    ['D#', 'Eb'],
    ['A#', 'Bb'],
    ['E#', 'F'],
    ['B#', 'C'],
    ['Fb', 'E'],
    ['Cb', 'B'],
    ['C#', 'Db'],
    ['F#', 'F#'],
    ['Gb', 'Gb'],
  ])('of %s major is %s', (root, kindest) => {
    expect(kindestRoot(modeOf(MAJOR), rootOf(root)).name).toBe(kindest);
  });

  test.each([
    ['Ab', 'G#'],
    ['Db', 'C#'],
    ['Gb', 'F#'],
    ['Cb', 'B'],
    ['A#', 'Bb'],
  ])('of %s minor is %s', (root, kindest) => {
    expect(kindestRoot(modeOf('1 2 b3 4 5 b6 b7'), rootOf(root)).name).toBe(kindest);
  });
});
