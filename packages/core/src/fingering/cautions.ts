/**
 * The cautions that go with every fingering, in words a player understands. General information, never
 * advice for a person: that is a teacher's and a clinician's part. The wide-stretch figures are
 * engineering estimates; the rest follows the reviews of playing-related disorders by Zaza (CMAJ 1998)
 * and Chan and Ackermann (Frontiers in Psychology 2014).
 */
import { COMFORTABLE_REACH_MM } from './hand.ts';

const ALWAYS =
  'General information only: warm up, build up time and tempo step by step, and rest often. Stop if you feel pain, numbness or tingling, and see a licensed clinician; for technique ask a qualified teacher.';

/**
 * Cautions for fingerings whose hand opens as wide as `reachMm`; undefined where there are none.
 */
export function cautionsFor(reachMm: number | undefined): readonly string[] {
  if (reachMm === undefined || reachMm <= COMFORTABLE_REACH_MM) return [ALWAYS];
  const wide = `The hand opens ${Math.round(reachMm)} mm here, which is a wide stretch for many hands. Start higher on the neck, use a capo or let the hand move, and do not hold or repeat the stretch for long; a teacher can show what suits your hand.`;
  return [wide, ALWAYS];
}
