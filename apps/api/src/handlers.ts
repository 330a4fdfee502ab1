/**
 * One handler an endpoint: resolve the names, ask core, answer.
 */
import { CATALOGUE } from '@stillroot/catalog';
import type { answers, ENDPOINTS, EndpointName } from '@stillroot/contract';
import { type NoteName, parseChord, parseNote } from '@stillroot/core';
import type * as z from 'zod';
import type { Address } from './address.ts';
import { fingerings } from './answers/fingerings.ts';
import { fretboard } from './answers/fretboard.ts';
import * as instruments from './answers/instruments.ts';
import * as modes from './answers/modes.ts';
import { round } from './answers/round.ts';
import * as scales from './answers/scales.ts';
import {
  orRefuse,
  refusal,
  resolveFamily,
  resolveInstrument,
  resolveMode,
  resolveNeck,
  resolveRoot,
} from './resolve.ts';

type Params<Name extends EndpointName> = z.output<(typeof ENDPOINTS)[Name]['params']>;
type Query<Name extends EndpointName> = z.output<(typeof ENDPOINTS)[Name]['query']>;

/** What the server says of itself at a moment. */
export interface ServerState {
  readonly dataVersion: string;
  readonly counting: z.output<typeof answers.Counting>;
  readonly isStopping: boolean;
}

/** What a handler may want to know beside its parameters. */
export interface Asked {
  readonly address: Address;
  readonly state: ServerState;
}

/** A handler takes checked parameters; one whose answer has several forms gives them all, unmade. */
export type Handlers = {
  readonly [Name in EndpointName]: (params: Params<Name>, query: Query<Name>, asked: Asked) => unknown;
};

export const HANDLERS: Handlers = {
  families: (_, query, { address }) => modes.families(query, address),
  family: ({ family }) => modes.family(resolveFamily(family)),
  modes: (_, query, { address }) =>
    modes.modes({ ...query, contains: query.contains?.map(degreeText) }, address),
  mode: ({ mode }) => modes.mode(resolveMode(mode)),
  scale: ({ mode, root }) => scales.scale(resolveMode(mode), resolveRoot(root)),
  related: ({ mode, root }, query, { address }) =>
    scales.related(resolveMode(mode), resolveRoot(root), query, address),
  fretboard: ({ mode, root }, query) =>
    fretboard(resolveMode(mode), resolveRoot(root), resolveNeck(query), query),
  fingerings: ({ mode, root }, query) =>
    fingerings(resolveMode(mode), resolveRoot(root), resolveNeck(query), query),
  round: ({ family, root }, query) =>
    round(resolveFamily(family), resolveRoot(root), resolveNeck(query), query),
  compare: (_, { a, b, root }) => scales.compare(resolveMode(a, 'a'), resolveMode(b, 'b'), resolveRoot(root)),
  route: (_, { from, to, root }) =>
    scales.route(resolveMode(from, 'from'), resolveMode(to, 'to'), resolveRoot(root)),
  search: (_, query, { address }) => searchNotes(query, address),
  instruments: (_, query, { address }) => instruments.instruments(query, address),
  instrument: ({ instrument }) => instruments.instrument(resolveInstrument(instrument)),
  health: (_, __, { state: { dataVersion, counting } }) => ({
    status: 'ok',
    modes: CATALOGUE.modes.length,
    instruments: CATALOGUE.instruments.length,
    dataVersion,
    counting,
  }),
  ready: (_, __, { state }) => ({ status: state.isStopping ? 'stopping' : 'ready' }),
};

/** There are no more pitch classes. */
const MOST_ASKED = 12;

function searchNotes(query: Query<'search'>, address: Address) {
  const { notes: names = [], chords: symbols = [], root, ...span } = query;
  if (names.length + symbols.length === 0)
    throw refusal(
      'notes',
      '',
      'notes the scale must hold, such as notes=A,C,E, or chords, such as chords=Am,E7',
    );
  for (const [field, given] of [
    ['notes', names],
    ['chords', symbols],
  ] as const)
    if (given.length > MOST_ASKED) throw refusal(field, given.join(','), `at most ${MOST_ASKED} ${field}`);
  const notes: readonly NoteName[] = names.map((text, at) => orRefuse(parseNote(text, `notes[${at}]`)));
  const chords = symbols.map((text, at) => orRefuse(parseChord(text, `chords[${at}]`)));
  return scales.search(
    { notes, chords, root: root === undefined ? undefined : resolveRoot(root), span },
    address,
  );
}

/** A degree as formulas write it; an address may say `s4` for `#4`. */
function degreeText(text: string): string {
  if (!/^(b{1,4}|#{1,4}|s{1,4})?[1-7]$/.test(text)) {
    throw refusal('contains', text, 'degrees such as b3, #4 (written %234 or s4 in an address) or bb7');
  }
  return text.replaceAll('s', '#');
}
