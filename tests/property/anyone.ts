/**
 * Random necks and questions, within what may be asked: any number of strings in any tuning, short strings,
 * missing frets, capos.
 */
import {
  buildNeck,
  formatMidi,
  type Instrument,
  type Mode,
  type Neck,
  type NeckOptions,
  ORDERS,
  type Order,
  parseTuning,
  ROOTS,
  type Root,
  STYLES,
  type Style,
  UNIVERSE,
} from '@stillroot/core';
import fc from 'fast-check';
import { valueOf } from '../reference/in-core.ts';

/** A neck, how it came about, and a question about it. */
export interface Question {
  readonly instrument: Instrument;
  readonly options: NeckOptions;
  readonly neck: Neck;
  readonly mode: Mode;
  readonly root: Root;
  readonly style: Style;
  readonly order: Order;
  readonly fret: number | undefined;
  /** Whole tenths of a millimetre, as answers give it. */
  readonly reachMm: number;
  readonly limit: number;
}

/** Frets of which some are missing; the first semitone always has one. */
const partialFrets = fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 6, maxLength: 20 }).map((gaps) => {
  let semitones = 0;
  return [1, ...gaps].map((gap, at) => {
    semitones += gap;
    return { fret: at === 7 ? 7.5 : at + 1, semitones };
  });
});

const instruments = fc
  .record({
    opens: fc.array(fc.integer({ min: 24, max: 76 }), { minLength: 1, maxLength: 8 }),
    isAscending: fc.boolean(),
    fourths: fc.nat(2),
    scaleLengthMm: fc.integer({ min: 330, max: 900 }),
    frets: fc.integer({ min: 7, max: 24 }),
    handFrame: fc.constantFrom('one-finger-per-fret' as const, 'two-frets-per-finger' as const),
    partial: fc.option(partialFrets, { freq: 5 }),
    short: fc.option(fc.record({ string: fc.nat(7), startsAtFret: fc.integer({ min: 1, max: 6 }) }), { freq: 4 }),
  })
  .map(({ opens, isAscending, fourths, partial, short, ...rest }): Instrument => {
    const inFourths = opens.map((_, at) => 28 + (opens[0] ?? 0) % 12 + at * (5 + (opens.length % 3)));
    const chosen = fourths > 0 ? inFourths : isAscending ? opens.toSorted((a, b) => a - b) : opens;
    return {
      ...rest,
      id: 'any',
      name: 'any',
      aliases: [],
      tunings: [valueOf(parseTuning(chosen.map((midi) => formatMidi(midi)).join('-')))],
      ...(partial && { partialFrets: partial }),
      shortStrings: short
        ? [{ string: (short.string % chosen.length) + 1, startsAtFret: short.startsAtFret }]
        : [],
    };
  });

/** Any question about any neck. */
export const questions: fc.Arbitrary<Question> = fc
  .record({
    instrument: instruments,
    capo: fc.option(
      fc.record({ capoFret: fc.nat(5), capoStrings: fc.option(fc.array(fc.integer({ min: 1, max: 8 }))) }),
      { freq: 2 },
    ),
    mode: fc.oneof(fc.constantFrom(...UNIVERSE.modes), fc.constantFrom(...UNIVERSE.modes.slice(-70))),
    root: fc.constantFrom(...ROOTS),
    style: fc.constantFrom(...STYLES),
    order: fc.constantFrom(...ORDERS),
    fret: fc.option(fc.integer({ min: 0, max: 30 }), { nil: undefined }),
    reachMm: fc.integer({ min: 400, max: 2000 }).map((tenths) => tenths / 10),
    limit: fc.integer({ min: 1, max: 5 }),
  })
  .map(({ instrument, capo, ...asked }) => {
    const options: NeckOptions = capo
      ? { capoFret: capo.capoFret, ...(capo.capoStrings && { capoStrings: capo.capoStrings }) }
      : {};
    return { instrument, options, neck: valueOf(buildNeck(instrument, instrument.tunings[0], options)), ...asked };
  });
