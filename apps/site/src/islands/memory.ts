/**
 * Choices remembered on this device, for a reader who comes back by a plain address. A convenience only:
 * where storage is missing, full or spoilt, nothing is remembered.
 */
import { keep, readKept } from './storage.ts';

const KEY = 'stillroot-choices';
const FIELD_KEY = 'stillroot-field';

/** The choices of last time, as a query, to be read like any other; empty where there are none. */
export function recall(): URLSearchParams {
  return new URLSearchParams(readKept('localStorage', KEY));
}

/** Keeps choices for next time. */
export function remember(query: URLSearchParams): void {
  keep('localStorage', KEY, query.toString());
}

/** The field in which the choice was made that led here; empty where none was. */
export function fieldLeft(): string {
  return readKept('sessionStorage', FIELD_KEY);
}

/**
 * Keeps the field in which a choice was made that leads to another page, until that page has gone on from there;
 * an empty name forgets it.
 */
export function leaveField(name: string): void {
  keep('sessionStorage', FIELD_KEY, name);
}
