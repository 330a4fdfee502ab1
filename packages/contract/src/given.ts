/**
 * One parameter given alone beside what must be, for tests: what is said about it, or what it is read as.
 */
import type * as z from 'zod';
import { CompareQuery } from './requests.ts';

/** What is said about it. */
export function saidOf(schema: z.ZodType, name: string, value: unknown): readonly string[] {
  const { error } = schema.safeParse({ ...mustOf(schema), [name]: value });
  return (error?.issues ?? []).map(({ path, message }) => `${path.join('.')}: ${message}`);
}

/** What it is read as. */
export function readAs(schema: z.ZodType, name: string, value: unknown): unknown {
  return (schema.parse({ ...mustOf(schema), [name]: value }) as Readonly<Record<string, unknown>>)[name];
}

/** What must be given. */
function mustOf(schema: z.ZodType): Readonly<Record<string, string>> {
  return schema === CompareQuery ? { a: 'x', b: 'y' } : {};
}
