import {
  CHURCH_MODES,
  commonCount,
  degreeIn,
  distanceBetween,
  familyOf,
  formatDegree,
  movedDegrees,
  neighboursOf,
  pitchClassesOf,
  relativeScales,
  setOf,
  sharedScales,
} from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { numbersOf } from './by-hand.ts';
import { modeOf, scaleOf } from './in-core.ts';
import {
  brightnessOrder,
  brightnessSteps,
  churchModes,
  sharedDegrees,
  sharedPitchClasses,
} from './tables/church-modes.ts';

const MAJOR = '1 2 3 4 5 6 7';
const formulas = new Map(churchModes.map(([name, formula]) => [name, formula]));
const formulaOf = (name: string): string => formulas.get(name) ?? '';

describe('the seven church modes', () => {
  test.each(churchModes)(
    '%s is %s, %s semitones',
    (name, formula, semitones, _final, _degree, brightness) => {
      const mode = modeOf(formula);
      expect(mode.formula.join(' ')).toBe(formula);
      expect(mode.semitones).toEqual(numbersOf(semitones));
      expect(mode.brightness).toBe(brightness);
      expect(mode.systematicName).toBe(name);
      expect(mode.base).toEqual({ name, moved: [] });
    },
  );

  test.each(churchModes)('%s (%s, %s) is the white keys from %s', (_name, formula, _semitones, final) => {
    const whiteKeys = 'CDEFGABCDEFGAB';
    const from = whiteKeys.indexOf(final);
    expect(scaleOf(final, formula).notes.join('')).toBe(whiteKeys.slice(from, from + 7));
  });

  test.each(churchModes)(
    '%s (%s, %s, from %s) stands on degree %i of the major scale',
    (_name, formula, _semitones, _final, degree) => {
      expect(degreeIn(modeOf(MAJOR), modeOf(formula))).toBe(degree);
      expect(familyOf(modeOf(formula)).modes).toContain(modeOf(MAJOR));
    },
  );

  test('core lists them in the order of the degrees they stand on', () => {
    expect(CHURCH_MODES).toEqual(
      churchModes.map(([name, , semitones]) => ({ name, semitones: numbersOf(semitones) })),
    );
  });

  test('are the seven modes of one family, whose head is the brightest', () => {
    const { modes } = familyOf(modeOf(MAJOR));
    expect(modes[0]?.systematicName).toBe('Lydian');
    const byBrightness = modes.toSorted((a, b) => b.brightness - a.brightness);
    expect(byBrightness.map((mode) => mode.systematicName)).toEqual(brightnessOrder);
  });
});

describe('parallel church modes', () => {
  test.each(brightnessSteps)('%s darkens to %s by %s becoming %s', (brighter, darker, before, after) => {
    const from = modeOf(formulaOf(brighter));
    const to = modeOf(formulaOf(darker));
    const [moved, ...others] = movedDegrees(from.semitones, to.semitones);
    expect(others).toEqual([]);
    expect(moved?.by).toBe(-1);
    const degree = moved?.degree ?? 0;
    expect(formatDegree(degree, from.alterations[degree - 1] ?? Number.NaN)).toBe(before);
    expect(formatDegree(degree, to.alterations[degree - 1] ?? Number.NaN)).toBe(after);
    expect(neighboursOf(from)).toContainEqual({ mode: to, moved });
  });

  const pairs = brightnessOrder.flatMap((one, row) =>
    brightnessOrder.map(
      (other, column) =>
        [one, other, sharedPitchClasses[row]?.[column], sharedDegrees[row]?.[column]] as const,
    ),
  );

  test.each(pairs)(
    '%s and %s share %i pitch classes and spell %i degrees alike',
    (one, other, sounds, names) => {
      const a = scaleOf('D', formulaOf(one));
      const b = scaleOf('D', formulaOf(other));
      expect(commonCount(setOf(pitchClassesOf(a)), setOf(pitchClassesOf(b)))).toBe(sounds);
      expect(a.notes.filter((note) => b.notes.includes(note))).toHaveLength(names ?? Number.NaN);
    },
  );

  test('lie as far apart as their places in the order of brightness', () => {
    for (const [at, one] of brightnessOrder.entries()) {
      for (const [place, other] of brightnessOrder.entries()) {
        const distance = distanceBetween(
          modeOf(formulaOf(one)).semitones,
          modeOf(formulaOf(other)).semitones,
        );
        expect(distance).toBe(Math.abs(at - place));
      }
    }
  });
});

describe('relative church modes', () => {
  test('share all seven pitch classes (any harmony textbook; recalled)', () => {
    const relatives = relativeScales(scaleOf('C', MAJOR));
    expect(relatives.map(({ root, mode }) => `${root.name} ${mode.systematicName}`)).toEqual(
      churchModes.map(([name, , , final]) => `${final} ${name}`),
    );
    for (const relative of relatives) {
      expect(commonCount(setOf(pitchClassesOf(relative)), setOf([0, 2, 4, 5, 7, 9, 11]))).toBe(7);
    }
  });

  test('major keys a fifth apart share six notes (J. Straus, Introduction to Post-Tonal Theory)', () => {
    const nearest = sharedScales(scaleOf('C', MAJOR), 6)
      .filter(({ scale, count }) => count === 6 && scale.mode === modeOf(MAJOR))
      .map(({ scale }) => scale.root.name);
    expect(nearest.toSorted()).toEqual(['F', 'G']);
  });
});
