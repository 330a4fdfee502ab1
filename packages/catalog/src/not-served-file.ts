/**
 * `not-served.json`: instruments that are asked for and have no page, and why.
 */
import { z } from 'zod';
import { repeatsIn, slugSchema, sourceIdsSchema, textSchema } from './file-values.ts';

const notServedSchema = z.strictObject({
  id: slugSchema,
  name: textSchema,
  aliases: z.array(textSchema),
  /** Whole sentences, in plain words. */
  reason: textSchema.regex(/\.$/, 'expected whole sentences'),
  sources: sourceIdsSchema,
  /** True where the reason is from memory. */
  recalled: z.boolean(),
});

export const notServedFileSchema = z.array(notServedSchema).superRefine((entries, context) => {
  for (const { at } of repeatsIn(entries.map(({ id }) => id))) {
    context.addIssue({
      code: 'custom',
      path: [at, 'id'],
      message: 'expected an id that no other entry has',
    });
  }
});

export type NotServedFile = z.infer<typeof notServedFileSchema>;
