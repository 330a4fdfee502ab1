/**
 * `melakarta.json` and `thaats.json`: the names that a tradition outside the European trade gives to modes.
 */
import { z } from 'zod';
import { repeatsIn, sourceIdsSchema, stepsSchema, textSchema } from './file-values.ts';
import { LONGEST_NAME, modeKey } from './name-key.ts';

const scaleSchema = z.strictObject({
  /** Its number, where the tradition counts them. */
  number: z.int().positive().exactOptional(),
  name: textSchema.max(LONGEST_NAME),
  /** Other spellings; they are recalled. */
  aliases: z.array(textSchema.max(LONGEST_NAME)),
  steps: stepsSchema,
});

export const traditionFileSchema = z
  .strictObject({
    /** What one of its scales is called: `Carnatic mela`. */
    tradition: textSchema,
    sources: sourceIdsSchema,
    note: textSchema.exactOptional(),
    scales: z.array(scaleSchema).min(1),
  })
  .superRefine(({ scales }, context) => {
    const complain = (at: number, field: string) =>
      context.addIssue({
        code: 'custom',
        path: ['scales', at, field],
        message: `expected a ${field} that no other scale of the file has`,
      });
    for (const { at } of repeatsIn(scales.map(({ steps }) => steps))) complain(at, 'steps');
    for (const { at } of repeatsIn(scales.map(({ name }) => modeKey(name)))) complain(at, 'name');
    for (const { at } of repeatsIn(scales.map(({ number }, at) => String(number ?? `none ${at}`)))) {
      complain(at, 'number');
    }
  });

export type TraditionFile = z.infer<typeof traditionFileSchema>;
