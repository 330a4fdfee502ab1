import { describe, expect, test } from 'vitest';
import { cautionInWords, cautionsFor } from './cautions.ts';

const always =
  'General information only: warm up, build up time and tempo step by step, and rest often. Stop if you feel pain, numbness or tingling, and see a licensed clinician; for technique ask a qualified teacher.';

describe('cautions', () => {
  test.each([
    [undefined, 120],
    [0, 120],
    [100, 120],
    [88, 106],
  ])('for a hand that opens %d mm of %i are the general one', (openingMm, reachMm) => {
    expect(cautionsFor(openingMm, reachMm).map(cautionInWords)).toEqual([always]);
  });

  test('for a wide hand begin with how wide it is', () => {
    expect(cautionsFor(115.6, 120).map(cautionInWords)).toEqual([
      'The hand opens 116 mm here, which is a wide stretch for a hand that reaches 120 mm. Start higher on the neck, use a capo or let the hand move, and do not hold or repeat the stretch for long; a teacher can show what suits your hand.',
      always,
    ]);
  });

  test('come sooner for a smaller hand', () => {
    expect(cautionsFor(95, 120)).toHaveLength(1);
    expect(cautionsFor(95, 106)).toHaveLength(2);
  });
});
