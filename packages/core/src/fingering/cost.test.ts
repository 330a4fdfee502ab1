import { describe, expect, test } from 'vitest';
import { packStretch, packTravel, STRING_CHANGE, unpackCost } from './cost.ts';

describe('a cost', () => {
  test.each([
    [0, 0, 0],
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
    [1234, 567, 12],
    [43_180, 9999, 127],
  ])(
    'of %i and %i tenths of a millimetre and %i changes is taken apart as it was packed',
    (travel, stretch, changes) => {
      const packed = packTravel(travel) + packStretch(stretch) + changes * STRING_CHANGE;
      expect(unpackCost(packed)).toEqual({
        travelMm: travel / 10,
        stretchMm: stretch / 10,
        stringChanges: changes,
      });
    },
  );

  test('stays a whole number that is exact', () => {
    expect(Number.isSafeInteger(packTravel(100_000) + packStretch(100_000) + 127)).toBe(true);
  });

  test('sorts by travel, then by stretch, then by string changes', () => {
    const anyChanges = 127 * STRING_CHANGE;
    expect(packStretch(1)).toBeGreaterThan(anyChanges);
    expect(packTravel(1)).toBeGreaterThan(packStretch(100_000) + anyChanges);
    expect(packTravel(2)).toBeGreaterThan(packTravel(1) + packStretch(100_000));
  });
});
