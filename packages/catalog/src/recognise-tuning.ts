/**
 * Recognising a tuning by its open strings.
 */
import { CATALOGUE } from './catalogue.ts';
import type { InstrumentEntry, TuningEntry } from './entries.ts';

/** A tuning of the catalogue and the instrument it belongs to. */
export interface RecognisedTuning {
  readonly instrument: InstrumentEntry;
  readonly tuning: TuningEntry;
}

const BY_OPEN_STRINGS: ReadonlyMap<string, readonly RecognisedTuning[]> = Map.groupBy(
  CATALOGUE.instruments.flatMap((instrument) => instrument.tunings.map((tuning) => ({ instrument, tuning }))),
  ({ tuning }) => keyOf(tuning.courses.map(([principal]) => principal.midi)),
);

/**
 * Every instrument and tuning of the catalogue that has exactly these open strings.
 * @param openMidi the MIDI number of each course's principal string, from the lowest-sounding side to
 *   string 1, as tunings are written
 * @param own the instrument they were set on: its tuning then comes first; the rest in the catalogue's order
 * @example recogniseTuning([38, 45, 50, 55, 57, 62])[0]?.tuning.id // 'dadgad'
 */
export function recogniseTuning(
  openMidi: readonly number[],
  own?: Pick<InstrumentEntry, 'id'>,
): readonly RecognisedTuning[] {
  const found = BY_OPEN_STRINGS.get(keyOf(openMidi)) ?? [];
  return found.toSorted((a, b) => Number(b.instrument.id === own?.id) - Number(a.instrument.id === own?.id));
}

function keyOf(openMidi: readonly number[]): string {
  return openMidi.join(' ');
}
