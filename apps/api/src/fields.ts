/**
 * Fields: an answer trimmed to what was asked for.
 */
import * as z from 'zod';
import { refusal } from './resolve.ts';

/** Fields within fields; one without any is wanted whole. */
interface Wanted extends ReadonlyMap<string, Wanted> {}

const MOST_FIELDS = 40;

/**
 * An answer with only the fields that are wanted, those within others after a dot; lists keep their length.
 * @throws ProblemReply where the schema of the answer has no such field
 */
export function trimmed(answer: unknown, fields: readonly string[], schema: z.ZodType): unknown {
  if (fields.length > MOST_FIELDS) throw refusal('fields', fields.join(','), `at most ${MOST_FIELDS} fields`);
  for (const field of fields) refuseUnknown(field, schema);
  return keep(answer, wantedBy(fields.map((field) => field.split('.'))));
}

function refuseUnknown(field: string, schema: z.ZodType): void {
  let within: z.ZodType = inside(schema);
  for (const name of field.split('.')) {
    const shape: Readonly<Record<string, z.ZodType>> =
      within instanceof z.ZodObject ? (within.shape as Record<string, z.ZodType>) : {};
    if (!Object.hasOwn(shape, name)) {
      const names = Object.keys(shape).join(', ');
      throw refusal('fields', field, names === '' ? `nothing within "${name}"` : `fields out of ${names}`);
    }
    within = inside(shape[name] as z.ZodType);
  }
}

/** What a schema is of, whether it may be absent, null, or comes in a list. */
function inside(schema: z.ZodType): z.ZodType {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable) {
    return inside(schema.unwrap() as z.ZodType);
  }
  return schema instanceof z.ZodArray ? inside(schema.element as z.ZodType) : schema;
}

function wantedBy(paths: readonly (readonly string[])[]): Wanted {
  const byName = Map.groupBy(paths, ([name]) => name as string);
  return new Map(
    [...byName].map(([name, those]) => {
      const rests = those.map((path) => path.slice(1));
      return [name, rests.some((rest) => rest.length === 0) ? new Map() : wantedBy(rests)];
    }),
  );
}

function keep(value: unknown, wanted: Wanted): unknown {
  if (wanted.size === 0 || value === null || typeof value !== 'object') return value;
  if (Array.isArray(value)) return value.map((item) => keep(item, wanted));
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, part]) => {
      const within = wanted.get(name);
      return within === undefined ? [] : [[name, keep(part, within)]];
    }),
  );
}
