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
  OPEN_STRING_USES,
  type OpenStrings,
  ORDERS,
  type Order,
  parseTuning,
  type Result,
  ROOTS,
  type Root,
  SHARINGS,
  type Sharing,
  STYLES,
  type Style,
  UNIVERSE,
} from '@stillroot/core';
import fc from 'fast-check';

/** A neck, how it came about, and a question about it. */
export interface Question {
  readonly instrument: Instrument;
  readonly options: NeckOptions;
  readonly neck: Neck;
  readonly mode: Mode;
  readonly root: Root;
  readonly style: Style;
  readonly order: Order;
  readonly openStrings: OpenStrings;
  readonly sharing: Sharing;
  readonly fret: number | undefined;
  /** Whole tenths of a millimetre, as answers give it. */
  readonly reachMm: number;
  readonly limit: number;
}

/** Absent most of the time: there one time in `often`. */
function oneIn<T>(often: number, arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> {
  return fc.oneof({ weight: often - 1, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary });
}

/** Frets of which some are missing; the first semitone always has one. */
const partialFrets = fc.array(fc.integer({ min: 1, max: 2 }), { minLength: 7, maxLength: 20 }).map((gaps) => {
  let semitones = 0;
  return [1, ...gaps].map((gap, at) => {
    semitones += gap;
    return { fret: at === 7 ? 7.5 : at + 1, semitones };
  });
});

const instruments = fc
  .record({
    opens: fc.array(fc.integer({ min: 24, max: 76 }), { minLength: 1, maxLength: 8, size: 'max' }),
    isAscending: fc.boolean(),
    ladders: fc.nat(3),
    scaleLengthMm: fc.integer({ min: 330, max: 900 }),
    frets: fc.integer({ min: 7, max: 28 }),
    handFrame: fc.constantFrom('one-finger-per-fret' as const, 'two-frets-per-finger' as const),
    partial: oneIn(4, partialFrets),
    short: oneIn(4, fc.record({ string: fc.nat(7), startsAtFret: fc.integer({ min: 1, max: 6 }) })),
  })
  .map(({ opens, isAscending, ladders, partial, short, ...rest }): Instrument => {
    const lowest = opens[0] ?? 0;
    const laddered = opens.map((_, at) => 28 + (lowest % 12) + at * (5 + (opens.length % 3)));
    const free = ladders > 0 ? laddered : isAscending ? opens.toSorted((a, b) => a - b) : opens;
    const chosen = partial ? [lowest, lowest + 7, lowest + 12].slice(0, opens.length) : free;
    return {
      ...rest,
      id: 'any',
      name: 'any',
      aliases: [],
      tunings: [valueIn(parseTuning(chosen.map((midi) => formatMidi(midi)).join('-')))],
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
    capo: oneIn(
      3,
      fc.record({ capoFret: fc.nat(5), capoStrings: oneIn(2, fc.array(fc.integer({ min: 1, max: 8 }))) }),
    ),
    mode: fc.constantFrom(...UNIVERSE.modes),
    root: fc.constantFrom(...ROOTS),
    style: fc.constantFrom(...STYLES),
    order: fc.constantFrom(...ORDERS),
    openStrings: fc.constantFrom(...OPEN_STRING_USES),
    sharing: fc.constantFrom(...SHARINGS),
    fret: oneIn(2, fc.integer({ min: 0, max: 30 })),
    reachMm: fc.integer({ min: 400, max: 2000 }).map((tenths) => tenths / 10),
    limit: fc.integer({ min: 1, max: 5 }),
  })
  .map(({ instrument, capo, ...asked }) => {
    const [tuning] = instrument.tunings;
    const wanted: NeckOptions = capo
      ? { capoFret: capo.capoFret, ...(capo.capoStrings && { capoStrings: capo.capoStrings }) }
      : {};
    // A capo that this neck refuses (on strings or frets that it lacks) is left off.
    const options = buildNeck(instrument, tuning, wanted).ok ? wanted : {};
    return { instrument, options, neck: valueIn(buildNeck(instrument, tuning, options)), ...asked };
  });

function valueIn<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.problem.field}: ${result.problem.expected}`);
  return result.value;
}
