/**
 * Modes, families and scales, and what lies between them.
 */
import * as z from 'zod';
import { Degree, Formula, Moved, Note, Notes, page, Semitones } from './answer-parts.ts';

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
