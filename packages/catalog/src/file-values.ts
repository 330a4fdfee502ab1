/**
 * The values that several kinds of data file share, as schemas.
 */
import { type Course, parseCourse, UNIVERSE } from '@stillroot/core';
import { z } from 'zod';

/** Text of one line that is not blank at either end. */
export const textSchema = z
  .string()
  .regex(/^\S(?:.*\S)?$/, 'expected text that neither begins nor ends with a space');

/** Lower-case words joined by hyphens. */
export const slugSchema = z
  .string()
  .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'expected lower-case words joined by hyphens');

/** The seven steps of a mode, written together. */
export const stepsSchema = z
  .string()
  .refine(
    (steps) => UNIVERSE.modesById.has(steps),
    'expected seven steps in semitones that sum to 12, such as 2212221',
  );

/** Ids of entries of `sources.json`. */
export const sourceIdsSchema = z.array(slugSchema).min(1, 'expected at least one source');

/** One string, or the strings of a course joined by slashes, the principal first. */
export const courseSchema = z.string().transform((text, context): Course => {
  const course = parseCourse(text);
  if (course.ok) return course.value;
  context.issues.push({ code: 'custom', message: `expected ${course.problem.expected}`, input: text });
  return z.NEVER;
});

/** Where a value of a list equals one before it: the later index and the earlier one. */
export function repeatsIn(
  keys: readonly string[],
): readonly { readonly at: number; readonly first: number }[] {
  return keys.flatMap((key, at) => {
    const first = keys.indexOf(key);
    return first < at ? [{ at, first }] : [];
  });
}
