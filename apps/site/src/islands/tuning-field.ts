/**
 * The field for open strings, in which a tuning stands in its reader's own names of notes. What the field says
 * and what that means are kept together, so that a text is taken once and not again in other names.
 */
import type { Instrument } from '@stillroot/core';
import type { Naming } from '../words/note-names.ts';
import { tuningInOwnNames } from '../words/typed-tuning.ts';
import { type MeantTuning, typedTuning } from './meant-tuning.ts';

interface Said extends MeantTuning {
  readonly text: string;
  readonly naming: Naming;
}

const said = new WeakMap<Element, Said>();

type TextField = Pick<HTMLInputElement, 'value'> & Element;

/** The tuning that a field means. */
export function readTuningField(
  field: TextField,
  instrument: Instrument,
  instruments: readonly Instrument[],
  naming: Naming,
): string {
  const known = said.get(field);
  if (known?.text === field.value) return known.tuning;
  const meant = typedTuning(field.value, instrument, instruments, naming);
  said.set(field, { ...meant, text: field.value, naming });
  return meant.tuning;
}

/** Makes a field say a tuning; what was typed for it is left as it is. */
export function writeTuningField(field: TextField, tuning: string, naming: Naming): void {
  const known = said.get(field);
  if (known?.text === field.value && known.tuning === tuning && known.naming === naming) return;
  const text = tuningInOwnNames(tuning, naming);
  field.value = text;
  said.set(field, { tuning, text, naming });
}

/** What else was typed for a tuning could mean; undefined where it could mean nothing else. */
export function otherMeaning(field: TextField | undefined, tuning: string): string | undefined {
  const known = field && said.get(field);
  return known?.tuning === tuning ? known.other : undefined;
}
