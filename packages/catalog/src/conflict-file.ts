/**
 * `conflicts.json`: names that sources give to more than one scale. All uses are kept.
 */
import { z } from 'zod';
import { repeatsIn, sourceIdsSchema, stepsSchema, textSchema } from './file-values.ts';
import { modeKey } from './name-key.ts';

const useSchema = z.strictObject({
  steps: stepsSchema,
  /** Who uses it so, in words. */
  who: textSchema,
  sources: sourceIdsSchema.exactOptional(),
});

const conflictSchema = z
  .strictObject({
    name: textSchema,
    uses: z.array(useSchema).min(2, 'expected at least two uses'),
    note: textSchema.exactOptional(),
  })
  .superRefine(({ uses }, context) => {
    for (const { at, first } of repeatsIn(uses.map(({ steps }) => steps))) {
      context.addIssue({
        code: 'custom',
        path: ['uses', at, 'steps'],
        message: `expected another scale than uses[${first}]`,
      });
    }
  });

export const conflictFileSchema = z.array(conflictSchema).superRefine((conflicts, context) => {
  for (const { at } of repeatsIn(conflicts.map(({ name }) => modeKey(name)))) {
    context.addIssue({ code: 'custom', path: [at, 'name'], message: 'expected a name that is listed once' });
  }
});

export type ConflictFile = z.infer<typeof conflictFileSchema>;
