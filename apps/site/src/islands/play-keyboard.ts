/**
 * Keys of the play-along, beside what buttons do with space and Enter by themselves.
 */
import { TEMPO_STEP_BPM } from '../markup/play-panel.ts';
import type { Seek } from './play-place.ts';

type Press = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'altKey' | 'metaKey'>;

const SEEKS: Readonly<Partial<Record<string, Seek>>> = {
  ArrowLeft: 'note-back',
  ArrowRight: 'note-on',
  Home: 'start',
};
const SHIFTED_SEEKS: Readonly<Partial<Record<string, Seek>>> = {
  ArrowLeft: 'mode-back',
  ArrowRight: 'mode-on',
};

/** Where a key leads, if anywhere. */
export function seekOfKey(press: Press): Seek | undefined {
  if (isCommand(press)) return undefined;
  return (press.shiftKey ? SHIFTED_SEEKS : SEEKS)[press.key];
}

/** By how much a key changes the tempo; 0 for other keys. */
export function tempoStepOfKey(press: Press): number {
  if (isCommand(press)) return 0;
  if (press.key === '+') return TEMPO_STEP_BPM;
  return press.key === '-' || press.key === '−' ? -TEMPO_STEP_BPM : 0;
}

/** Keys held with these belong to the browser. */
function isCommand({ ctrlKey, altKey, metaKey }: Press): boolean {
  return ctrlKey || altKey || metaKey;
}
