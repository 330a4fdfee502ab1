/**
 * From the names in a request to the things they name.
 */
import {
  type FamilyEntry,
  familyEntryOf,
  findFamily,
  findInstrument,
  findMode,
  findNotServed,
  type InstrumentEntry,
  type ModeEntry,
  type RecognisedTuning,
  recogniseTuning,
  suggestFamilies,
  suggestInstruments,
  suggestModes,
} from '@stillroot/catalog';
import { FORMATS } from '@stillroot/contract';
import {
  buildNeck,
  type Neck,
  type NeckOptions,
  parseRoot,
  type Result,
  type Root,
  readTuning,
  type Tuning,
  type TuningReading,
  transposeTuning,
  tuningNamed,
} from '@stillroot/core';
import { ProblemReply, shortened } from './problem-reply.ts';
import { remember } from './remember.ts';

/** Some hundred kilobytes each at most. */
const MOST_NECKS = 100;

/** The mode of a name, or a problem that suggests the nearest. */
export function resolveMode(text: string, field = 'mode'): ModeEntry {
  return findMode(text) ?? unknown(field, text, 'a mode', suggestModes(text));
}

/** The family of a name, or a problem that suggests the nearest, or the family of a mode that is called that. */
export function resolveFamily(text: string): FamilyEntry {
  const family = findFamily(text);
  if (family) return family;
  const entry = findMode(text);
  const what = entry ? `a family, and ${entry.name} is a mode` : 'a family';
  return unknown('family', text, what, entry ? [familyEntryOf(entry.mode)] : suggestFamilies(text));
}

/** The instrument of a name in a path, or a problem that suggests the nearest. */
export function resolveInstrument(text: string): InstrumentEntry {
  const instrument = findInstrument(text);
  if (instrument) return instrument;
  const reason = whyNotServed(text);
  if (reason) throw new ProblemReply('unknownName', [{ field: 'instrument', value: text, expected: reason }]);
  const nearest = suggestInstruments(text).map(({ id }) => ({ slug: id }));
  return unknown('instrument', text, 'an instrument', nearest);
}

/** The root of a name. */
export function resolveRoot(text: string): Root {
  const read = parseRoot(text);
  if (read.ok || !text.includes('.')) return orRefuse(read);
  const forms = FORMATS.map((form) => `.${form}`).join(', ');
  throw refusal('root', text, `${read.problem.expected}; a form may follow where there are any: ${forms}`);
}

/** What names a neck in a query. */
export interface NeckQuery {
  readonly instrument: string;
  readonly tuning?: string | undefined;
  readonly transpose: number;
  readonly capo: number;
  readonly capoStrings?: readonly number[] | undefined;
  /** One length, or those of the lowest and the highest string. */
  readonly scaleLength?: readonly number[] | undefined;
  readonly frets?: number | undefined;
}

/** A neck, and how the words for it were taken. */
export interface AskedNeck {
  readonly neck: Neck;
  readonly instrument: InstrumentEntry;
  /** Absent where the tuning is named by its id. */
  readonly reading?: TuningReading & { readonly text: string };
  /** Other tunings of the catalogue that have the same open strings. */
  readonly alsoTuned: readonly RecognisedTuning[];
}

/** The neck that a query names. */
export const resolveNeck: (query: NeckQuery) => AskedNeck = remember(
  MOST_NECKS,
  ({ instrument, tuning, transpose, capo, capoStrings, scaleLength, frets }) =>
    JSON.stringify([instrument, tuning ?? null, transpose, capo, capoStrings, scaleLength, frets]),
  setUpNeck,
);

function setUpNeck(query: NeckQuery): AskedNeck {
  const { instrument: name, tuning: text, transpose } = query;
  const instrument = findInstrument(name);
  if (!instrument) throw refusal('instrument', name, whyNotServed(name) ?? nearestInstruments(name));
  const named = text === undefined ? instrument.tunings[0] : tuningNamed(instrument, text);
  const reading = named || text === undefined ? undefined : { ...readTyped(instrument, text), text };
  const asked = (named ?? reading?.tuning) as Tuning;
  const tuning = transpose === 0 ? asked : orRefuse(transposeTuning(asked, transpose));
  const neck = orRefuse(buildNeck(instrument, tuning, neckOptions(query)));
  const own = neck.tuning.id;
  const alsoTuned = recogniseTuning(
    tuning.courses.map(([principal]) => principal.midi),
    instrument,
  ).filter((one) => one.instrument !== instrument || one.tuning.id !== own);
  return { neck, instrument, alsoTuned, ...(reading && { reading }) };
}

function neckOptions({ capo, capoStrings, scaleLength, frets }: NeckQuery): NeckOptions {
  if (capoStrings && capo === 0)
    throw refusal(
      'capoStrings',
      capoStrings.join(','),
      'the fret that the capo lies on as well, such as capo=2',
    );
  const [first, second] = scaleLength ?? [];
  return {
    capoFret: capo,
    ...(capoStrings && { capoStrings }),
    ...(first !== undefined && second === undefined && { scaleLengthMm: first }),
    ...(first !== undefined && second !== undefined && { scaleLengthsMm: { bass: first, treble: second } }),
    ...(frets !== undefined && { frets }),
  };
}

/** The value of a result, or a problem about the request. */
export function orRefuse<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new ProblemReply('badInput', [result.problem]);
}

/** A problem with one parameter. */
export function refusal(field: string, value: string, expected: string): ProblemReply {
  return new ProblemReply('badInput', [{ field, value: shortened(value), expected }]);
}

function readTyped(instrument: InstrumentEntry, text: string): TuningReading {
  const read = readTuning(text, { instrument });
  if (read.ok) return read.value;
  const ids = instrument.tunings.map(({ id }) => id).join(', ');
  const { field, value, expected } = read.problem;
  throw refusal(field, value, `${expected}; or one of the tunings of ${instrument.id}: ${ids}`);
}

function whyNotServed(text: string): string | undefined {
  const entry = findNotServed(text);
  return entry && `another instrument: the ${entry.name} cannot be served. ${entry.reason}`;
}

function nearestInstruments(name: string): string {
  const nearest = suggestInstruments(name).map(({ id }) => id);
  return `an instrument of /v1/instruments, such as ${nearest.join(', ')}`;
}

function unknown(
  field: string,
  value: string,
  what: string,
  nearest: readonly { readonly slug: string }[],
): never {
  const names = nearest.map(({ slug }) => slug).join(', ');
  const expected = names === '' ? what : `${what}; the nearest names are ${names}`;
  throw new ProblemReply('unknownName', [{ field, value: shortened(value), expected }]);
}
