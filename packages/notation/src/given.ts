/**
 * Necks and scales for the tests of this package; no part of its door.
 */
import {
  buildNeck,
  type Instrument,
  type Neck,
  type NeckOptions,
  parseRoot,
  parseTuning,
  type Result,
  type Scale,
  spell,
  UNIVERSE,
} from '@stillroot/core';

/** What a result holds; throws where it holds a problem. */
export function valueIn<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.expected);
  return result.value;
}

/** Scale lengths and open strings of the necks here are common practice (no one source). */
export function neckOf(open: string, rest: Partial<Instrument> = {}, options: NeckOptions = {}): Neck {
  const tunings = [valueIn(parseTuning(open))] as const;
  const size = { scaleLengthMm: 648, frets: 22, shortStrings: [], handFrame: 'one-finger-per-fret' } as const;
  const instrument: Instrument = { id: 'neck', name: 'neck', aliases: [], ...size, ...rest, tunings };
  return valueIn(buildNeck(instrument, tunings[0], options));
}

/** A mode, by its steps, on a root. */
export function scaleOf(root: string, steps: string): Scale {
  const mode = UNIVERSE.modesById.get(steps);
  if (mode === undefined) throw new Error(`no mode ${steps}`);
  return spell(mode, valueIn(parseRoot(root)));
}
