/**
 * Problems on their way out: RFC 9457 problem details.
 */

import { PROBLEM_KINDS, type ProblemName, problemType } from '@stillroot/contract';
import type { Problem } from '@stillroot/core';

/** Thrown by a handler to answer with a problem. */
export class ProblemReply extends Error {
  override readonly name = 'ProblemReply';
  readonly kind: ProblemName;
  readonly problems: readonly Problem[];

  constructor(kind: ProblemName, problems: readonly Problem[]) {
    super(problems.map(({ field, expected }) => `${field}: expected ${expected}`).join('; '));
    this.kind = kind;
    this.problems = problems;
  }
}

/** The body and status of a problem. */
export function problemBody(
  kind: ProblemName,
  problems: readonly Problem[] = [],
): { status: number; body: string } {
  const { title, status, meaning } = PROBLEM_KINDS[kind];
  const detail = problems
    .map(({ field, value, expected }) => `${field} is "${value}"; expected ${expected}`)
    .join('. ');
  const body = {
    type: problemType(PROBLEM_KINDS[kind]),
    title,
    status,
    detail: detail || meaning,
    errors: problems.map(({ field, value, expected }) => ({ field, value, expected })),
  };
  return { status, body: JSON.stringify(body) };
}

/** The longest part of what was sent that is sent back. */
const LONGEST_VALUE = 60;

/** What was sent, short enough to be sent back. */
export function shortened(value: string): string {
  return value.slice(0, LONGEST_VALUE).toWellFormed();
}

export const PROBLEM_MEDIA_TYPE = 'application/problem+json; charset=utf-8';
