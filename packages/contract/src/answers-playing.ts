/**
 * Necks, fingerings, rounds and instruments.
 */
import { REASON_KINDS } from '@stillroot/core';
import * as z from 'zod';
import { Aliases, Degree, Formula, Moved, Name, Note, Notes, page, Sources } from './answer-parts.ts';

const Id = z.string().describe('what addresses call it');

const neck = {
  instrument: z.string().describe("the instrument's id"),
  tuning: z.array(Note).describe('open strings, low to high, as they are tuned'),
  tuningId: z.string().describe("the tuning's id"),
  tuningName: z.string().describe("the tuning's name"),
  reading: z
    .object({
      text: z.string().describe('as it was typed'),
      notation: z.string().describe('scientific, helmholtz or letters'),
      guessed: z.boolean().describe('whether the octaves were not written but guessed'),
      alternative: z.array(Note).optional().describe('open strings that the text could also have meant'),
    })
    .optional()
    .describe('how a tuning that was typed was taken'),
  alsoTuned: z
    .array(
      z.object({
        instrument: z.string().describe("the instrument's id"),
        tuning: z.string().describe("the tuning's id"),
        name: Name,
      }),
    )
    .describe('other tunings of the catalogue with these open strings'),
  capo: z.number().describe('the fret on which a capo lies, 0 without one'),
  capoStrings: z.array(z.int()).describe('the strings that the capo shortens'),
  scaleLengthMm: z.number().describe('of the longest string'),
  scaleLengthsMm: z.array(z.number()).describe('of each string, low to high'),
  frets: z.number().describe('the last fret'),
};
const String_ = z.int().min(1).describe('1 at the highest-sounding side');
const Fret = z.number().min(0).describe('0 for the open string, else the fret as the inlays count it');
export const Place = z.object({
  string: String_,
  fret: Fret,
  note: Note,
  degree: Degree,
  midi: z.int().describe('the MIDI note number as it sounds, 60 for middle C'),
});

const scale = { name: z.string().describe('root and mode'), root: Note.describe('the root') };
export const Fretboard = z.object({
  ...neck,
  ...scale,
  places: z.array(Place).describe('where its notes lie, string by string'),
});

const Area = z.object({ from: Fret, to: Fret }).describe('the frets that are played between');
const Style = z.string().describe('how it is laid out, as in the query');
export const Fingering = z
  .object({
    area: Area,
    positions: z.array(Fret).describe('the frets at which finger 1 is at home, one after the other'),
    reachMm: z.number().describe('the widest span the hand covers without moving'),
    cost: z
      .object({
        outOfReach: z.literal(0).describe('notes that no finger reaches: never any'),
        travelMm: z.number().describe('how far finger 1 moves along the neck'),
        shifts: z.int().describe('how often it moves'),
        stretchMm: z.number().describe('how far fingers reach beyond their own frets'),
        stringChanges: z.int().describe('awkward ones: a string skipped, a step back, a finger that rolls'),
      })
      .describe('why it stands where it does among others: the lower, the better, from the first on'),
    notes: z
      .array(
        Place.extend({ finger: z.int().min(0).max(4).describe('1 to 4, the index first; 0 an open string') }),
      )
      .describe('from the lowest to the highest'),
  })
  .meta({ id: 'Fingering', description: 'A way to play a scale: strings, frets and fingers.' });

const Cautions = z.array(z.string()).describe('what to take care of when it is practised');

/** Why something cannot be played. */
const why = {
  reason: z.string().optional().describe('why it cannot be played; absent where it can'),
  reasonKind: z.enum(REASON_KINDS).optional().describe('the same for programs: these words stay'),
};

export const Fingerings = z.object({
  ...neck,
  ...scale,
  style: Style,
  handReachMm: z.number().describe('the reach that was allowed, from finger 1 to finger 4'),
  fingerings: z.array(Fingering).describe('the best first; across the neck, area after area'),
  shifts: z
    .array(
      z.object({
        fromFret: Fret,
        toFret: Fret,
        distanceMm: z.number().describe('how far that is along the neck'),
      }),
    )
    .optional()
    .describe('across the neck: how the hand gets from each area to the next'),
  ...why,
  beyondReach: z
    .array(
      z.object({
        string: String_,
        frets: z.array(Fret).describe('the frets that would have to be played'),
        spanMm: z.number().describe('from the first of them to the last'),
      }),
    )
    .optional()
    .describe('strings on which the hand would have to open wider than it can'),
  alternative: z
    .object({
      style: Style,
      fret: Fret.optional().describe('where to begin; absent where only anywhere will do'),
      fingering: Fingering,
    })
    .optional()
    .describe('the nearest that can be played, where what was asked for cannot'),
  cautions: Cautions,
});

export const Round = z.object({
  ...neck,
  family: z.string().describe('what addresses call the family'),
  familyName: z.string().describe("the family's name"),
  root: scale.root,
  order: z.string().describe('the order of the seven modes, as in the query'),
  style: Style,
  sharing: z.string().describe('whether the modes share one area, as in the query'),
  pattern: z.string().describe('the order in which notes are played, as in the query'),
  noteValue: z.string().describe('how long each note lasts'),
  tempoBpm: z.number().describe("beats a minute, the beat being the meter's lower number"),
  meter: z.string().describe('the time signature'),
  countInBars: z.int().describe('bars of clicks before the first note'),
  durationSeconds: z.number().describe('from the first click of the count-in to the end of the last bar'),
  area: Area.nullable().describe('the frets that all of it is played between; null where it is not played'),
  modes: z
    .array(
      z.object({
        mode: z.string().describe('what addresses call the mode'),
        id: z.string().describe('its seven steps, written together'),
        name: Name,
        degree: Degree.describe("the degree of its family's first mode on which it stands"),
        formula: Formula,
        notes: Notes,
        moved: z.array(Moved).describe('from the mode before it in the round'),
        fingering: Fingering.nullable().describe('how it is played; null where it is left out'),
        sequence: z
          .array(z.int())
          .describe("the order in which the fingering's notes are played, as indices; empty without one"),
        startSeconds: z.number().nullable().describe('when its first note is played'),
        ...why,
      }),
    )
    .length(7)
    .describe('the seven, in the order asked for, all from the same root'),
  ...why,
  alternative: z
    .object({ style: Style, fret: Fret.describe('from which it can be played') })
    .optional()
    .describe('the nearest that can be played, where what was asked for cannot'),
  cautions: Cautions,
});

const Range = z.object({ from: z.number().describe('the least'), to: z.number().describe('the most') });
const Tuning = z.object({
  id: Id,
  name: Name,
  strings: z.array(Note).describe('low to high, the principal string of each course'),
  courses: z.array(z.array(Note)).describe('the strings of each course, the principal one first'),
  reentrant: z.boolean().describe('whether a course sounds below the one before it'),
});
export const Instrument = z
  .object({
    id: Id,
    name: Name,
    aliases: Aliases,
    kind: z.string().describe('the group of instruments it belongs to'),
    strings: z.int().describe('how many strings or courses'),
    scaleLengthMm: z.number().describe('that of fingerings, where no other is asked for'),
    scaleLengthRangeMm: Range.describe('what is built; not a limit'),
    frets: z.number().describe('the last fret, where no other is asked for'),
    fretsRange: Range.describe('the fewest and the most frets that are built'),
    clef: z
      .object({
        sign: z.string().describe('G, F or C'),
        line: z.int().describe('the line it stands on, 1 the lowest'),
        octaveChange: z.int().describe('octaves by which it is read higher, or lower below zero'),
      })
      .describe('as MusicXML writes it'),
    soundingMinusWrittenSemitones: z.int().describe('what to add to a written pitch for the sounding one'),
    handFrame: z.string().describe('how a hand lies: one-finger-per-fret or two-frets-per-finger'),
    partialFrets: z
      .array(
        z.object({
          fret: z.number().describe('what players call it, 6.5 for 6+'),
          semitones: z.int().describe('above the nut'),
        }),
      )
      .optional()
      .describe('the frets there are, where not every semitone has one'),
    shortStrings: z
      .array(z.object({ string: String_, startsAtFret: z.number().describe('where its open note lies') }))
      .describe('strings that begin farther up the neck'),
    tunings: z.array(Tuning).describe('the most usual first'),
    sources: Sources,
    recalled: z.array(z.string()).describe('fields that are from memory'),
    note: z.string().optional().describe('what else there is to say'),
  })
  .meta({ id: 'Instrument', description: 'A fretted instrument and its tunings.' });
export const Instruments = z.object({
  total: z.int().describe('how many are served in all'),
  foundTotal: z.int().describe('how many a search speaks of'),
  ...page,
  instruments: z
    .array(
      Instrument.extend({
        found: z.array(z.string()).optional().describe('ids of the tunings that a search speaks of'),
      }),
    )
    .describe('those of this page'),
  notServed: z
    .array(
      z.object({ id: Id, name: Name, aliases: Aliases, reason: z.string().describe('why it is not served') }),
    )
    .describe('instruments that cannot be served, and why'),
});
