/**
 * Every address that is read: what it takes, what it answers, and an example. The API binds a handler to
 * each; the OpenAPI document is written from it.
 */
import type * as z from 'zod';
import * as answers from './answers.ts';
import * as requests from './requests.ts';

/** What an address can be had as, beside JSON. */
export const FORMATS = ['svg', 'txt', 'mid', 'musicxml'] as const;
export type Format = (typeof FORMATS)[number];

/** The media types of the formats; `audio/midi` is common practice, no source. */
export const MEDIA_TYPES: Readonly<Record<Format, string>> = {
  svg: 'image/svg+xml',
  txt: 'text/plain',
  mid: 'audio/midi',
  musicxml: 'application/vnd.recordare.musicxml+xml',
};

/** What addresses are about. */
export const SUBJECTS = {
  modes: 'Families, modes, scales, and how they belong together',
  necks: 'Scales and rounds on a fretted instrument',
  instruments: 'The instruments and their tunings',
  service: 'The service itself',
} as const;
export type Subject = keyof typeof SUBJECTS;

/** One path of the API. */
export interface Endpoint<Path extends z.ZodObject = z.ZodObject, Query extends z.ZodObject = z.ZodObject> {
  /** With parameters in braces, as OpenAPI writes them. */
  readonly path: string;
  readonly subject: Subject;
  readonly summary: string;
  /** An address that shows what it is for. */
  readonly example: string;
  readonly params: Path;
  readonly query: Query;
  readonly answer: z.ZodObject;
  /** Other forms, each at the same path with its extension. */
  readonly formats: readonly Format[];
  /** Whether the answer is about the server at this moment, and so is never kept. */
  readonly isLive: boolean;
}

const PICTURE: readonly Format[] = ['svg', 'txt'];

export const ENDPOINTS = {
  families: about('modes', '/v1/families', 'All 66 families with their modes', {
    example: '/v1/families',
    query: requests.FamiliesQuery,
    answer: answers.Families,
  }),
  family: about('modes', '/v1/families/{family}', 'One family', {
    example: '/v1/families/harmonic-minor',
    params: requests.FamilyPath,
    answer: answers.Family,
  }),
  modes: about('modes', '/v1/modes', 'Modes by name, alias or degrees', {
    example: '/v1/modes?name=dominant&limit=5',
    query: requests.ModesQuery,
    answer: answers.Modes,
  }),
  mode: about('modes', '/v1/modes/{mode}', 'One mode', {
    example: '/v1/modes/phrygian-dominant',
    params: requests.ModePath,
    answer: answers.Mode,
  }),
  scale: about('modes', '/v1/modes/{mode}/{root}', 'A mode on a root', {
    example: '/v1/modes/phrygian-dominant/A',
    params: requests.ScalePath,
    answer: answers.Scale,
  }),
  related: about('modes', '/v1/modes/{mode}/{root}/related', 'Scales that belong with a scale', {
    example: '/v1/modes/dorian/A/related?shared=6&limit=10',
    params: requests.ScalePath,
    query: requests.RelatedQuery,
    answer: answers.Related,
  }),
  fretboard: about('necks', '/v1/modes/{mode}/{root}/fretboard', 'Every place of every note on a neck', {
    example: '/v1/modes/dorian/A/fretboard?instrument=mandolin&labels=notes',
    params: requests.ScalePath,
    query: requests.FretboardQuery,
    answer: answers.Fretboard,
    formats: PICTURE,
  }),
  fingerings: about('necks', '/v1/modes/{mode}/{root}/fingerings', 'Ways to play a scale, best first', {
    example: '/v1/modes/phrygian-dominant/A/fingerings?instrument=guitar-7&style=three-per-string&limit=2',
    params: requests.ScalePath,
    query: requests.FingeringsQuery,
    answer: answers.Fingerings,
    formats: FORMATS,
  }),
  round: about(
    'necks',
    '/v1/rounds/{family}/{root}',
    'The seven modes of a family from one root in one area of the neck',
    {
      example: '/v1/rounds/harmonic-minor/A?instrument=bass-4&pattern=thirds&tempo=96',
      params: requests.RoundPath,
      query: requests.RoundQuery,
      answer: answers.Round,
      formats: FORMATS,
    },
  ),
  compare: about('modes', '/v1/compare', 'Two modes on one root, degree by degree', {
    example: '/v1/compare?a=dorian&b=phrygian&root=A',
    query: requests.CompareQuery,
    answer: answers.Comparison,
  }),
  route: about('modes', '/v1/routes', 'A shortest chain of neighbours between two modes', {
    example: '/v1/routes?from=dorian&to=phrygian-dominant&root=D',
    query: requests.RouteQuery,
    answer: answers.Route,
  }),
  search: about('modes', '/v1/search', 'Scales that hold the given notes, or the notes of the given chords', {
    example: '/v1/search?notes=A,B,C,D,E,F,G%23',
    query: requests.SearchQuery,
    answer: answers.Matches,
  }),
  instruments: about(
    'instruments',
    '/v1/instruments',
    'The instruments and their tunings, all or those that words are found in',
    {
      example: '/v1/instruments?q=five%20string%20bass&limit=3',
      query: requests.InstrumentsQuery,
      answer: answers.Instruments,
    },
  ),
  instrument: about('instruments', '/v1/instruments/{instrument}', 'One instrument', {
    example: '/v1/instruments/bass-4',
    params: requests.InstrumentPath,
    answer: answers.Instrument,
  }),
  health: about('service', '/health', 'Whether the server answers', {
    example: '/health',
    answer: answers.Health,
    isLive: true,
  }),
  ready: about('service', '/ready', 'Whether the server takes requests; 503 while it stops', {
    example: '/ready',
    answer: answers.Ready,
    isLive: true,
  }),
} as const;

export type EndpointName = keyof typeof ENDPOINTS;

interface Rest<Path extends z.ZodObject, Query extends z.ZodObject> {
  readonly example: string;
  readonly params?: Path;
  readonly query?: Query;
  readonly answer: z.ZodObject;
  readonly formats?: readonly Format[];
  readonly isLive?: boolean;
}

function about<
  Path extends z.ZodObject = typeof requests.NoPath,
  Query extends z.ZodObject = typeof requests.NoQuery,
>(subject: Subject, path: string, summary: string, rest: Rest<Path, Query>): Endpoint<Path, Query> {
  const { example, answer, formats = [], isLive = false } = rest;
  const params = rest.params ?? (requests.NoPath as unknown as Path);
  const query = rest.query ?? (requests.NoQuery as unknown as Query);
  return { path, subject, summary, example, params, query, answer, formats, isLive };
}
