/**
 * `sources.json`: every source that another file cites.
 */
import { z } from 'zod';
import { repeatsIn, slugSchema, textSchema } from './file-values.ts';

const sourceSchema = z.strictObject({
  id: slugSchema,
  author: textSchema,
  title: textSchema,
  /** A year, years, a century or `undated`; empty for common practice. */
  year: z.string(),
  /** True where the text was not seen and is cited from memory. */
  recalled: z.boolean(),
  note: textSchema.exactOptional(),
});

export const sourceFileSchema = z.array(sourceSchema).superRefine((sources, context) => {
  for (const { at } of repeatsIn(sources.map(({ id }) => id))) {
    context.addIssue({
      code: 'custom',
      path: [at, 'id'],
      message: 'expected an id that no other source has',
    });
  }
});

export type SourceFile = z.infer<typeof sourceFileSchema>;
