/**
 * Choices against what a page shows anyway.
 */
import { HAND_SIZES } from '@stillroot/core';
import { neckWords } from '../markup/playing.ts';
import { CHOOSER } from '../words/interface.ts';
import type { Known } from './catalogue.ts';
import type { Choices } from './choices.ts';
import { addressedTuning } from './meant-tuning.ts';
import type { ChosenNeck } from './neck-from.ts';
import { tuningNaming } from './typed-naming.ts';

/** What a page shows where nothing is chosen. */
export interface Usual {
  readonly instrument: string;
  readonly labels: 'degrees' | 'notes';
  /** Whether fingers can be shown at all. */
  readonly isFingered: boolean;
}

/** What belongs to one instrument alone, not chosen. */
export const OF_NO_NECK = {
  tuning: '',
  capoStrings: '',
  frets: undefined,
  scaleLength: '',
  fret: undefined,
} as const;

/** Choices that say what would be drawn anyway are no choices. */
export function withoutDefaults(choices: Choices, usual: Usual, { instruments }: Known): Choices {
  const id = choices.instrument || usual.instrument;
  const isUsual = choices.labels === usual.labels || (choices.labels === 'fingers' && !usual.isFingered);
  const held = instruments.find((instrument) => instrument.id === id);
  const tuning = held ? addressedTuning(choices.tuning, held, tuningNaming(choices)) : choices.tuning;
  return {
    ...choices,
    instrument: id === usual.instrument ? '' : id,
    tuning: tuning === held?.tunings[0].id ? '' : tuning,
    labels: isUsual ? undefined : choices.labels,
    reach: choices.reach === HAND_SIZES[choices.handSize].reachMm ? undefined : choices.reach,
  };
}

/** Which neck was chosen, for the folded chooser; undefined where none was. */
export function summaryWords(choices: Choices, { neck }: ChosenNeck): string | undefined {
  const { instrument, tuning, capo, hand } = choices;
  if (instrument === '' && tuning === '' && capo === 0 && hand === 'right') return undefined;
  const left = hand === 'left' ? `, ${CHOOSER.left}` : '';
  return `${neckWords(neck)}${left} · ${CHOOSER.change}`;
}
