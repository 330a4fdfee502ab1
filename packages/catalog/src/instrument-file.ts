/**
 * `instruments/<id>.json`: a fretted instrument, its measures and its tunings.
 */
import { MOST_FRETS, MOST_STRINGS } from '@stillroot/core';
import { z } from 'zod';
import { courseSchema, repeatsIn, slugSchema, sourceIdsSchema, textSchema } from './file-values.ts';
import { INSTRUMENT_KINDS } from './instrument-kind.ts';
import { checkInstrument } from './instrument-rules.ts';

/** The fields of an instrument that may be from memory. */
const RECALLED_FIELDS = [
  'aliases',
  'scaleLengthMm',
  'scaleLengthRangeMm',
  'frets',
  'fretsRange',
  'partialFrets',
  'clef',
  'midiProgram',
  'tunings',
] as const;

/** What is built, not a limit; both ends are in it. */
const rangeSchema = z.strictObject({ from: z.number().positive(), to: z.number().positive() });

const tuningSchema = z.strictObject({
  id: slugSchema,
  name: textSchema,
  /** Low to high as the trade writes them. */
  courses: z.array(courseSchema),
  /** True where a course sounds below the one before it. */
  reentrant: z.boolean(),
  /** Where they are not those of the instrument. */
  sources: sourceIdsSchema.exactOptional(),
  recalled: z.boolean().exactOptional(),
  note: textSchema.exactOptional(),
});

export const instrumentFileSchema = z
  .strictObject({
    id: slugSchema,
    name: textSchema,
    kind: z.enum(INSTRUMENT_KINDS),
    /** Its place in a list of instruments. */
    order: z.int().positive(),
    aliases: z.array(textSchema),
    /** How many strings or courses. */
    strings: z.int().min(1).max(MOST_STRINGS),
    scaleLengthMm: z.number().min(200).max(1200),
    scaleLengthRangeMm: rangeSchema,
    /** The number of the last fret, on a usual one. */
    frets: z.int().min(1).max(MOST_FRETS),
    fretsRange: rangeSchema,
    handFrame: z.enum(['one-finger-per-fret', 'two-frets-per-finger']),
    handFrameSources: sourceIdsSchema,
    partialFrets: z
      .array(z.strictObject({ fret: z.number().positive(), semitones: z.int().positive() }))
      .min(1)
      .exactOptional(),
    shortStrings: z.array(z.strictObject({ string: z.int().positive(), startsAtFret: z.int().positive() })),
    /** As MusicXML writes it. */
    clef: z.strictObject({
      sign: z.enum(['G', 'F', 'C']),
      line: z.int().min(1).max(5),
      octaveChange: z.int().min(-2).max(2),
    }),
    soundingMinusWrittenSemitones: z.int().min(-24).max(24),
    /** General MIDI level 1, counted from 0. */
    midiProgram: z.int().min(0).max(127),
    /** An id of MusicXML's list of sounds. */
    musicXmlSound: z
      .string()
      .regex(/^pluck(?:\.[a-z]+(?:-[a-z]+)*)+$/, 'expected a sound such as pluck.guitar'),
    tunings: z.tuple([tuningSchema], tuningSchema),
    sources: sourceIdsSchema,
    /** The fields that are from memory. */
    recalled: z.array(z.enum(RECALLED_FIELDS)),
    note: textSchema.exactOptional(),
  })
  .superRefine((instrument, context) => {
    for (const { path, message } of checkInstrument(instrument)) {
      context.addIssue({ code: 'custom', path: [...path], message });
    }
    for (const { at } of repeatsIn(instrument.tunings.map(({ id }) => id))) {
      context.addIssue({
        code: 'custom',
        path: ['tunings', at, 'id'],
        message: 'expected an id that no other tuning of the instrument has',
      });
    }
  });

export type InstrumentFile = z.infer<typeof instrumentFileSchema>;
