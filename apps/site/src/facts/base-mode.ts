/**
 * The church mode that a mode is read from, as a mode of its own.
 */
import { CHURCH_MODES, invariant, type Mode, UNIVERSE } from '@stillroot/core';

const churchModes: ReadonlyMap<string, Mode> = new Map(
  CHURCH_MODES.map(({ name, semitones }) => {
    const found = UNIVERSE.modes.find((mode) => mode.semitones.join() === semitones.join());
    invariant(found !== undefined, `${name} is a mode`);
    return [name, found];
  }),
);

/** The church mode that a mode is read from; itself where it is one. */
export function baseModeOf({ base }: Mode): Mode {
  const found = churchModes.get(base.name);
  invariant(found !== undefined, `${base.name} is a church mode`);
  return found;
}
