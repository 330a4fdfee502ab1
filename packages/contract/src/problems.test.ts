import { describe, expect, test } from 'vitest';
import { PROBLEM_KINDS, type ProblemKind, problemType } from './problems.ts';

const kinds: readonly ProblemKind[] = Object.values(PROBLEM_KINDS);

describe('the table of problems', () => {
  test('has a slug of its own for each kind', () => {
    expect(new Set(kinds.map(({ slug }) => slug)).size).toBe(kinds.length);
    expect(new Set(kinds.map(({ title }) => title)).size).toBe(kinds.length);
  });

  // RFC 9110, sections 15.5 and 15.6: 4xx for what the client should change, 5xx for what the server did.
  test.each(Object.entries(PROBLEM_KINDS))('%s has a status of its side', (name, { status }) => {
    const isOurs = name === 'ourFault' || name === 'notOffered';
    const [from, to] = isOurs ? [500, 599] : [400, 499];
    expect(Number.isInteger(status)).toBe(true);
    expect(status).toBeGreaterThanOrEqual(from);
    expect(status).toBeLessThanOrEqual(to);
  });

  // RFC 9110, sections 15.5.1, 5, 6, 7, 14, 16 and 21, and 15.6.1 and 2; RFC 6585, sections 4 and 5.
  test('has the statuses of the standard', () => {
    const statuses = Object.entries(PROBLEM_KINDS).map(([name, { status }]) => [name, status]);
    expect(Object.fromEntries(statuses)).toEqual({
      badInput: 400,
      unknownName: 404,
      unknownPath: 404,
      wrongMethod: 405,
      notAcceptable: 406,
      tooMuch: 413,
      wrongMedia: 415,
      cannotBePlayed: 422,
      tooMany: 429,
      tooLong: 431,
      ourFault: 500,
      notOffered: 501,
    });
  });

  test.each(kinds)('$slug has a title, and says what it means in whole sentences', ({ title, meaning }) => {
    expect(title).toMatch(/^[A-Z][^.]+$/);
    expect(meaning).toMatch(/^[A-Z].+\.$/);
  });

  // RFC 9457, section 3.1.1: a type is a URI reference, best one that can be opened.
  test.each(kinds)('$slug has a page under /problems/ as its type', (kind) => {
    expect(problemType(kind)).toBe(`/problems/${kind.slug}/`);
    expect(problemType(kind)).toMatch(/^\/problems\/[a-z]+(-[a-z]+)*\/$/);
  });
});
