/**
 * Every path of the API: what it takes and what it answers. The API binds a handler to each; the OpenAPI
 * document is written from it.
 */
import type * as z from 'zod';
import * as answers from './answers.ts';
import * as requests from './requests.ts';

/** What a path can be had as, beside JSON. */
export type Format = 'svg' | 'txt';

/** One path of the API. */
export interface Endpoint<Path extends z.ZodType = z.ZodType, Query extends z.ZodType = z.ZodType> {
  /** With parameters in braces, as OpenAPI writes them. */
  readonly path: string;
  readonly summary: string;
  readonly params: Path;
  readonly query: Query;
  readonly answer: z.ZodType;
  /** Other forms, each at the same path with its extension. */
  readonly formats: readonly Format[];
}

const PICTURE: readonly Format[] = ['svg', 'txt'];

export const ENDPOINTS = {
  families: endpoint(
    '/v1/families',
    'All 66 families with their modes',
    requests.NoPath,
    requests.NoQuery,
    answers.Families,
  ),
  family: endpoint(
    '/v1/families/{family}',
    'One family',
    requests.FamilyPath,
    requests.NoQuery,
    answers.Family,
  ),
  modes: endpoint(
    '/v1/modes',
    'Modes by name, alias or degrees',
    requests.NoPath,
    requests.ModesQuery,
    answers.Modes,
  ),
  mode: endpoint('/v1/modes/{mode}', 'One mode', requests.ModePath, requests.NoQuery, answers.Mode),
  scale: endpoint(
    '/v1/modes/{mode}/{root}',
    'A mode on a root',
    requests.ScalePath,
    requests.NoQuery,
    answers.Scale,
  ),
  related: endpoint(
    '/v1/modes/{mode}/{root}/related',
    'Scales that belong with a scale',
    requests.ScalePath,
    requests.RelatedQuery,
    answers.Related,
  ),
  fretboard: endpoint(
    '/v1/modes/{mode}/{root}/fretboard',
    'Every place of every note on a neck',
    requests.ScalePath,
    requests.FretboardQuery,
    answers.Fretboard,
    PICTURE,
  ),
  fingerings: endpoint(
    '/v1/modes/{mode}/{root}/fingerings',
    'Ways to play a scale, best first',
    requests.ScalePath,
    requests.FingeringsQuery,
    answers.Fingerings,
    PICTURE,
  ),
  round: endpoint(
    '/v1/rounds/{family}/{root}',
    'The seven modes of a family from one root in one area of the neck',
    requests.RoundPath,
    requests.RoundQuery,
    answers.Round,
    PICTURE,
  ),
  compare: endpoint(
    '/v1/compare',
    'Two modes on one root, degree by degree',
    requests.NoPath,
    requests.CompareQuery,
    answers.Comparison,
  ),
  route: endpoint(
    '/v1/routes',
    'A shortest chain of neighbours between two modes',
    requests.NoPath,
    requests.RouteQuery,
    answers.Route,
  ),
  search: endpoint(
    '/v1/search',
    'Scales that hold the given notes',
    requests.NoPath,
    requests.SearchQuery,
    answers.Matches,
  ),
  instruments: endpoint(
    '/v1/instruments',
    'The instruments and their tunings, all or those that words are found in',
    requests.NoPath,
    requests.InstrumentsQuery,
    answers.Instruments,
  ),
  instrument: endpoint(
    '/v1/instruments/{instrument}',
    'One instrument',
    requests.InstrumentPath,
    requests.NoQuery,
    answers.Instrument,
  ),
  health: endpoint(
    '/health',
    'Whether the server answers',
    requests.NoPath,
    requests.NoQuery,
    answers.Health,
  ),
} as const;

export type EndpointName = keyof typeof ENDPOINTS;

function endpoint<Path extends z.ZodType, Query extends z.ZodType>(
  path: string,
  summary: string,
  params: Path,
  query: Query,
  answer: z.ZodType,
  formats: readonly Format[] = [],
): Endpoint<Path, Query> {
  return { path, summary, params, query, answer, formats };
}
