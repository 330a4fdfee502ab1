/**
 * What is answered. Notes, degrees and names are in ASCII: `F#`, `Bbb`, `b3`, `Locrian nat6`.
 */
import * as z from 'zod';

const Note = z.string().describe('a note, or a note with its octave, in ASCII');
const Degree = z.int().min(1).max(7);
const Semitones = z.array(z.int()).length(7);
const Formula = z.array(z.string()).length(7).describe('degrees against the major scale: b3, #4, bb7');
const Notes = z.array(Note).length(7);

export const Moved = z
  .object({ degree: Degree, by: z.int().describe('semitones up or down') })
  .meta({ id: 'Moved', description: 'A degree that lies elsewhere in another mode on the same root.' });

const modeSummary = {
  id: z.string().describe('the seven steps written together'),
  slug: z.string(),
  name: z.string(),
  degree: Degree.describe("the degree of its family's first mode on which it stands"),
  formula: Formula,
  aliases: z.array(z.string()),
};
export const ModeSummary = z.object(modeSummary).meta({ id: 'ModeSummary' });

export const Family = z
  .object({
    id: z.string().describe('the steps of its brightest mode'),
    slug: z.string(),
    name: z.string(),
    aliases: z.array(z.string()),
    steps: z.array(z.int()).length(7),
    modes: z.array(ModeSummary).length(7),
  })
  .meta({ id: 'Family', description: 'Seven modes that are rotations of one another.' });

/** Where a part of a long list lies in it. */
const page = {
  offset: z.int().describe('how many came before the first of these'),
  next: z.string().nullable().describe('the address of what comes after these'),
  previous: z.string().nullable().describe('the address of what comes before these'),
};

export const Families = z.object({ total: z.int(), families: z.array(Family) });

const FamilyPlace = z.object({ id: z.string(), slug: z.string(), name: z.string(), degree: Degree });
const Sourced = z.object({
  name: z.string(),
  sources: z.array(z.string()),
  tradition: z.string().optional(),
  recalled: z.boolean(),
});

const mode = {
  id: modeSummary.id,
  slug: z.string(),
  name: z.string(),
  systematicName: z.string(),
  aliases: z.array(z.string()),
  names: z.array(Sourced),
  steps: z.array(z.int()).length(7),
  semitones: Semitones,
  formula: Formula,
  brightness: z.int(),
  family: FamilyPlace,
  base: z.object({ name: z.string(), moved: z.array(Moved) }),
};
export const Mode = z.object(mode).meta({ id: 'Mode' });
export const Modes = z.object({
  total: z.int().describe('how many there are in all'),
  ...page,
  modes: z.array(ModeSummary.extend({ family: FamilyPlace })),
});

const scaleName = { name: z.string(), mode: z.string().describe("the mode's slug"), root: Note };
const Chord = z.object({ degree: Degree, name: z.string(), kind: z.string(), notes: z.array(Note) });

export const Scale = z
  .object({
    ...mode,
    root: Note,
    name: z.string().describe('root and mode'),
    modeName: z.string(),
    notes: Notes.describe('strict: each of the seven letters once'),
    readable: Notes.describe(
      'for the eye: at most one accidental each where strict needs more than a double one',
    ),
    parent: z.object(scaleName),
    kindest: Note.describe('the enharmonic root with the kindest spelling'),
    chords: z.object({ triads: z.array(Chord).length(7), sevenths: z.array(Chord).length(7) }),
  })
  .meta({ id: 'Scale' });

const RelatedScale = z.object({ ...scaleName, notes: Notes });
export const Related = z.object({
  parallel: z.array(RelatedScale.extend({ moved: z.array(Moved) })),
  relative: z.array(RelatedScale),
  neighbours: z.array(RelatedScale.extend({ moved: Moved })),
  shared: z.array(RelatedScale.extend({ count: z.int() })),
});

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
  reason: z.string().optional(),
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
        reason: z.string().optional(),
      }),
    )
    .length(7),
  reason: z.string().optional(),
  alternative: z.object({ style: z.string(), fret: Fret }).optional(),
  cautions: z.array(z.string()),
});

const Compared = z.object({ ...scaleName, formula: Formula, notes: Notes });
export const Comparison = z.object({
  root: Note,
  a: Compared,
  b: Compared,
  degrees: z.array(z.object({ degree: Degree, a: Note, b: Note, by: z.int() })).length(7),
  moved: z.array(Moved),
  distance: z.int().describe('semitones moved in all'),
  shared: z.int().describe('pitch classes in common'),
});

export const Route = z.object({
  root: Note,
  from: z.string(),
  to: z.string(),
  distance: z.int(),
  steps: z.array(RelatedScale.extend({ moved: Moved.nullable() })),
});

export const Matches = z.object({
  asked: z.array(Note),
  total: z.int(),
  ...page,
  matches: z.array(RelatedScale.extend({ missing: z.array(Note), extra: z.array(Note) })),
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

/** How requests are counted against the rate limit. */
export const Counting = z
  .enum(['off', 'in-memory', 'shared', 'shared-lost'])
  .describe('whether and where requests are counted: shared-lost while the shared count cannot be reached');
export const Health = z.object({
  status: z.literal('ok'),
  modes: z.int(),
  instruments: z.int(),
  dataVersion: z.string(),
  counting: Counting,
});
export const Ready = z.object({
  status: z.enum(['ready', 'stopping']).describe('stopping: what was begun is finished, nothing new taken'),
});

export const BatchRequest = z
  .strictObject({ paths: z.array(z.string().max(2000)).min(1).max(50) })
  .meta({ id: 'BatchRequest', description: 'Addresses below /v1/, with their queries: 1 to 50.' });
export const BatchAnswer = z
  .object({
    answers: z.array(
      z.object({
        path: z.string(),
        status: z.int(),
        type: z.string().describe('the media type of the body'),
        body: z.unknown().describe('JSON as it is, text as a string, a file of bytes in base64'),
      }),
    ),
  })
  .meta({ id: 'BatchAnswer', description: 'An answer for each path, in their order.' });

export const Problem = z
  .object({
    type: z.string().describe('a page about this kind of problem'),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    errors: z.array(z.object({ field: z.string(), value: z.string(), expected: z.string() })),
  })
  .meta({ id: 'Problem', description: 'RFC 9457 problem details.' });
