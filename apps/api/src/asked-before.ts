/**
 * Whether something was asked before, told from numbers alone: texts that were kept for it would live just
 * long enough to be a burden on the garbage collector. It may err: two texts of one number are taken for
 * one, and what was asked long ago is forgotten.
 */
export class AskedBefore {
  readonly #last: Uint32Array;

  /** @param places about how many different texts ago something may have been asked */
  constructor(places: number) {
    this.#last = new Uint32Array(places);
  }

  /** Whether a text was asked before; from now on it was. */
  ask(text: string): boolean {
    const number = numberOf(text);
    const place = number % this.#last.length;
    const isKnown = this.#last[place] === number;
    this.#last[place] = number;
    return isKnown;
  }
}

/** FNV-1a over UTF-16 code units, 32 bits (Fowler, Noll and Vo; RFC 9923), never 0. */
function numberOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  }
  return hash >>> 0 || 1;
}
