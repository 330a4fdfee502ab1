import { describe, expect, test } from 'vitest';
import { packShift, packStretch, STRING_CHANGE, unpackCost } from './cost.ts';

describe('a cost', () => {
  test.each([
    [[], 0, 0],
    [[1], 0, 0],
    [[], 1, 0],
    [[], 0, 1],
    [[1000, 200, 34], 567, 12],
    [[43_180], 9999, 127],
  ])(
    'of shifts of %j and a stretch of %i tenths of a millimetre and %i changes is taken apart as it was packed',
    (shifts, stretch, changes) => {
      const travel = shifts.reduce((sum, one) => sum + one, 0);
      const shifted = shifts.reduce((sum, one) => sum + packShift(one), 0);
      expect(unpackCost(shifted + packStretch(stretch) + changes * STRING_CHANGE)).toEqual({
        outOfReach: 0,
        travelMm: travel / 10,
        shifts: shifts.length,
        stretchMm: stretch / 10,
        stringChanges: changes,
      });
    },
  );

  test('stays a whole number that is exact', () => {
    expect(Number.isSafeInteger(packShift(100_000) + packStretch(100_000) + 127)).toBe(true);
  });

  test('sorts by travel, then by shifts, then by stretch, then by string changes', () => {
    const anyChanges = 127 * STRING_CHANGE;
    expect(packStretch(1)).toBeGreaterThan(anyChanges);
    expect(packShift(0)).toBeGreaterThan(packStretch(100_000) + anyChanges);
    expect(packShift(5) + packShift(5)).toBeGreaterThan(packShift(10) + packStretch(100_000));
    expect(packShift(11)).toBeGreaterThan(packShift(5) + packShift(5) + packStretch(100_000));
  });
});
