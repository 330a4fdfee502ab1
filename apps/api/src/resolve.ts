/**
 * From the names in a request to the things they name.
 */
import {
  type FamilyEntry,
  findFamily,
  findInstrument,
  findMode,
  type InstrumentEntry,
  type ModeEntry,
  suggestFamilies,
  suggestInstruments,
  suggestModes,
} from '@stillroot/catalog';
import {
  buildNeck,
  type Neck,
  parseRoot,
  parseTuning,
  type Result,
  type Root,
  type Tuning,
} from '@stillroot/core';
import { ProblemReply } from './problem-reply.ts';

/** The mode of a name, or a problem that suggests the nearest. */
export function resolveMode(text: string, field = 'mode'): ModeEntry {
  return findMode(text) ?? unknown(field, text, 'a mode', suggestModes(text));
}

/** The family of a name, or a problem that suggests the nearest. */
export function resolveFamily(text: string): FamilyEntry {
  return findFamily(text) ?? unknown('family', text, 'a family', suggestFamilies(text));
}

/** The instrument of a name in a path, or a problem that suggests the nearest. */
export function resolveInstrument(text: string): InstrumentEntry {
  return (
    findInstrument(text) ??
    unknown(
      'instrument',
      text,
      'an instrument',
      suggestInstruments(text).map(({ id }) => ({ slug: id })),
    )
  );
}

/** The root of a name. */
export function resolveRoot(text: string): Root {
  return orRefuse(parseRoot(text));
}

/** What names a neck in a query. */
export interface NeckQuery {
  readonly instrument: string;
  readonly tuning?: string | undefined;
  readonly capo: number;
  readonly frets?: number | undefined;
}

/** The neck that a query names. */
export function resolveNeck({ instrument: name, tuning: tuningText, capo, frets }: NeckQuery): Neck {
  const instrument = findInstrument(name);
  if (!instrument) {
    const nearest = suggestInstruments(name).map(({ id }) => id);
    throw refusal('instrument', name, `an instrument of /v1/instruments, such as ${nearest.join(', ')}`);
  }
  const tuning = tuningText === undefined ? instrument.tunings[0] : resolveTuning(instrument, tuningText);
  return orRefuse(buildNeck(instrument, tuning, { capoFret: capo, ...(frets !== undefined && { frets }) }));
}

/** The value of a result, or a problem about the request. */
export function orRefuse<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new ProblemReply('badInput', [result.problem]);
}

/** A problem with one parameter. */
export function refusal(field: string, value: string, expected: string): ProblemReply {
  return new ProblemReply('badInput', [{ field, value: value.slice(0, 60), expected }]);
}

function resolveTuning(instrument: InstrumentEntry, text: string): Tuning {
  const wanted = text.trim().toLowerCase();
  const known = instrument.tunings.find(({ id }) => id === wanted);
  if (known) return known;
  const parsed = parseTuning(text);
  if (parsed.ok) return parsed.value;
  const ids = instrument.tunings.map(({ id }) => id).join(', ');
  throw refusal(
    parsed.problem.field,
    parsed.problem.value,
    `${parsed.problem.expected}; or one of the tunings of ${instrument.id}: ${ids}`,
  );
}

function unknown(
  field: string,
  value: string,
  what: string,
  nearest: readonly { readonly slug: string }[],
): never {
  const names = nearest.map(({ slug }) => slug).join(', ');
  const expected = names === '' ? what : `${what}; the nearest names are ${names}`;
  throw new ProblemReply('unknownName', [{ field, value: value.slice(0, 60), expected }]);
}
