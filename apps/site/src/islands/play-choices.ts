/**
 * What a reader chose for the play-along, as it stands in an address beside the other choices. Defaults are
 * left out; what cannot be read is taken as not chosen. How loud the whole is does not stand there: nobody's
 * link makes anybody's ears ring.
 */
import {
  type Meter,
  NOTE_VALUES,
  type NoteValue,
  PATTERNS,
  type Pattern,
  PLAY_RANGES,
  type PlayOptions,
  parseMeter,
  SEED_RANGE,
  TEMPO_RANGE_BPM,
} from '@stillroot/core';
import { type Mix, VOICES } from '../sound/mix.ts';
import { PLAY_KEYS } from './play-keys.ts';

/** What lies under the notes. */
export const BACKINGS = ['drone', 'vamp', 'both', 'none'] as const;

/** What goes round: all modes, one of them, or nothing. */
export const LOOPS = ['round', 'mode', 'once'] as const;

/** When the metronome sounds: all the time, or for the count-in only. */
export const METRONOMES = ['on', 'off'] as const;

/** Everything that can be chosen. */
export interface PlayChoices {
  readonly tempo: number;
  /** By how much the tempo climbs; 0 where it does not. */
  readonly step: number;
  readonly top: number;
  /** Rounds after which it does. */
  readonly every: number;
  readonly pattern: Pattern;
  readonly value: NoteValue;
  readonly meter: Meter;
  readonly countIn: number;
  /** How often each mode is played before the next. */
  readonly repeats: number;
  /** Beats between two modes. */
  readonly rest: number;
  readonly seed: number;
  readonly backing: (typeof BACKINGS)[number];
  readonly metronome: boolean;
  readonly loop: (typeof LOOPS)[number];
  /** The mode of the round to begin with, from 1. */
  readonly turn: number;
  readonly mix: Mix;
}

/** The numbers that may be chosen, ends included. */
export const PLAY_NUMBERS = {
  tempo: { ...TEMPO_RANGE_BPM, usual: 80 },
  step: { from: 0, to: 50, usual: 0 },
  top: { ...TEMPO_RANGE_BPM, usual: 120 },
  every: { from: 1, to: 16, usual: 1 },
  countIn: { ...PLAY_RANGES.countInBars, usual: 1 },
  repeats: { ...PLAY_RANGES.repeats, usual: 1 },
  rest: { ...PLAY_RANGES.restBeats, usual: 0 },
  seed: { ...SEED_RANGE, usual: 1 },
  turn: { from: 1, to: 7, usual: 1 },
} as const;

/** The least and the most of a number that may be chosen. */
export function playNumbersOf(key: keyof typeof PLAY_NUMBERS): {
  readonly from: number;
  readonly to: number;
} {
  const { from, to } = PLAY_NUMBERS[key];
  return { from, to };
}

const USUAL_MIX: Mix = { notes: 0.8, drone: 0.6, chords: 0.6, clicks: 0.5 };
const USUAL_METER: Meter = { beats: 4, unit: 4 };

/** Reads choices from a query. */
export function readPlayChoices(query: URLSearchParams): PlayChoices {
  const text = (key: keyof PlayChoices): string => query.get(key) ?? '';
  const number = (key: keyof typeof PLAY_NUMBERS): number => numberIn(text(key), PLAY_NUMBERS[key]);
  const meter = parseMeter(text('meter'));
  return {
    tempo: number('tempo'),
    step: number('step'),
    top: number('top'),
    every: number('every'),
    pattern: oneOf(PATTERNS, text('pattern')) ?? 'up',
    value: oneOf(NOTE_VALUES, text('value')) ?? 'quarter',
    meter: meter.ok ? meter.value : USUAL_METER,
    countIn: number('countIn'),
    repeats: number('repeats'),
    rest: number('rest'),
    seed: number('seed'),
    backing: oneOf(BACKINGS, text('backing')) ?? 'drone',
    metronome: text('metronome') !== 'off',
    loop: oneOf(LOOPS, text('loop')) ?? 'round',
    turn: number('turn'),
    mix: mixIn(text('mix')),
  };
}

/** Writes choices as a query, without the defaults. */
export function writePlayChoices(choices: PlayChoices): URLSearchParams {
  const query = new URLSearchParams();
  const usual = playTexts(readPlayChoices(query));
  const texts = playTexts(choices);
  for (const key of PLAY_KEYS) if (texts[key] !== usual[key]) query.set(key, texts[key]);
  return query;
}

/** What core is asked for. */
export function playOptions(choices: PlayChoices): PlayOptions {
  const { pattern, seed, value, tempo, meter, countIn, repeats, rest } = choices;
  return {
    pattern,
    seed,
    noteValue: value,
    tempoBpm: tempo,
    meter,
    countInBars: countIn,
    repeats,
    restBeats: rest,
  };
}

/** Each choice as it stands in an address. */
export function playTexts(choices: PlayChoices): Readonly<Record<keyof PlayChoices, string>> {
  const { meter, metronome, mix, ...plain } = choices;
  const texts = Object.fromEntries(Object.entries(plain).map(([key, value]) => [key, String(value)]));
  return {
    ...(texts as Record<keyof typeof plain, string>),
    meter: `${meter.beats}/${meter.unit}`,
    metronome: METRONOMES[metronome ? 0 : 1],
    mix: VOICES.map((voice) => Math.round(mix[voice] * 100)).join('-'),
  };
}

function mixIn(text: string): Mix {
  const parts = text.split('-').map((part) => (/^\d{1,3}$/.test(part) ? Number(part) : Number.NaN));
  const isMix = parts.length === VOICES.length && parts.every((part) => part <= 100);
  const shareOf = (voice: (typeof VOICES)[number]): number =>
    isMix ? (parts[VOICES.indexOf(voice)] ?? 0) / 100 : USUAL_MIX[voice];
  return {
    notes: shareOf('notes'),
    drone: shareOf('drone'),
    chords: shareOf('chords'),
    clicks: shareOf('clicks'),
  };
}

function numberIn(text: string, { from, to, usual }: { from: number; to: number; usual: number }): number {
  const number = /^\d{1,6}$/.test(text.trim()) ? Number(text) : Number.NaN;
  return number >= from && number <= to ? number : usual;
}

function oneOf<T extends string>(values: readonly T[], text: string): T | undefined {
  return values.find((value) => value === text);
}
