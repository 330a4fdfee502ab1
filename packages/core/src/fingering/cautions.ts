/**
 * The cautions that go with every fingering, in words a player understands. General information, never
 * advice for a person: that is a teacher's and a clinician's part. The wide-stretch figures are
 * engineering estimates; the rest follows the reviews of playing-related disorders by Zaza (CMAJ 1998)
 * and Chan and Ackermann (Frontiers in Psychology 2014).
 */
import { comfortableReachMm } from './hand.ts';

const ALWAYS =
  'General information only: warm up, build up time and tempo step by step, and rest often. Stop if you feel pain, numbness or tingling, and see a licensed clinician; for technique ask a qualified teacher.';

/**
 * Cautions for fingerings whose hand opens as wide as `openingMm`; undefined where there are none.
 * @param reachMm of the hand that they were made for
 */
export function cautionsFor(openingMm: number | undefined, reachMm: number): readonly string[] {
  if (openingMm === undefined || openingMm <= comfortableReachMm(reachMm)) return [ALWAYS];
  const wide = `The hand opens ${Math.round(openingMm)} mm here, which is a wide stretch for a hand that reaches ${Math.round(reachMm)} mm. Start higher on the neck, use a capo or let the hand move, and do not hold or repeat the stretch for long; a teacher can show what suits your hand.`;
  return [wide, ALWAYS];
}
