/**
 * Necks, fingerings, rounds and instruments.
 */
import { REASON_KINDS } from '@stillroot/core';
import * as z from 'zod';
import { Degree, Formula, Moved, Note, Notes, page } from './answer-parts.ts';

const neck = {
  instrument: z.string(),
  tuning: z.array(Note).describe('open strings, low to high, as they are tuned'),
  tuningId: z.string(),
  tuningName: z.string(),
  reading: z
    .object({
      text: z.string(),
      notation: z.string().describe('scientific, helmholtz or letters'),
      guessed: z.boolean().describe('whether the octaves were not written but guessed'),
      alternative: z.array(Note).optional().describe('open strings that the text could also have meant'),
    })
    .optional()
    .describe('how a tuning that was typed was taken'),
  alsoTuned: z
    .array(z.object({ instrument: z.string(), tuning: z.string(), name: z.string() }))
    .describe('other tunings of the catalogue with these open strings'),
  capo: z.number(),
  capoStrings: z.array(z.int()).describe('the strings that the capo shortens'),
  scaleLengthMm: z.number().describe('of the longest string'),
  scaleLengthsMm: z.array(z.number()).describe('of each string, low to high'),
  frets: z.number(),
};
const String_ = z.int().min(1).describe('1 at the highest-sounding side');
const Fret = z.number().min(0).describe('0 for the open string, else the fret as the inlays count it');
export const Place = z.object({ string: String_, fret: Fret, note: Note, degree: Degree, midi: z.int() });
export const Fretboard = z.object({ ...neck, name: z.string(), root: Note, places: z.array(Place) });

const Area = z.object({ from: Fret, to: Fret });
export const Fingering = z
  .object({
    area: Area,
    positions: z.array(Fret).describe('the frets at which finger 1 is at home, one after the other'),
    reachMm: z.number().describe('the widest span the hand covers without moving'),
    cost: z.object({
      outOfReach: z.literal(0).describe('notes that no finger reaches: never any'),
      travelMm: z.number(),
      shifts: z.int(),
      stretchMm: z.number(),
      stringChanges: z.int(),
    }),
    notes: z.array(Place.extend({ finger: z.int().min(0).max(4) })),
  })
  .meta({ id: 'Fingering' });

/** Why something cannot be played; absent where it can. */
const why = {
  reason: z.string().optional(),
  reasonKind: z.enum(REASON_KINDS).optional().describe('the same for programs: these words stay'),
};

export const Fingerings = z.object({
  ...neck,
  name: z.string(),
  root: Note,
  style: z.string(),
  handReachMm: z.number().describe('the reach that was allowed'),
  fingerings: z.array(Fingering),
  shifts: z
    .array(z.object({ fromFret: Fret, toFret: Fret, distanceMm: z.number() }))
    .optional()
    .describe('across the neck: how the hand gets from each area to the next'),
  ...why,
  beyondReach: z
    .array(z.object({ string: String_, frets: z.array(Fret), spanMm: z.number() }))
    .optional()
    .describe('strings on which the hand would have to open wider than it can'),
  alternative: z.object({ style: z.string(), fingering: Fingering }).optional(),
  cautions: z.array(z.string()),
});

export const Round = z.object({
  ...neck,
  family: z.string(),
  familyName: z.string(),
  root: Note,
  order: z.string(),
  style: z.string(),
  sharing: z.string(),
  pattern: z.string(),
  noteValue: z.string(),
  tempoBpm: z.number(),
  meter: z.string(),
  countInBars: z.int(),
  durationSeconds: z.number().describe('from the first click of the count-in to the end of the last bar'),
  area: Area.nullable(),
  modes: z
    .array(
      z.object({
        mode: z.string(),
        id: z.string(),
        name: z.string(),
        degree: Degree,
        formula: Formula,
        notes: Notes,
        moved: z.array(Moved).describe('from the mode before it in the round'),
        fingering: Fingering.nullable(),
        sequence: z
          .array(z.int())
          .describe("the order in which the fingering's notes are played, as indices; empty without one"),
        startSeconds: z.number().nullable().describe('when its first note is played'),
        ...why,
      }),
    )
    .length(7),
  ...why,
  alternative: z.object({ style: z.string(), fret: Fret }).optional(),
  cautions: z.array(z.string()),
});

const Tuning = z.object({
  id: z.string(),
  name: z.string(),
  strings: z.array(Note).describe('low to high, the principal string of each course'),
  courses: z.array(z.array(Note)),
  reentrant: z.boolean(),
});
export const Instrument = z
  .object({
    id: z.string(),
    name: z.string(),
    aliases: z.array(z.string()),
    kind: z.string().describe('the group of instruments it belongs to'),
    strings: z.int(),
    scaleLengthMm: z.number(),
    scaleLengthRangeMm: z.object({ from: z.number(), to: z.number() }),
    frets: z.number(),
    fretsRange: z.object({ from: z.number(), to: z.number() }),
    clef: z.object({ sign: z.string(), line: z.int(), octaveChange: z.int() }),
    soundingMinusWrittenSemitones: z.int(),
    handFrame: z.string(),
    partialFrets: z.array(z.object({ fret: z.number(), semitones: z.int() })).optional(),
    shortStrings: z.array(z.object({ string: z.int(), startsAtFret: z.number() })),
    tunings: z.array(Tuning),
    sources: z.array(z.string()),
    recalled: z.array(z.string()).describe('fields that are from memory'),
    note: z.string().optional(),
  })
  .meta({ id: 'Instrument' });
export const Instruments = z.object({
  total: z.int().describe('how many are served in all'),
  foundTotal: z.int().describe('how many a search speaks of'),
  ...page,
  instruments: z.array(
    Instrument.extend({
      found: z.array(z.string()).optional().describe('ids of the tunings that a search speaks of'),
    }),
  ),
  notServed: z
    .array(z.object({ id: z.string(), name: z.string(), aliases: z.array(z.string()), reason: z.string() }))
    .describe('instruments that cannot be served, and why'),
});
