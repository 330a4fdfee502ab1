/**
 * What may be asked: the parameters of paths and queries. Numbers arrive as text and are turned into
 * numbers here; names (modes, roots, instruments, tunings) are resolved by the API.
 */
import {
  HAND_SIZES,
  MOST_FRETS,
  MOST_STRINGS,
  NOTE_VALUES,
  OPEN_STRING_USES,
  ORDERS,
  PATTERNS,
  PLAY_RANGES,
  REACH_RANGE_MM,
  SEED_RANGE,
  SHARINGS,
  STYLES,
  TEMPO_RANGE_BPM,
} from '@stillroot/core';
import * as z from 'zod';
import {
  choice,
  chords,
  decimal,
  degrees,
  lengths,
  list,
  meter,
  numbers,
  signed,
  text,
  whole,
  yesOrNo,
} from './parameters.ts';

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

/** What every address takes beside its own parameters. */
export const CommonQuery = z.strictObject({
  v: text(
    'the version of the data, as the header data-version gives it: an answer to an address with the present version never changes',
  ).optional(),
  fields: list(
    'the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads',
  ).optional(),
});

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
  fret: decimal(
    'the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut',
    0,
    MOST_FRETS,
  ).optional(),
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
const { bars, countInBars, repeats, restBeats } = PLAY_RANGES;
const play = {
  pattern: choice('the order in which notes are played', PATTERNS).default('up'),
  value: choice('how long each note lasts', NOTE_VALUES).default('quarter'),
  tempo: decimal(
    'beats a minute; the lower number of the meter says what a beat is',
    TEMPO_RANGE_BPM.from,
    TEMPO_RANGE_BPM.to,
  ).default(80),
  meter: meter('the time signature: 4/4, 3/4, 7/8', '4/4'),
  bars: whole(
    'bars that each mode fills; where absent, as many as its pattern takes once',
    bars.from,
    bars.to,
  ).optional(),
  countIn: whole('bars of clicks before the first note', countInBars.from, countInBars.to).default(0),
  repeats: whole('how often each mode is played before the next', repeats.from, repeats.to).default(1),
  rest: whole('the fewest beats of rest between two modes', restBeats.from, restBeats.to).default(0),
  drone: yesOrNo('whether the root is held under the notes of a .mid'),
  vamp: degrees(
    "whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4",
  ),
  seed: whole(
    'of a random walk, which is the same for the same seed',
    SEED_RANGE.from,
    SEED_RANGE.to,
  ).default(1),
  spelling: choice('how a .musicxml spells: each letter once, or for the eye', [
    'strict',
    'readable',
  ]).default('strict'),
};
const offset = whole('how many answers to pass over before the first', 0, 9999).default(0);

export const FretboardQuery = z.strictObject({ ...neck, ...picture });
export const FingeringsQuery = z.strictObject({
  ...neck,
  ...hand,
  ...picture,
  ...play,
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
  ...play,
});
export const FamiliesQuery = z.strictObject({
  limit: whole('the most families', 1, 66).default(66),
  offset,
});
export const ModesQuery = z.strictObject({
  name: text('a part of a name or alias').optional(),
  contains: list('degrees the mode must have: b3,%234').optional(),
  limit: whole('the most answers', 1, 462).default(20),
  offset,
});
export const RelatedQuery = z.strictObject({
  shared: whole('the fewest notes in common', 0, 7).default(6),
  limit: whole('the most scales by shared notes', 1, 500).default(40),
  offset: offset.describe('how many scales by shared notes to pass over before the first'),
});
export const InstrumentsQuery = z.strictObject({
  q: text('words that an instrument or one of its tunings is known by: five string bass, low B').optional(),
  limit: whole('the most instruments', 1, 100).default(100),
  offset,
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
  notes: list('notes the scale must hold, the likely root first: A,B,C,D,E,F,G%23').optional(),
  chords: chords(
    'chords whose notes the scale must hold, in place of notes or beside them: Am,E7 or Dm7,G7(b9),Cmaj7',
  )
    .optional()
    .meta({ example: 'Am,E7' }),
  root: text('only scales on this root').optional(),
  limit: whole('the most answers', 1, 500).default(40),
  offset,
});
