/**
 * Timing: the beat, the bar, and how ticks and seconds relate. A beat is what the time signature counts: an
 * eighth note in 7/8, whatever its grouping.
 */
import { fail, type Result, succeed } from '../problem.ts';
import { TICKS_PER_QUARTER } from './note-value.ts';

/** The note values that a time signature counts, as its lower number. */
export const BEAT_UNITS = [2, 4, 8, 16] as const;

export type BeatUnit = (typeof BEAT_UNITS)[number];

/** A time signature: how many beats are in a bar, over what a beat is. */
export interface Meter {
  /** 2 to 12. */
  readonly beats: number;
  /** 4 for a quarter note. */
  readonly unit: BeatUnit;
}

/** A tempo and a time signature. */
export interface Timing {
  /** Beats a minute. */
  readonly tempoBpm: number;
  readonly meter: Meter;
  readonly ticksPerBeat: number;
  readonly ticksPerBar: number;
}

/** The tempi that a metronome is made for, in beats a minute, with room on both sides. */
export const TEMPO_RANGE_BPM = { from: 20, to: 400 } as const;

/** The fewest and the most beats of a bar. */
export const BEATS_RANGE = { from: 2, to: 12 } as const;

const EXPECTED_METER = { kind: 'meter', ...BEATS_RANGE, units: BEAT_UNITS } as const;

/** The timing of a tempo and a time signature, or what is wrong with them. */
export function timingOf(tempoBpm: number, meter: Meter): Result<Timing> {
  const { from, to } = TEMPO_RANGE_BPM;
  if (!(tempoBpm >= from && tempoBpm <= to)) {
    return fail('tempo', String(tempoBpm), { kind: 'tempo', from, to });
  }
  const { beats, unit } = meter;
  const areBeats = Number.isInteger(beats) && beats >= BEATS_RANGE.from && beats <= BEATS_RANGE.to;
  if (!areBeats || !BEAT_UNITS.includes(unit)) return fail('meter', `${beats}/${unit}`, EXPECTED_METER);
  const ticksPerBeat = (4 * TICKS_PER_QUARTER) / unit;
  return succeed({ tempoBpm, meter: { beats, unit }, ticksPerBeat, ticksPerBar: beats * ticksPerBeat });
}

/**
 * Reads a time signature.
 * @example parseMeter('7/8') // { beats: 7, unit: 8 }
 */
export function parseMeter(text: string, field = 'meter'): Result<Meter> {
  const [, beatsText, unitText] = /^(\d{1,2})\/(\d{1,2})$/.exec(text.trim()) ?? [];
  const beats = Number(beatsText);
  const unit = BEAT_UNITS.find((one) => one === Number(unitText));
  if (unit === undefined || !(beats >= BEATS_RANGE.from && beats <= BEATS_RANGE.to)) {
    return fail(field, text, EXPECTED_METER);
  }
  return succeed({ beats, unit });
}

/** Seconds from the beginning to a tick. */
export function secondsAt({ tempoBpm, ticksPerBeat }: Timing, ticks: number): number {
  return (ticks * 60) / (tempoBpm * ticksPerBeat);
}

/** Ticks from the beginning to a moment, with their fraction. */
export function ticksAt({ tempoBpm, ticksPerBeat }: Timing, seconds: number): number {
  return (seconds * tempoBpm * ticksPerBeat) / 60;
}

/** Quarter notes a minute, which is how files state a tempo. */
export function quartersPerMinute({ tempoBpm, ticksPerBeat }: Timing): number {
  return (tempoBpm * ticksPerBeat) / TICKS_PER_QUARTER;
}
