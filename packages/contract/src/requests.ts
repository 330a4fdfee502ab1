/**
 * What may be asked: the parameters of paths and queries. Numbers arrive as text and are turned into
 * numbers here; names (modes, roots, instruments, tunings) are resolved by the API.
 */
import {
  HAND_SIZES,
  MOST_FRETS,
  MOST_STRINGS,
  OPEN_STRING_USES,
  ORDERS,
  REACH_RANGE_MM,
  SCALE_LENGTH_RANGE_MM,
  SHARINGS,
  STYLES,
} from '@stillroot/core';
import * as z from 'zod';

/** The tempi that a metronome is made for, in beats a minute, with room on both sides. */
export const TEMPO_RANGE_BPM = { from: 20, to: 400 } as const;

/** The orders in which the notes of a fingering are played. */
export const PATTERNS = ['up', 'down', 'up-and-down'] as const;

export type Pattern = (typeof PATTERNS)[number];

/** Longer than any name of ours, shorter than trouble. */
const LONGEST_TEXT = 200;

export const ModePath = z.strictObject({
  mode: text('a mode: its steps (2131212), its slug (phrygian-dominant), or a name').meta({
    example: 'phrygian-dominant',
  }),
});
export const FamilyPath = z.strictObject({
  family: text('a family: its slug (harmonic-minor) or the steps of its brightest mode').meta({
    example: 'harmonic-minor',
  }),
});
export const InstrumentPath = z.strictObject({
  instrument: text('an instrument: its id or a name').meta({ example: 'bass-4' }),
});
const root = text('a root: A, Bb, F%23 or Fs').meta({ example: 'A' });
export const ScalePath = z.strictObject({ ...ModePath.shape, root });
export const RoundPath = z.strictObject({ ...FamilyPath.shape, root });
export const NoPath = z.strictObject({});
export const NoQuery = z.strictObject({});

const neck = {
  instrument: text('an instrument id or name').default('guitar-6'),
  tuning: text(
    "a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed",
  ).optional(),
  transpose: signed('semitones by which every string is tuned up, or down below zero', -24, 24).default(0),
  capo: decimal('the fret a capo lies on, 0 for none', 0, MOST_FRETS).default(0),
  capoStrings: numbers(
    'the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent',
    1,
    MOST_STRINGS,
  ).optional(),
  scaleLength: lengths(
    'the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648',
  ).optional(),
  frets: whole("the last fret, where it is not the instrument's own", 1, MOST_FRETS).optional(),
};
const hand = {
  style: choice('how the scale is laid out', STYLES).default('position'),
  fret: decimal('the fret at which to begin, 0 for the open position', 0, MOST_FRETS).optional(),
  open: choice('where open strings may be played', OPEN_STRING_USES).default('near-the-nut'),
  handSize: choice('the size of the hand', Object.keys(HAND_SIZES) as (keyof typeof HAND_SIZES)[]).default(
    'medium',
  ),
  reach: decimal(
    'how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size',
    REACH_RANGE_MM.from,
    REACH_RANGE_MM.to,
  ).optional(),
};
const picture = {
  labels: choice('what stands in the marks of a picture', ['degrees', 'notes', 'fingers']).default('degrees'),
  hand: choice('which way round a picture is drawn', ['right', 'left']).default('right'),
};

export const FretboardQuery = z.strictObject({ ...neck, ...picture });
export const FingeringsQuery = z.strictObject({
  ...neck,
  ...hand,
  ...picture,
  limit: whole('the most answers', 1, 20).default(5),
});
export const RoundQuery = z.strictObject({
  ...neck,
  ...hand,
  ...picture,
  order: choice('the order of the seven modes', ORDERS).default('parent'),
  sharing: choice('whether the modes share one area or each has its narrowest own', SHARINGS).default(
    'one-area',
  ),
  columns: whole('how many necks stand beside one another in a picture', 1, 7).default(1),
  pattern: choice('the order of the notes', PATTERNS).default('up'),
  tempo: decimal('beats a minute, one note a beat', TEMPO_RANGE_BPM.from, TEMPO_RANGE_BPM.to).default(80),
});
export const ModesQuery = z.strictObject({
  name: text('a part of a name or alias').optional(),
  contains: list('degrees the mode must have: b3,%234').optional(),
  limit: whole('the most answers', 1, 462).default(20),
});
export const RelatedQuery = z.strictObject({
  shared: whole('the fewest notes in common', 0, 7).default(6),
  limit: whole('the most scales by shared notes', 1, 500).default(40),
});
export const InstrumentsQuery = z.strictObject({
  q: text('words that an instrument or one of its tunings is known by: five string bass, low B').optional(),
  limit: whole('the most instruments', 1, 100).default(100),
});
export const CompareQuery = z.strictObject({
  a: text('a mode').meta({ example: 'dorian' }),
  b: text('another mode').meta({ example: 'phrygian' }),
  root: text('the root both stand on').default('A'),
});
export const RouteQuery = z.strictObject({
  from: text('the mode to begin with').meta({ example: 'dorian' }),
  to: text('the mode to arrive at').meta({ example: 'phrygian-dominant' }),
  root: text('the root both stand on').default('A'),
});
export const SearchQuery = z.strictObject({
  notes: list('notes the scale must hold, the likely root first: A,B,C,D,E,F,G%23').meta({
    example: 'A,B,C,D,E,F,G%23',
  }),
  root: text('only scales on this root').optional(),
  limit: whole('the most answers', 1, 500).default(40),
});

function text(description: string) {
  return z
    .string({ error: description })
    .trim()
    .min(1, { error: description })
    .max(LONGEST_TEXT, { error: `${description}; at most ${LONGEST_TEXT} characters` })
    .describe(description);
}

function choice<const T extends readonly [string, ...string[]] | readonly string[]>(
  description: string,
  values: T,
) {
  return z
    .enum(values as unknown as [T[number], ...T[number][]], { error: `one of ${values.join(', ')}` })
    .describe(description);
}

/** A list in one parameter, its items parted by commas or spaces. */
function list(description: string) {
  return text(description)
    .transform((value) => value.split(/[,\s]+/).filter((item) => item !== ''))
    .refine((items) => items.length > 0, { error: description });
}

/** Whole numbers in one parameter, parted by commas. */
function numbers(description: string, from: number, to: number) {
  const error = `whole numbers from ${from} to ${to}, parted by commas: ${description}`;
  return z
    .string({ error })
    .regex(/^\d{1,2}(,\d{1,2}){0,13}$/, { error })
    .transform((value) => value.split(',').map(Number))
    .refine((values) => values.every((value) => value >= from && value <= to), { error })
    .describe(description);
}

/** One length, or that of the lowest and that of the highest string. */
function lengths(description: string) {
  const { from, to } = SCALE_LENGTH_RANGE_MM;
  const error = `one length from ${from} to ${to}, or two joined by a hyphen: ${description}`;
  return z
    .string({ error })
    .regex(/^\d{3,4}(\.\d{1,3})?(-\d{3,4}(\.\d{1,3})?)?$/, { error })
    .transform((value) => value.split('-').map(Number))
    .refine((values) => values.every((value) => value >= from && value <= to), { error })
    .describe(description);
}

function signed(description: string, from: number, to: number) {
  const error = `a whole number from ${from} to ${to}: ${description}`;
  return z
    .string({ error })
    .regex(/^-?\d{1,2}$/, { error })
    .transform(Number)
    .refine((value) => value >= from && value <= to, { error })
    .meta({ description, type: 'integer', minimum: from, maximum: to });
}

function whole(description: string, from: number, to: number) {
  const error = `a whole number from ${from} to ${to}: ${description}`;
  return z
    .string({ error })
    .regex(/^\d{1,4}$/, { error })
    .transform(Number)
    .refine((value) => value >= from && value <= to, { error })
    .meta({ description, type: 'integer', minimum: from, maximum: to });
}

function decimal(description: string, from: number, to: number) {
  const error = `a number from ${from} to ${to}: ${description}`;
  return z
    .string({ error })
    .regex(/^\d{1,4}(\.\d{1,3})?$/, { error })
    .transform(Number)
    .refine((value) => value >= from && value <= to, { error })
    .meta({ description, type: 'number', minimum: from, maximum: to });
}
