import { UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { numbersOf } from './by-hand.ts';
import { modeOf } from './in-core.ts';
import { melas } from './tables/melas.ts';
import { thaats } from './tables/thaats.ts';

const degrees: Readonly<Record<string, string>> = {
  S: '1',
  r: 'b2',
  R: '2',
  g: 'b3',
  G: '3',
  m: '4',
  M: '#4',
  P: '5',
  d: 'b6',
  D: '6',
  n: 'b7',
  N: '7',
};

describe('the ten thaats', () => {
  test('are ten, all different', () => {
    expect(new Set(thaats.map(([, , formula]) => modeOf(formula).id)).size).toBe(10);
  });

  test.each(thaats)('%s, %s, is %s', (_name, sargam, formula, semitones) => {
    const read = sargam.split(' ').map((swara) => degrees[swara]);
    const mode = modeOf(formula);
    expect(read.join(' ')).toBe(formula);
    expect(mode.formula.join(' ')).toBe(formula);
    expect(mode.semitones).toEqual(numbersOf(semitones));
  });

  test.each(thaats)(
    '%s (%s, %s, %s) has the notes of mela %i',
    (_name, _sargam, formula, _semitones, number) => {
      const mela = melas.find(([its]) => its === number);
      expect(modeOf(formula).semitones).toEqual(numbersOf(mela?.[3] ?? ''));
    },
  );

  test.each(thaats)('%s (%s) agrees with its church mode, if it has one', (...row) => {
    const [, , formula, , , church] = row;
    const mode = modeOf(formula);
    expect(mode.base.moved.length === 0 ? mode.systematicName : undefined).toBe(church);
  });
});

describe('the 32 thaats (N. A. Jairazbhoy, 1971; recalled)', () => {
  test('are the modes with natural or flat 2, 3, 6 and 7, natural or sharp 4 and a perfect fifth', () => {
    const positions = [['1'], ['2', 'b2'], ['3', 'b3'], ['4', '#4'], ['5'], ['6', 'b6'], ['7', 'b7']];
    const held = UNIVERSE.modes.filter(({ formula }) =>
      formula.every((degree, at) => positions[at]?.includes(degree)),
    );
    expect(held).toHaveLength(32);
    for (const [, , formula] of thaats) expect(held).toContain(modeOf(formula));
  });
});
