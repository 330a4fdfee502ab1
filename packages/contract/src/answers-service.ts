/**
 * What the service says of itself, batches of answers, and problems.
 */
import * as z from 'zod';

/** How requests are counted against the rate limit. */
export const Counting = z
  .enum(['off', 'in-memory', 'shared', 'shared-lost'])
  .describe('whether and where requests are counted: shared-lost while the shared count cannot be reached');
export const Health = z.object({
  status: z.literal('ok').describe('ok where there is an answer at all'),
  modes: z.int().describe('how many modes it knows'),
  instruments: z.int().describe('how many instruments it knows'),
  dataVersion: z.string().describe('the version of the data'),
  counting: Counting,
});
export const Ready = z.object({
  status: z.enum(['ready', 'stopping']).describe('stopping: what was begun is finished, nothing new taken'),
});

export const BatchRequest = z
  .strictObject({ paths: z.array(z.string().max(2000)).min(1).max(50).describe('what is asked for') })
  .meta({ id: 'BatchRequest', description: 'Addresses below /v1/, with their queries: 1 to 50.' });
export const BatchAnswer = z
  .object({
    answers: z
      .array(
        z.object({
          path: z.string().describe('as it was asked for'),
          status: z.int().describe('as it would be if it were asked for alone'),
          type: z.string().describe('the media type of the body'),
          body: z.unknown().describe('JSON as it is, text as a string, a file of bytes in base64'),
        }),
      )
      .describe('in the order of the paths'),
  })
  .meta({ id: 'BatchAnswer', description: 'An answer for each path, in their order.' });

export const Problem = z
  .object({
    type: z.string().describe('a page about this kind of problem'),
    title: z.string().describe('what kind of problem it is, in words'),
    status: z.int().describe('the status of the answer'),
    detail: z.string().describe('what is wrong, in one or several sentences'),
    errors: z
      .array(
        z.object({
          field: z.string().describe('a parameter, a field of the body, or a header field'),
          value: z.string().describe('what was sent, perhaps shortened'),
          expected: z.string().describe('what would be right'),
        }),
      )
      .describe('everything that is wrong'),
  })
  .meta({ id: 'Problem', description: 'RFC 9457 problem details.' });
