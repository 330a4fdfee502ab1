/**
 * Why something cannot be played, and what to take care of. British English, as core has it.
 */
import { type Caution, cautionInWords, type Reason, reasonInWords } from '@stillroot/core';
import { signs } from '../signs.ts';

/** Why something cannot be played, without a full stop, to be put after a colon. */
export function reasonWords(reason: Reason): string {
  return signs(reasonInWords(reason));
}

/** A caution in whole sentences. */
export function cautionWords(caution: Caution): string {
  return cautionInWords(caution);
}
