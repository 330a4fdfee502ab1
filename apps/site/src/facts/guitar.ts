/**
 * The instrument that static pages are drawn on: the first of the catalogue, in its usual tuning.
 */
import { CATALOGUE, type InstrumentEntry } from '@stillroot/catalog';
import { buildNeck, type Instrument, invariant, type Neck, type Tuning } from '@stillroot/core';

/** The neck of an instrument in one of its own tunings. */
export function neckOf(instrument: Instrument, tuning: Tuning = instrument.tunings[0]): Neck {
  const neck = buildNeck(instrument, tuning);
  invariant(neck.ok, `${instrument.id} has a neck`);
  return neck.value;
}

function firstInstrument(): InstrumentEntry {
  const [first] = CATALOGUE.instruments;
  invariant(first !== undefined, 'the catalogue has an instrument');
  return first;
}

/** The instrument itself. */
export const GUITAR: InstrumentEntry = firstInstrument();

/** Its neck. */
export const GUITAR_NECK: Neck = neckOf(GUITAR);
