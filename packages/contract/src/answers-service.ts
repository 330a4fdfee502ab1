/**
 * What the service says of itself, batches of answers, and problems.
 */
import * as z from 'zod';

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
