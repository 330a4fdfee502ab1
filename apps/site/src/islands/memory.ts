/**
 * Choices remembered on this device, for a reader who comes back by a plain address. A convenience only:
 * where storage is missing, full or spoilt, nothing is remembered.
 */
import { readChoices, writeChoices } from './choices.ts';

const KEY = 'stillroot-choices';
const FIELD_KEY = 'stillroot-field';

/** The choices of last time, as a query; empty where there are none. */
export function recall(): URLSearchParams {
  try {
    return writeChoices(readChoices(new URLSearchParams(localStorage.getItem(KEY) ?? '')));
  } catch {
    return new URLSearchParams();
  }
}

/** Keeps the field in which a choice was made that leads to another page, until that page has gone on from there. */
export function leaveField(name: string | undefined): void {
  try {
    if (name === undefined) sessionStorage.removeItem(FIELD_KEY);
    else sessionStorage.setItem(FIELD_KEY, name);
  } catch {
    // The next page begins with its chooser folded.
  }
}

/** The field in which the choice was made that led here; undefined where none was. */
export function fieldLeft(): string | undefined {
  try {
    return sessionStorage.getItem(FIELD_KEY) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps choices for next time. */
export function remember(query: URLSearchParams): void {
  try {
    if (query.size === 0) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, query.toString());
  } catch {
    // A reader without storage loses nothing but the convenience.
  }
}
