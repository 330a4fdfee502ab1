/**
 * What a browser keeps of a text: on this device, or for this tab alone. Where it keeps nothing, since storage
 * is missing, full or forbidden, a reader loses a convenience and no more.
 */

/** On this device, or for this tab alone. */
export type Keeper = 'localStorage' | 'sessionStorage';

/** A text that was kept; empty where there is none. */
export function readKept(keeper: Keeper, key: string): string {
  try {
    return globalThis[keeper].getItem(key) ?? '';
  } catch {
    return '';
  }
}

/** Keeps a text; an empty one is forgotten. */
export function keep(keeper: Keeper, key: string, text: string): void {
  try {
    if (text === '') globalThis[keeper].removeItem(key);
    else globalThis[keeper].setItem(key, text);
  } catch {
    // Nothing is kept: see above.
  }
}
