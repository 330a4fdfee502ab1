/**
 * Choices remembered on this device, for a reader who comes back by a plain address. A convenience only:
 * where storage is missing, full or spoilt, nothing is remembered.
 */
import { readChoices, writeChoices } from './choices.ts';

const KEY = 'stillroot-choices';

/** The choices of last time, as a query; empty where there are none. */
export function recall(): URLSearchParams {
  try {
    return writeChoices(readChoices(new URLSearchParams(localStorage.getItem(KEY) ?? '')));
  } catch {
    return new URLSearchParams();
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
