import { fretDistanceMm } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import {
  computedFrets,
  fretConstant,
  landmarks,
  publishedFrets,
  ruleOfEighteenFrets,
} from './tables/fret-positions.ts';
import { reaches } from './tables/reaches.ts';

const byRuleOfEighteen = (scaleLengthMm: number, fret: number): number =>
  scaleLengthMm * (1 - (17 / 18) ** fret);

describe('fret positions', () => {
  test.each(publishedFrets)(
    '%s (scale %f mm, fret %i at %f mm)',
    (_what, scaleLengthMm, fret, atMm, within) => {
      expect(Math.abs(fretDistanceMm(scaleLengthMm, fret) - atMm)).toBeLessThanOrEqual(within);
    },
  );

  test.each(computedFrets)('of %s, %f mm, agree with the computed table', (_what, scaleLengthMm, atMm) => {
    expect(atMm).toHaveLength(24);
    for (const [at, distanceMm] of atMm.entries()) {
      expect(Math.abs(fretDistanceMm(scaleLengthMm, at + 1) - distanceMm)).toBeLessThan(0.00051);
    }
  });

  test.each(landmarks)('fret %i lies at %f of the scale length', (fret, fraction) => {
    expect(fretDistanceMm(1, fret)).toBeCloseTo(fraction, 4);
  });

  test.each([330, 635, 648, 863.6])(
    'on %f mm fret 12 is half and fret 24 three quarters',
    (scaleLengthMm) => {
      expect(fretDistanceMm(scaleLengthMm, 0)).toBe(0);
      expect(fretDistanceMm(scaleLengthMm, 12)).toBe(scaleLengthMm / 2);
      expect(fretDistanceMm(scaleLengthMm, 24)).toBe((scaleLengthMm * 3) / 4);
    },
  );

  test.each([352, 648, 863.6])('on %f mm agree with dividing what remains by 17.817', (scaleLengthMm) => {
    let remainingMm = scaleLengthMm;
    for (let fret = 1; fret <= 24; fret += 1) {
      remainingMm -= remainingMm / fretConstant;
      expect(Math.abs(fretDistanceMm(scaleLengthMm, fret) - (scaleLengthMm - remainingMm))).toBeLessThan(
        0.005,
      );
    }
  });
});

describe('the rule of 18', () => {
  test.each(ruleOfEighteenFrets)(
    'puts fret %i of 350 mm at %f mm, nearer the nut than core does',
    (fret, atMm) => {
      expect(Math.abs(byRuleOfEighteen(350, fret) - atMm)).toBeLessThan(0.02);
      expect(fretDistanceMm(350, fret)).toBeGreaterThan(atMm);
    },
  );

  test('falls short of core by 0.36 % of the scale length at fret 12 (Buckland)', () => {
    const shortMm = fretDistanceMm(648, 12) - byRuleOfEighteen(648, 12);
    expect(shortMm / 648).toBeCloseTo(0.0036, 4);
  });
});

describe('the reach of a hand', () => {
  test.each(reaches)('on a %s, %f mm, from fret %i', (_scale, scaleLengthMm, from, spansMm) => {
    const computed = [3, 4, 5, 6, 7].map(
      (covered) => fretDistanceMm(scaleLengthMm, from + covered - 1) - fretDistanceMm(scaleLengthMm, from),
    );
    expect(spansMm).toHaveLength(computed.length);
    for (const [at, spanMm] of computed.entries()) {
      expect(Math.abs(spanMm - (spansMm[at] ?? Number.NaN))).toBeLessThan(0.051);
    }
  });
});
