/**
 * The neck that choices ask for, and what is wrong with those that cannot be had.
 */
import {
  buildNeck,
  fail,
  type Instrument,
  invariant,
  type Neck,
  type Problem,
  REACH_RANGE_MM,
  type Result,
  readTuning,
  succeed,
  type Tuning,
} from '@stillroot/core';
import { CHOOSER } from '../words/interface.ts';
import type { Choices } from './choices.ts';

/** A neck, always; problems stand beside the fields that they belong to. */
export interface ChosenNeck {
  readonly neck: Neck;
  readonly instrument: Instrument;
  readonly problems: readonly Problem[];
}

/** Builds the neck. Where a choice cannot be had its default stands in, and a problem says so. */
export function neckFrom(choices: Choices, instruments: readonly Instrument[], usualId: string): ChosenNeck {
  const asked = instrumentOf(choices.instrument || usualId, instruments);
  const instrument = asked.ok ? asked.value : heldBy(instrumentOf(usualId, instruments));
  const tuning = tuningOf(choices.tuning, instrument);
  const strings = tuning.ok ? tuning.value : instrument.tunings[0];
  const capoed = buildNeck(instrument, strings, { capoFret: choices.capo });
  const neck = capoed.ok ? capoed.value : heldBy(buildNeck(instrument, strings));
  const results: readonly Result<unknown>[] = [asked, tuning, capoed, reachOf(choices.reach)];
  return { neck, instrument, problems: results.flatMap((result) => (result.ok ? [] : [result.problem])) };
}

/** A reach that may be asked for; undefined where core's own is meant. */
export function reachOf(reach: number | undefined): Result<number | undefined> {
  const { from, to } = REACH_RANGE_MM;
  if (reach === undefined || (reach >= from && reach <= to)) return succeed(reach);
  return fail('reach', String(reach), `${from} to ${to} mm`);
}

function instrumentOf(id: string, instruments: readonly Instrument[]): Result<Instrument> {
  const found = instruments.find((instrument) => instrument.id === id);
  return found ? succeed(found) : fail('instrument', id, CHOOSER.notInstrument);
}

function tuningOf(text: string, instrument: Instrument): Result<Tuning> {
  const { tunings } = instrument;
  if (text === '') return succeed(tunings[0]);
  const known = tunings.find(({ id }) => id === text);
  if (known) return succeed(known);
  const typed = readTuning(text, { instrument });
  if (typed.ok) return succeed(typed.value.tuning);
  // A word without a digit may have been meant as an id, so open strings alone would be the wrong advice.
  return /\d/.test(text) ? typed : fail('tuning', text, CHOOSER.notTuning);
}

function heldBy<T>(result: Result<T>): T {
  invariant(result.ok, 'the default can be had');
  return result.value;
}
