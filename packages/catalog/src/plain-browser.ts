/**
 * The catalogue's door for the browser: needs core alone.
 */
import { type Course, type Instrument, invariant, parseCourse, type Tuning } from '@stillroot/core';
import type { PlainInstrument, PlainTuning } from './plain-types.ts';

export { INSTRUMENT_KINDS, type InstrumentKind, KIND_NAMES } from './instrument-kind.ts';
export type {
  PlainCatalogue,
  PlainFamily,
  PlainInstrument,
  PlainMode,
  PlainTuning,
} from './plain-types.ts';

/** Core's instrument from its plain form. Throws where the plain form did not come from the catalogue. */
export function instrumentFromPlain(plain: PlainInstrument): Instrument {
  const [standard, ...others] = plain.tunings;
  invariant(standard !== undefined, `${plain.id} has a tuning`);
  return {
    id: plain.id,
    name: plain.name,
    aliases: plain.aliases,
    scaleLengthMm: plain.scaleLengthMm,
    frets: plain.frets,
    handFrame: plain.handFrame,
    ...(plain.partialFrets === undefined ? {} : { partialFrets: plain.partialFrets }),
    shortStrings: plain.shortStrings,
    tunings: [tuningFromPlain(standard), ...others.map(tuningFromPlain)],
  };
}

function tuningFromPlain({ id, name, courses }: PlainTuning): Tuning {
  return { id, name, courses: courses.map(courseFromPlain) };
}

function courseFromPlain(text: string): Course {
  const course = parseCourse(text);
  invariant(course.ok, `${text} is a course`);
  return course.value;
}
