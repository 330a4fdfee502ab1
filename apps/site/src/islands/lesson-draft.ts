/**
 * The lesson that is being put together on this device, page by page. A convenience: the lesson itself is its
 * link.
 */

const KEY = 'stillroot-lesson';

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
