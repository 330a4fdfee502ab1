/**
 * The cautions that go with every fingering: as data, so that they can be said in any language, and in English
 * words that a player understands. General information, never advice for a person: that is a teacher's and a
 * clinician's part. The wide-stretch figures are engineering estimates; the rest follows the reviews of
 * playing-related disorders by Zaza (CMAJ 1998) and Chan and Ackermann (Frontiers in Psychology 2014).
 */
import { comfortableReachMm } from './hand.ts';

/** What to take care of. */
export type Caution =
  /** The hand opens wide, for a hand of this reach. */
  | { readonly kind: 'wide-stretch'; readonly openingMm: number; readonly reachMm: number }
  /** What goes with all practice. */
  | { readonly kind: 'practice' };

const PRACTICE: Caution = { kind: 'practice' };

/**
 * Cautions for fingerings whose hand opens as wide as `openingMm`; undefined where there are none.
 * @param reachMm of the hand that they were made for
 * @returns in whole millimetres
 */
export function cautionsFor(openingMm: number | undefined, reachMm: number): readonly Caution[] {
  if (openingMm === undefined || openingMm <= comfortableReachMm(reachMm)) return [PRACTICE];
  const wide = { openingMm: Math.round(openingMm), reachMm: Math.round(reachMm) };
  return [{ kind: 'wide-stretch', ...wide }, PRACTICE];
}

/** A caution in whole English sentences. */
export function cautionInWords(caution: Caution): string {
  switch (caution.kind) {
    case 'wide-stretch':
      return `The hand opens ${caution.openingMm} mm here, which is a wide stretch for a hand that reaches ${caution.reachMm} mm. Start higher on the neck, use a capo or let the hand move, and do not hold or repeat the stretch for long; a teacher can show what suits your hand.`;
    case 'practice':
      return 'General information only: warm up, build up time and tempo step by step, and rest often. Stop if you feel pain, numbness or tingling, and see a licensed clinician; for technique ask a qualified teacher.';
  }
}
