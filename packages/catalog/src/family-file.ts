/**
 * `families/<slug>.json`: a family that the trade names, and the names of its modes.
 */
import { rotate } from '@stillroot/core';
import { z } from 'zod';
import { repeatsIn, slugSchema, sourceIdsSchema, stepsSchema, textSchema } from './file-values.ts';
import { LONGEST_NAME, modeKey } from './name-key.ts';
import { slugOf } from './slug.ts';

/** A name and who uses it. */
const namedSchema = z.strictObject({
  name: textSchema.max(LONGEST_NAME),
  sources: sourceIdsSchema,
  /** True where the name on this scale is from memory. */
  recalled: z.boolean().exactOptional(),
});

const modeSchema = z.strictObject({
  steps: stepsSchema,
  /** True where no name is settled enough to stand as the heading. */
  displaysSystematicName: z.boolean().exactOptional(),
  /** The first is the one that is displayed. */
  names: z.array(namedSchema),
});

export const familyFileSchema = z
  .strictObject({
    slug: slugSchema,
    name: textSchema,
    /** Its place among the named families. */
    order: z.int().positive(),
    /** True for the families that every player knows. */
    isEveryday: z.boolean().exactOptional(),
    aliases: z.array(namedSchema),
    head: stepsSchema,
    modes: z.array(modeSchema).length(7, 'expected the seven modes, from the head upwards'),
    note: textSchema.exactOptional(),
  })
  .superRefine((family, context) => {
    const complain = (path: PropertyKey[], message: string) =>
      context.addIssue({ code: 'custom', path, message });
    if (family.slug !== slugOf(family.name)) {
      complain(['slug'], `expected the slug of its name, ${slugOf(family.name)}`);
    }
    const head = [...family.head].map(Number);
    for (const [at, mode] of family.modes.entries()) {
      const rotation = rotate(head, at).join('');
      if (mode.steps !== rotation) {
        complain(['modes', at, 'steps'], `expected the head turned on by ${at} degrees, ${rotation}`);
      }
      for (const repeat of repeatsIn(mode.names.map(({ name }) => modeKey(name)))) {
        complain(
          ['modes', at, 'names', repeat.at, 'name'],
          `expected a name that differs from names[${repeat.first}]`,
        );
      }
    }
  });

export type FamilyFile = z.infer<typeof familyFileSchema>;
