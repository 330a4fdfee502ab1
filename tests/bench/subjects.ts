/**
 * What the bench plays: modes, roots and necks by name.
 */
import { findInstrument } from '@stillroot/catalog';
import {
  buildNeck,
  EVERYDAY_ROOTS,
  invariant,
  type Mode,
  type Neck,
  type Root,
  UNIVERSE,
} from '@stillroot/core';

/** One everyday root a pitch class. */
export function twelveRoots(): readonly Root[] {
  return EVERYDAY_ROOTS.filter(({ alteration }) => alteration <= 0);
}

/** The mode with these steps. */
export function modeOf(id: string): Mode {
  const mode = UNIVERSE.modesById.get(id);
  invariant(mode !== undefined, `${id} is a mode`);
  return mode;
}

/** The neck of an instrument in its standard tuning. */
export function neckOf(id: string): Neck {
  const instrument = findInstrument(id);
  invariant(instrument !== undefined, `${id} is in the catalogue`);
  const neck = buildNeck(instrument, instrument.tunings[0]);
  invariant(neck.ok, `${id} has a neck`);
  return neck.value;
}
