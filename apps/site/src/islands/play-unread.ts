/**
 * What was chosen for the play-along and cannot be had: as it stood in the address or was typed, and what would
 * be right in its place.
 */
import { fail, NOTE_VALUES, PATTERNS, type Problem, parseMeter, type Result } from '@stillroot/core';
import { PLAY } from '../words/play.ts';
import { problemOf } from '../words/problems.ts';
import {
  BACKINGS,
  LOOPS,
  METRONOMES,
  type PlayChoices,
  playNumbersOf,
  playTexts,
  readPlayChoices,
} from './play-choices.ts';
import { PLAY_KEYS } from './play-keys.ts';

/** Choice by choice what stands there; empty where a browser does not hand it out. */
export type Unread = Readonly<Partial<Record<keyof PlayChoices, string>>>;

/** What in a query is taken as not chosen, since it cannot be had. */
export function unreadIn(query: URLSearchParams): Unread {
  const unread = PLAY_KEYS.flatMap((key) => {
    const text = (query.get(key) ?? '').trim();
    const read = playTexts(readPlayChoices(new URLSearchParams({ [key]: text })))[key];
    return text === '' || text.replaceAll(/\b0+(?=\d)/g, '') === read ? [] : [[key, text] as const];
  });
  return Object.fromEntries(unread);
}

/** What would be right, choice by choice. */
export function problemsOf(unread: Unread): readonly Problem[] {
  return PLAY_KEYS.flatMap((key) => {
    const text = unread[key];
    const result = text === undefined ? undefined : refused(key, text);
    return result === undefined || result.ok ? [] : [result.problem];
  });
}

/** What is still not understood once other choices were made. */
export function unreadBut(unread: Unread, before: PlayChoices, now: PlayChoices): Unread {
  const left = PLAY_KEYS.filter((key) => before[key] === now[key]);
  return Object.fromEntries(left.flatMap((key) => (unread[key] === undefined ? [] : [[key, unread[key]]])));
}

/** Problems away from their fields, in sentences. */
export function namedProblems(problems: readonly Problem[]): string {
  const labels: Readonly<Record<string, string>> = PLAY;
  return problems.map((problem) => problemOf(labels[problem.field], problem)).join(' ');
}

/** Says at the button of a play-along that nobody has woken yet what of the address it cannot have. */
export function tellUnread(query: URLSearchParams): void {
  const status = document.querySelector('play-island:not(:defined) .play-status');
  if (status) status.textContent = namedProblems(problemsOf(unreadIn(query)));
}

function refused(key: keyof PlayChoices, text: string): Result<unknown> {
  const oneOf = (choices: readonly string[]): Result<never> => fail(key, text, { kind: 'one-of', choices });
  switch (key) {
    case 'pattern':
      return oneOf(PATTERNS);
    case 'value':
      return oneOf(NOTE_VALUES);
    case 'backing':
      return oneOf(BACKINGS);
    case 'loop':
      return oneOf(LOOPS);
    case 'metronome':
      return oneOf(METRONOMES);
    case 'meter':
      return parseMeter(text);
    case 'mix':
      return fail(key, text, PLAY.notMix);
    default:
      return fail(key, text, { kind: 'whole-number', ...playNumbersOf(key) });
  }
}
