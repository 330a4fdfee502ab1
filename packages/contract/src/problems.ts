/**
 * The kinds of problem an answer can be: one table for the API, its description and its pages.
 */

/** A kind of problem. */
export interface ProblemKind {
  /** The last part of its `type`. */
  readonly slug: string;
  readonly title: string;
  /** HTTP status. */
  readonly status: number;
  /** What it means and what to do, for people. */
  readonly meaning: string;
}

export const PROBLEM_KINDS = {
  badInput: {
    slug: 'bad-input',
    title: 'A parameter is not what it should be',
    status: 400,
    meaning:
      'One or more parameters cannot be understood. Each entry of `errors` names the parameter, what it held, and what would be right.',
  },
  unknownName: {
    slug: 'unknown-name',
    title: 'Nothing has this name',
    status: 404,
    meaning: 'No mode, family or instrument is called that. `errors` suggests the nearest names.',
  },
  unknownPath: {
    slug: 'unknown-path',
    title: 'There is nothing at this address',
    status: 404,
    meaning: 'The address is not one of the paths in /v1/openapi.json.',
  },
  wrongMethod: {
    slug: 'wrong-method',
    title: 'This address does not take that method',
    status: 405,
    meaning:
      'Every address answers GET, HEAD and OPTIONS, but for /v1/batch, which takes POST. Nothing is stored, so there is nothing else to send.',
  },
  notAcceptable: {
    slug: 'not-acceptable',
    title: 'The answer cannot be had in that form',
    status: 406,
    meaning:
      'The header Accept allows none of the forms that this address has. `errors` names those that there are.',
  },
  tooMuch: {
    slug: 'too-much',
    title: 'What was sent is too much',
    status: 413,
    meaning: 'The body of a request may hold 128 KB.',
  },
  wrongMedia: {
    slug: 'wrong-media',
    title: 'What was sent is not JSON',
    status: 415,
    meaning: 'The body of a request is read as JSON, and its header Content-Type must say so.',
  },
  cannotBePlayed: {
    slug: 'cannot-be-played',
    title: 'This cannot be played',
    status: 422,
    meaning:
      'The question is understood, but no hand can play the answer, or the file could not hold it. `errors` says what would have to change.',
  },
  tooMany: {
    slug: 'too-many',
    title: 'Too many requests',
    status: 429,
    meaning: 'More was asked from one address than is answered in a minute. Retry-After says when to go on.',
  },
  tooLong: {
    slug: 'too-long',
    title: 'The request is too long',
    status: 431,
    meaning: 'Address and header fields together are longer than the server reads.',
  },
  ourFault: {
    slug: 'our-fault',
    title: 'Something went wrong on our side',
    status: 500,
    meaning: 'The request was understood, and answering it failed. The log has the details.',
  },
  notOffered: {
    slug: 'not-offered',
    title: 'That format is not offered',
    status: 501,
    meaning: 'What other sites need to show a page of this one is had as JSON or as XML.',
  },
} as const satisfies Record<string, ProblemKind>;

export type ProblemName = keyof typeof PROBLEM_KINDS;

/** The address of the page about a kind of problem. */
export function problemType(kind: ProblemKind): string {
  return `/problems/${kind.slug}/`;
}
