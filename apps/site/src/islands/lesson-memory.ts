/**
 * The lesson that is being put together on this device, page by page, and the one that is gone through in this
 * tab. Conveniences: the lesson itself is its link.
 */
import { keep, readKept } from './storage.ts';

const KEY = 'stillroot-lesson';
const WALK_KEY = 'stillroot-walk';

/** A lesson that is gone through, as its link has it, and the page that was opened last. */
export interface Walk {
  readonly lesson: string;
  /** From 0. */
  readonly at: number;
}

/** The lesson that was begun, as its link has it; empty where there is none. */
export function readDraft(): string {
  return readKept('localStorage', KEY);
}

/** Keeps the lesson for the next page; without storage every page begins one of its own. */
export function keepDraft(text: string): void {
  keep('localStorage', KEY, text);
}

/** The lesson that is gone through in this tab; undefined where there is none. */
export function readWalk(): Walk | undefined {
  const [, at, lesson] = /^(\d{1,3}) (.+)$/s.exec(readKept('sessionStorage', WALK_KEY)) ?? [];
  return lesson === undefined ? undefined : { lesson, at: Number(at) };
}

/** Keeps the way through a lesson for the page that is opened next; ends it where there is none. */
export function keepWalk(walk: Walk | undefined): void {
  keep('sessionStorage', WALK_KEY, walk ? `${walk.at} ${walk.lesson}` : '');
}
