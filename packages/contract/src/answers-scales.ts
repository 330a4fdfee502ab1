/**
 * Modes, families and scales, and what lies between them.
 */
import * as z from 'zod';
import {
  Aliases,
  Common,
  Degree,
  Formula,
  Moved,
  Name,
  Note,
  Notes,
  page,
  Semitones,
  Sources,
  Steps,
} from './answer-parts.ts';

const ModeSlug = z.string().describe('what addresses call the mode');
const FamilySlug = z.string().describe('what addresses call the family');
const FamilyId = z.string().describe('the steps of its brightest mode, written together');
const FamilyDegree = Degree.describe("the degree of its family's first mode on which it stands");
const Distance = z.int().describe('semitones by which notes move, in all');

const modeSummary = {
  id: z.string().describe('the seven steps written together'),
  slug: ModeSlug,
  name: Name,
  degree: FamilyDegree,
  formula: Formula,
  aliases: Aliases,
};
export const ModeSummary = z
  .object(modeSummary)
  .meta({ id: 'ModeSummary', description: 'A mode, as lists have it.' });

export const Family = z
  .object({
    id: FamilyId,
    slug: FamilySlug,
    name: Name,
    aliases: Aliases,
    steps: Steps.describe('of its brightest mode: semitones from each degree to the next'),
    modes: z.array(ModeSummary).length(7).describe('by degree, from the mode the family is named after'),
  })
  .meta({ id: 'Family', description: 'Seven modes that are rotations of one another.' });

export const Families = z.object({
  total: z.int().describe('how many there are in all'),
  ...page,
  families: z.array(Family).describe('those with a name of the trade first'),
});

const FamilyPlace = z
  .object({ id: FamilyId, slug: FamilySlug, name: Name, degree: FamilyDegree })
  .describe('the family, and where in it the mode stands');
const Sourced = z.object({
  name: Name,
  sources: Sources,
  tradition: z
    .string()
    .optional()
    .describe('the tradition that says so, where it is not the European trade: Carnatic mela 14'),
  recalled: z.boolean().describe('whether it is from memory'),
});

const mode = {
  id: modeSummary.id,
  slug: ModeSlug,
  name: Name,
  systematicName: z
    .string()
    .describe('the one name that follows from its notes: the nearest church mode, then what differs'),
  aliases: Aliases,
  names: z.array(Sourced).describe('the names that are published, and where'),
  steps: Steps,
  semitones: Semitones,
  formula: Formula,
  brightness: z
    .int()
    .describe('the sum of all alterations against the major scale: 1 for Lydian, -5 for Locrian'),
  family: FamilyPlace,
  base: z
    .object({ name: Name, moved: z.array(Moved).describe('the degrees that lie elsewhere in this mode') })
    .describe('the nearest church mode'),
};
export const Mode = z.object(mode).meta({ id: 'Mode', description: 'A mode, without a root.' });
export const Modes = z.object({
  total: z.int().describe('how many there are in all'),
  ...page,
  modes: z.array(ModeSummary.extend({ family: FamilyPlace })).describe('the best match first'),
});

const Root = Note.describe('the root, as it was asked for or as it is spelled');
const scaleName = { name: z.string().describe('root and mode'), mode: ModeSlug, root: Root };
const Chord = z.object({
  degree: Degree.describe('the degree it stands on'),
  name: z.string().describe('root and kind: Amin, Bbmaj7'),
  kind: z
    .string()
    .describe('maj, min, dim, maj7#5 and so on; degrees (1 b3 bb5) where there is no usual name'),
  notes: z.array(Note).describe('from its root upwards'),
});

export const Scale = z
  .object({
    ...mode,
    root: Root,
    name: scaleName.name,
    modeName: z.string().describe('the mode alone'),
    notes: Notes.describe('strict: each of the seven letters once'),
    readable: Notes.describe(
      'for the eye: at most one accidental each where strict needs more than a double one',
    ),
    parent: z.object(scaleName).describe('the first mode of the family on these notes'),
    kindest: Note.describe('the enharmonic root with the kindest spelling'),
    chords: z
      .object({
        triads: z.array(Chord).length(7).describe('of three notes, one a degree'),
        sevenths: z.array(Chord).length(7).describe('of four notes, one a degree'),
      })
      .describe('thirds stacked on each degree'),
  })
  .meta({ id: 'Scale', description: 'A mode on a root.' });

const RelatedScale = z.object({ ...scaleName, notes: Notes });
export const Related = z.object({
  parallel: z
    .array(RelatedScale.extend({ moved: z.array(Moved).describe('from the scale asked for') }))
    .describe('the other modes of the family, on the same root'),
  relative: z.array(RelatedScale).describe('the other modes of the family, of the same notes'),
  neighbours: z
    .array(RelatedScale.extend({ moved: Moved }))
    .describe('modes on the same root in which one degree lies a semitone elsewhere'),
  total: z.int().describe('how many scales have so many notes in common'),
  ...page,
  shared: z
    .array(RelatedScale.extend({ count: Common }))
    .describe('scales on any root with so many notes in common, the most first'),
});

const Compared = z.object({ ...scaleName, formula: Formula, notes: Notes });
export const Comparison = z.object({
  root: Root,
  a: Compared.describe('the one'),
  b: Compared.describe('the other'),
  degrees: z
    .array(
      z.object({
        degree: Degree,
        a: Note.describe('in the one'),
        b: Note.describe('in the other'),
        by: z.int().describe('semitones from the one to the other, down below zero'),
      }),
    )
    .length(7)
    .describe('both beside each other'),
  moved: z.array(Moved).describe('the degrees that lie elsewhere in the other'),
  distance: Distance,
  shared: Common,
});

export const Route = z.object({
  root: Root,
  from: ModeSlug,
  to: ModeSlug,
  distance: Distance,
  steps: z
    .array(
      RelatedScale.extend({ moved: Moved.nullable().describe('from the step before; null at the first') }),
    )
    .describe('from the one to the other; one degree moves by a semitone at each'),
});

export const Matches = z.object({
  asked: z.array(Note).describe('the notes asked for, those of chords too, each once'),
  chords: z
    .array(
      z.object({
        symbol: z.string().describe('as it was asked for'),
        notes: z.array(Note).describe('from its root upwards'),
      }),
    )
    .optional()
    .describe('the chords asked for'),
  total: z.int().describe('how many there are in all'),
  ...page,
  matches: z
    .array(
      RelatedScale.extend({
        missing: z.array(Note).describe('asked for, and not in it'),
        extra: z.array(Note).describe('in it, and not asked for'),
      }),
    )
    .describe('the best match first'),
});
