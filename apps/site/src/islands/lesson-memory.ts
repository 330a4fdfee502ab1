/**
 * The lesson that is being put together on this device, page by page, and the one that is gone through in this
 * tab. Conveniences: the lesson itself is its link.
 */

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
  try {
    return localStorage.getItem(KEY) ?? '';
  } catch {
    return '';
  }
}

/** Keeps the lesson for the next page. */
export function keepDraft(text: string): void {
  try {
    if (text === '') localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, text);
  } catch {
    // Without storage every page begins a lesson of its own.
  }
}

/** The lesson that is gone through in this tab; undefined where there is none. */
export function readWalk(): Walk | undefined {
  try {
    const [, at, lesson] = /^(\d{1,3}) (.+)$/s.exec(sessionStorage.getItem(WALK_KEY) ?? '') ?? [];
    return lesson === undefined ? undefined : { lesson, at: Number(at) };
  } catch {
    return undefined;
  }
}

/** Keeps the way through a lesson for the page that is opened next; ends it where there is none. */
export function keepWalk(walk: Walk | undefined): void {
  try {
    if (walk) sessionStorage.setItem(WALK_KEY, `${walk.at} ${walk.lesson}`);
    else sessionStorage.removeItem(WALK_KEY);
  } catch {
    // Without storage the reader goes back to the lesson for each page.
  }
}
