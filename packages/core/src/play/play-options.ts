/**
 * What may be asked of a piece, and what is taken where nothing is asked.
 */
import { fail, type Result, succeed } from '../problem.ts';
import { NOTE_VALUES, type NoteValue } from './note-value.ts';
import { PATTERNS, type Pattern } from './pattern.ts';
import { SEED_RANGE } from './random.ts';
import { type Meter, type Timing, timingOf } from './timing.ts';

/** What may be asked of a piece. */
export interface PlayOptions {
  /** `up` where absent. */
  readonly pattern?: Pattern;
  /** Of a random walk, which is the same for the same seed; 1 where absent. */
  readonly seed?: number;
  /** How long each note lasts; a quarter where absent. */
  readonly noteValue?: NoteValue;
  /** Beats a minute; 80 where absent. */
  readonly tempoBpm?: number;
  /** 4/4 where absent. */
  readonly meter?: Meter;
  /**
   * Bars that each mode fills, its pattern going round until they are full, the last note cut short where it
   * must be. Where absent, the pattern is played once through, in as many bars as it needs.
   */
  readonly bars?: number;
  /** Bars of clicks before the first note; none where absent. */
  readonly countInBars?: number;
  /** How often each mode is played before the next; once where absent. */
  readonly repeats?: number;
  /** The least rest between two modes, in beats; none where absent. Every mode begins with a bar. */
  readonly restBeats?: number;
  /** The degrees whose triads are the vamp, a bar each, in turn; the mode's own choice where absent. */
  readonly vampDegrees?: readonly number[];
}

/** What each number of a piece may be, ends included; tempo, beats and seed have ranges of their own. */
export const PLAY_RANGES = {
  bars: { from: 1, to: 64 },
  countInBars: { from: 0, to: 4 },
  repeats: { from: 1, to: 16 },
  restBeats: { from: 0, to: 48 },
} as const;

const MOST_VAMP_CHORDS = 16;

/** Options that have been checked, with nothing absent that has a usual value. */
export interface PlayPlan {
  readonly pattern: Pattern;
  readonly seed: number;
  readonly noteValue: NoteValue;
  readonly timing: Timing;
  readonly bars: number | undefined;
  readonly countInBars: number;
  readonly repeats: number;
  readonly restBeats: number;
  readonly vampDegrees: readonly number[] | undefined;
}

/** Checks what was asked of a piece. */
export function checkPlayOptions(options: PlayOptions): Result<PlayPlan> {
  const { pattern = 'up', seed = 1, noteValue = 'quarter', tempoBpm = 80 } = options;
  const { meter = { beats: 4, unit: 4 }, bars, countInBars = 0, repeats = 1, restBeats = 0 } = options;
  const timing = timingOf(tempoBpm, meter);
  if (!timing.ok) return timing;
  const refusal =
    outside('pattern', pattern, PATTERNS) ??
    outside('value', noteValue, NOTE_VALUES) ??
    notWhole('seed', seed, SEED_RANGE) ??
    (bars === undefined ? undefined : notWhole('bars', bars, PLAY_RANGES.bars)) ??
    notWhole('countIn', countInBars, PLAY_RANGES.countInBars) ??
    notWhole('repeats', repeats, PLAY_RANGES.repeats) ??
    notWhole('rest', restBeats, PLAY_RANGES.restBeats) ??
    notChords(options.vampDegrees);
  if (refusal) return refusal;
  return succeed({
    pattern,
    seed,
    noteValue,
    timing: timing.value,
    bars,
    countInBars,
    repeats,
    restBeats,
    vampDegrees: options.vampDegrees,
  });
}

function outside(field: string, value: string, choices: readonly string[]): Result<never> | undefined {
  return choices.includes(value) ? undefined : fail(field, value, { kind: 'one-of', choices });
}

function notWhole(
  field: string,
  value: number,
  { from, to }: { readonly from: number; readonly to: number },
): Result<never> | undefined {
  if (Number.isInteger(value) && value >= from && value <= to) return undefined;
  return fail(field, String(value), { kind: 'whole-number', from, to });
}

function notChords(degrees: readonly number[] | undefined): Result<never> | undefined {
  if (degrees === undefined) return undefined;
  const isCount = degrees.length >= 1 && degrees.length <= MOST_VAMP_CHORDS;
  if (isCount && degrees.every((degree) => Number.isInteger(degree) && degree >= 1 && degree <= 7)) {
    return undefined;
  }
  return fail('vamp', degrees.join(','), { kind: 'vamp', most: MOST_VAMP_CHORDS });
}
