/**
 * The neck that choices ask for, and what is wrong with those that cannot be had.
 */
import {
  buildNeck,
  fail,
  HAND_SIZES,
  type Instrument,
  invariant,
  type Neck,
  type NeckOptions,
  type OpenStrings,
  type Problem,
  REACH_RANGE_MM,
  type Result,
  readTuning,
  type Style,
  succeed,
  type Tuning,
  type TuningReading,
  transposeTuning,
} from '@stillroot/core';
import { CHOICES } from '../words/choices.ts';
import { CHOOSER } from '../words/interface.ts';
import type { ChoiceKey } from './choice-keys.ts';
import { type Choices, LISTS, MOST_ANSWERS } from './choices.ts';
import { addressedTuning } from './meant-tuning.ts';
import { tuningNaming } from './typed-naming.ts';

/** A neck, always; problems stand beside the fields that they belong to. */
export interface ChosenNeck {
  readonly neck: Neck;
  readonly instrument: Instrument;
  /** How a tuning typed by hand was taken; absent where none was typed. */
  readonly reading?: TuningReading;
  readonly problems: readonly Problem[];
}

/** Builds the neck. Where a choice cannot be had its default stands in, and a problem says so. */
export function neckFrom(choices: Choices, instruments: readonly Instrument[], usualId: string): ChosenNeck {
  const asked = instrumentOf(choices.instrument || usualId, instruments);
  const instrument = asked.ok ? asked.value : heldBy(instrumentOf(usualId, instruments));
  const text = addressedTuning(choices.tuning, instrument, tuningNaming(choices));
  const typed = openStringsIn(text, instrument);
  const known = instrument.tunings.find(({ id }) => id === text) ?? instrument.tunings[0];
  const strings = typed?.ok ? typed.value.tuning : known;
  const transpose = numberOf('transpose', choices);
  const moved = transpose === 0 ? succeed(strings) : transposeTuning(strings, transpose);
  const built = buildWith(instrument, moved.ok ? moved.value : strings, settingsOf(choices));
  const reach = reachOf(numberOf('reach', choices));
  const fret = fretOf(numberOf('fret', choices), built.neck);
  const results: readonly (Result<unknown> | undefined)[] = [asked, typed, moved, reach, fret];
  return {
    neck: built.neck,
    instrument,
    ...(typed?.ok && { reading: typed.value }),
    problems: [
      ...results.flatMap((result) => (result === undefined || result.ok ? [] : [result.problem])),
      ...built.problems,
      ...unlisted(choices),
    ].map((problem) => withUnread(problem, choices)),
  };
}

/** A number that was chosen; none that may be had where what stood there could not be read, so that core says what may. */
function numberOf<K extends 'transpose' | 'capo' | 'frets' | 'fret' | 'reach'>(
  key: K,
  { unread, [key]: read }: Choices,
): Choices[K] | number {
  return unread[key] === undefined ? read : Number.NaN;
}

/** A fret of the neck from which to play; undefined where anywhere is meant. */
function fretOf(fret: number | undefined, { slots }: Neck): Result<number | undefined> {
  const highest = slots.at(-1)?.fret ?? 0;
  if (fret === undefined || fret <= highest) return succeed(fret);
  return fail('fret', String(fret), { kind: 'fret', highest });
}

/** A reach that may be asked for; undefined where that of the hand's size is meant. */
export function reachOf(reach: number | undefined): Result<number | undefined> {
  const { from, to } = REACH_RANGE_MM;
  if (reach === undefined || (reach >= from && reach <= to)) return succeed(reach);
  return fail('reach', String(reach), { kind: 'length-mm', from, to });
}

/** How to play what is chosen, as core asks it. */
export function playingFrom(choices: Choices): {
  readonly style: Style;
  readonly fret?: number;
  readonly reachMm: number;
  readonly openStrings: OpenStrings;
} {
  const { style, fret, handSize, open } = choices;
  const reach = reachOf(choices.reach);
  const reachMm = (reach.ok ? reach.value : undefined) ?? HAND_SIZES[handSize].reachMm;
  return { style, reachMm, openStrings: open, ...(fret !== undefined && { fret }) };
}

function instrumentOf(id: string, instruments: readonly Instrument[]): Result<Instrument> {
  const found = instruments.find((instrument) => instrument.id === id);
  return found ? succeed(found) : fail('instrument', id, CHOOSER.notInstrument);
}

/** A tuning that was typed; undefined where none was, or where it is the id of one. */
function openStringsIn(text: string, instrument: Instrument): Result<TuningReading> | undefined {
  if (text === '' || instrument.tunings.some(({ id }) => id === text)) return undefined;
  const typed = readTuning(text, { instrument });
  // A word without a digit may have been meant as an id, so open strings alone would be the wrong advice.
  return typed.ok || /\d/.test(text) ? typed : fail('tuning', text, CHOOSER.notTuning);
}

/** What is set on the neck, choice by choice. */
type Settings = readonly (readonly [ChoiceKey, Result<NeckOptions>])[];

function settingsOf(choices: Choices): Settings {
  const { capoStrings, scaleLength } = choices;
  const frets = numberOf('frets', choices);
  const capo = numberOf('capo', choices);
  return [
    ...(frets === undefined ? [] : [['frets', succeed({ frets })] as const]),
    ...(scaleLength === '' ? [] : [['scaleLength', lengthsOf(scaleLength)] as const]),
    ...(capo === 0 ? [] : [['capo', succeed({ capoFret: capo })] as const]),
    ...(capoStrings === '' ? [] : [['capoStrings', stringsOf(capoStrings)] as const]),
  ];
}

/** Core's names of what is set on a neck, and those of the choices. */
const KEYS_OF_FIELDS: readonly (readonly [field: RegExp, key: ChoiceKey])[] = [
  [/^scaleLength/, 'scaleLength'],
  [/^capoStrings/, 'capoStrings'],
  [/^capo/, 'capo'],
  [/^frets/, 'frets'],
];

/** Builds a neck with all settings that can be had together; one that cannot is left out and told. */
function buildWith(
  instrument: Instrument,
  tuning: Tuning,
  settings: Settings,
): Pick<ChosenNeck, 'neck' | 'problems'> {
  const unreadable = settings.find(([, setting]) => !setting.ok);
  const options = settings.map(([, setting]) => (setting.ok ? setting.value : {}));
  const built = unreadable?.[1] ?? buildNeck(instrument, tuning, Object.assign({}, ...options));
  if (built.ok && 'strings' in built.value) return { neck: built.value, problems: [] };
  invariant(!built.ok, 'a setting that can be read is no reason to leave it out');
  const { problem } = built;
  const key = unreadable?.[0] ?? KEYS_OF_FIELDS.find(([field]) => field.test(problem.field))?.[1] ?? 'tuning';
  const others = settings.filter(([other]) => other !== key);
  const rest =
    others.length < settings.length
      ? buildWith(instrument, tuning, others)
      : { neck: heldBy(buildNeck(instrument, instrument.tunings[0])), problems: [] };
  return { neck: rest.neck, problems: [{ ...problem, field: key }, ...rest.problems] };
}

function lengthsOf(text: string): Result<NeckOptions> {
  const [bass, treble, ...more] = text
    .replaceAll(',', '.')
    .split(/\s*(?:[-–/]|mm|\s)\s*/)
    .filter(Boolean)
    .map(Number);
  if (bass === undefined || Number.isNaN(bass) || Number.isNaN(treble ?? 0) || more.length > 0) {
    return fail('scaleLength', text, CHOICES.notLength);
  }
  return succeed(treble === undefined ? { scaleLengthMm: bass } : { scaleLengthsMm: { bass, treble } });
}

function stringsOf(text: string): Result<NeckOptions> {
  const parts = text.split(/[\s,;]+/).filter((part) => part !== '');
  const capoStrings = parts.flatMap((part) => {
    const [, from = '', to = from] = /^(\d{1,2})(?:[-–](\d{1,2}))?$/.exec(part) ?? [];
    const [low, high] = [Number(from), Number(to)].toSorted((a, b) => a - b) as [number, number];
    return from === '' ? [Number.NaN] : Array.from({ length: high - low + 1 }, (_, at) => low + at);
  });
  return capoStrings.some(Number.isNaN)
    ? fail('capoStrings', text, CHOICES.notStrings)
    : succeed({ capoStrings });
}

/** What stood in the address in place of one of a list, or of a number that belongs to no neck. */
function unlisted({ unread }: Choices): readonly Problem[] {
  const { answer } = unread;
  const results = [
    ...Object.entries(LISTS).map(([key, choices]) => {
      const text = unread[key as ChoiceKey];
      return text === undefined ? succeed(key) : fail(key, text, { kind: 'one-of', choices });
    }),
    ...(answer === undefined
      ? []
      : [fail('answer', answer, { kind: 'whole-number', from: 1, to: MOST_ANSWERS })]),
  ];
  return results.flatMap((result) => (result.ok ? [] : [result.problem]));
}

/** A problem with what was typed in place of a number. */
function withUnread(problem: Problem, { unread }: Choices): Problem {
  const text = unread[problem.field as ChoiceKey];
  if (text === undefined) return problem;
  const failed = fail(problem.field, text, problem.expectation ?? problem.expected);
  return failed.ok ? problem : failed.problem;
}

function heldBy<T>(result: Result<T>): T {
  invariant(result.ok, 'the default can be had');
  return result.value;
}
