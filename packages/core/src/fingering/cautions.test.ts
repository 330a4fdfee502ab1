import { describe, expect, test } from 'vitest';
import { cautionsFor } from './cautions.ts';
import { COMFORTABLE_REACH_MM } from './hand.ts';

const always =
  'General information only: warm up, build up time and tempo step by step, and rest often. Stop if you feel pain, numbness or tingling, and see a licensed clinician; for technique ask a qualified teacher.';

describe('cautions', () => {
  test.each([[undefined], [0], [COMFORTABLE_REACH_MM]])(
    'for a hand of %d mm are the general one',
    (reachMm) => {
      expect(cautionsFor(reachMm)).toEqual([always]);
    },
  );

  test('for a wide hand begin with how wide it is', () => {
    expect(cautionsFor(115.6)).toEqual([
      'The hand opens 116 mm here, which is a wide stretch for many hands. Start higher on the neck, use a capo or let the hand move, and do not hold or repeat the stretch for long; a teacher can show what suits your hand.',
      always,
    ]);
  });
});
