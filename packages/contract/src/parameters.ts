/**
 * Kinds of parameters. Each arrives as text and says, where it is not right, what would be.
 */
import { chordSymbolsIn, type Meter, parseMeter, SCALE_LENGTH_RANGE_MM } from '@stillroot/core';
import * as z from 'zod';

/** Longer than any name of ours, shorter than trouble. */
const LONGEST_TEXT = 200;

export function text(description: string) {
  return z
    .string({ error: description })
    .trim()
    .min(1, { error: description })
    .max(LONGEST_TEXT, { error: `${description}; at most ${LONGEST_TEXT} characters` })
    .describe(description);
}

export function choice<const T extends readonly [string, ...string[]] | readonly string[]>(
  description: string,
  values: T,
) {
  return z
    .enum(values as unknown as [T[number], ...T[number][]], { error: `one of ${values.join(', ')}` })
    .describe(description);
}

/** A list in one parameter, its items parted by commas or spaces. */
export function list(description: string) {
  return text(description)
    .transform((value) => value.split(/[,\s]+/).filter((item) => item !== ''))
    .refine((items) => items.length > 0, { error: description });
}

/** Chord symbols in one parameter. */
export function chords(description: string) {
  return text(description)
    .transform(chordSymbolsIn)
    .refine((symbols) => symbols.length > 0, { error: description });
}

/** Whole numbers in one parameter, parted by commas. */
export function numbers(description: string, from: number, to: number) {
  const error = `whole numbers from ${from} to ${to}, parted by commas: ${description}`;
  return z
    .string({ error })
    .regex(/^\d{1,2}(,\d{1,2}){0,13}$/, { error })
    .transform((value) => value.split(',').map(Number))
    .refine((values) => values.every((value) => value >= from && value <= to), { error })
    .describe(description);
}

/** One length, or that of the lowest and that of the highest string. */
export function lengths(description: string) {
  const { from, to } = SCALE_LENGTH_RANGE_MM;
  const error = `one length from ${from} to ${to}, or two joined by a hyphen: ${description}`;
  return z
    .string({ error })
    .regex(/^\d{3,4}(\.\d{1,3})?(-\d{3,4}(\.\d{1,3})?)?$/, { error })
    .transform((value) => value.split('-').map(Number))
    .refine((values) => values.every((value) => value >= from && value <= to), { error })
    .describe(description);
}

export function signed(description: string, from: number, to: number) {
  const error = `a whole number from ${from} to ${to}: ${description}`;
  return z
    .string({ error })
    .regex(/^-?\d{1,2}$/, { error })
    .transform(Number)
    .refine((value) => value >= from && value <= to, { error })
    .meta({ description, type: 'integer', minimum: from, maximum: to });
}

export function whole(description: string, from: number, to: number) {
  const error = `a whole number from ${from} to ${to}: ${description}`;
  return z
    .string({ error })
    .regex(/^\d{1,10}$/, { error })
    .transform(Number)
    .refine((value) => value >= from && value <= to, { error })
    .meta({ description, type: 'integer', minimum: from, maximum: to });
}

export function decimal(description: string, from: number, to: number) {
  const error = `a number from ${from} to ${to}: ${description}`;
  return z
    .string({ error })
    .regex(/^\d{1,4}(\.\d{1,3})?$/, { error })
    .transform(Number)
    .refine((value) => value >= from && value <= to, { error })
    .meta({ description, type: 'number', minimum: from, maximum: to });
}

/** Yes or no. */
export function yesOrNo(description: string) {
  return z
    .enum(['true', 'false'], { error: `true or false: ${description}` })
    .transform((value) => value === 'true')
    .prefault('false')
    .describe(description);
}

/** A time signature. */
export function meter(description: string, byDefault: string) {
  return z
    .string({ error: description })
    .transform((value, context): Meter => {
      const read = parseMeter(value);
      if (read.ok) return read.value;
      context.addIssue({ code: 'custom', message: read.problem.expected });
      return z.NEVER;
    })
    .prefault(byDefault)
    .meta({ description, example: byDefault });
}

/** Nothing, the mode's own choice, or degrees: `false`, `true`, `1,4`. */
export function degrees(description: string) {
  const error = `true, false, or degrees from 1 to 7 parted by commas: ${description}`;
  return z
    .string({ error })
    .regex(/^(true|false|[1-7](,[1-7]){0,15})$/, { error })
    .transform((value): readonly number[] | boolean =>
      /^\d/.test(value) ? value.split(',').map(Number) : value === 'true',
    )
    .prefault('false')
    .describe(description);
}
