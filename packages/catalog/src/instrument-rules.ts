/**
 * What must agree inside an instrument's file beyond the kinds of its values.
 */
import type { Course, HandFrame, PartialFret, ShortString } from '@stillroot/core';

interface Range {
  readonly from: number;
  readonly to: number;
}

/** The part of an instrument's file that the rules look at. */
interface Checked {
  readonly strings: number;
  readonly scaleLengthMm: number;
  readonly scaleLengthRangeMm: Range;
  readonly frets: number;
  readonly fretsRange: Range;
  readonly handFrame: HandFrame;
  readonly partialFrets?: readonly PartialFret[];
  readonly shortStrings: readonly ShortString[];
  readonly clef: { readonly octaveChange: number };
  readonly soundingMinusWrittenSemitones: number;
  readonly tunings: readonly { readonly courses: readonly Course[]; readonly reentrant: boolean }[];
}

/** A rule that does not hold, and where. */
interface Breach {
  readonly path: readonly (string | number)[];
  readonly message: string;
}

/**
 * From about this length on, instruments in fifths are fingered one finger a fret as well (published lessons
 * for the mandolin and other short necks).
 */
const LONG_SCALE_MM = 500;

/** Every rule that an instrument breaks. */
export function checkInstrument(instrument: Checked): readonly Breach[] {
  const { scaleLengthMm, scaleLengthRangeMm: range, frets, fretsRange, clef } = instrument;
  return [
    ...breach(
      scaleLengthMm < range.from || scaleLengthMm > range.to,
      ['scaleLengthMm'],
      `expected a length within scaleLengthRangeMm, ${range.from} to ${range.to}`,
    ),
    ...breach(
      frets < fretsRange.from || frets > fretsRange.to,
      ['frets'],
      `expected a number within fretsRange, ${fretsRange.from} to ${fretsRange.to}`,
    ),
    ...breach(
      instrument.handFrame === 'two-frets-per-finger' && !isShortInFifths(instrument),
      ['handFrame'],
      `expected two frets a finger only below ${LONG_SCALE_MM} mm and in fifths`,
    ),
    ...breach(
      instrument.soundingMinusWrittenSemitones !== 12 * clef.octaveChange,
      ['soundingMinusWrittenSemitones'],
      `expected twelve times clef.octaveChange, ${12 * clef.octaveChange}`,
    ),
    ...checkPartialFrets(instrument),
    ...checkShortStrings(instrument),
    ...instrument.tunings.flatMap((tuning, at) => checkTuning(tuning, at, instrument.strings)),
  ];
}

/**
 * Going from the lowest-sounding side, a re-entrant tuning has a course whose principal pitch is below the
 * one before it; neighbours in unison are not re-entrant.
 */
export function isReentrant(courses: readonly Course[]): boolean {
  return courses.some(([principal], at) => {
    const before = courses[at - 1];
    return before !== undefined && principal.midi < before[0].midi;
  });
}

function isShortInFifths({ scaleLengthMm, tunings }: Checked): boolean {
  const open = tunings[0]?.courses.map(([principal]) => principal.midi) ?? [];
  const isInFifths = open.every((midi, at) => at === 0 || midi - (open[at - 1] ?? 0) === 7);
  return scaleLengthMm < LONG_SCALE_MM && isInFifths;
}

function checkTuning(tuning: Checked['tunings'][number], at: number, strings: number): readonly Breach[] {
  const { courses, reentrant } = tuning;
  return [
    ...breach(
      courses.length !== strings,
      ['tunings', at, 'courses'],
      `expected as many as strings, ${strings}; this has ${courses.length}`,
    ),
    ...breach(
      reentrant !== isReentrant(courses),
      ['tunings', at, 'reentrant'],
      `expected what the courses say, ${isReentrant(courses)}`,
    ),
  ];
}

function checkPartialFrets({ partialFrets = [], frets }: Checked): readonly Breach[] {
  const last = partialFrets.at(-1);
  return [
    ...partialFrets.flatMap((fret, at) => {
      const before = partialFrets[at - 1];
      const isAscending =
        before === undefined || (fret.fret > before.fret && fret.semitones > before.semitones);
      return breach(!isAscending, ['partialFrets', at], `expected a fret above partialFrets[${at - 1}]`);
    }),
    ...breach(
      last !== undefined && last.fret !== frets,
      ['frets'],
      `expected the number of the last partial fret, ${last?.fret}`,
    ),
  ];
}

function checkShortStrings({ shortStrings, strings, frets }: Checked): readonly Breach[] {
  return shortStrings.flatMap(({ string, startsAtFret }, at) => [
    ...breach(string > strings, ['shortStrings', at, 'string'], `expected a string from 1 to ${strings}`),
    ...breach(
      startsAtFret >= frets,
      ['shortStrings', at, 'startsAtFret'],
      `expected a fret below the last, ${frets}`,
    ),
  ]);
}

function breach(isBroken: boolean, path: Breach['path'], message: string): readonly Breach[] {
  return isBroken ? [{ path, message }] : [];
}
