/**
 * Answers that were made, kept in bounded memory; those that were not asked for the longest go first. An
 * answer is kept when it is asked for a second time: most rounds never are, and would only push out others
 * and be carried about by the garbage collector.
 */
import type { Form } from './address.ts';
import { AskedBefore } from './asked-before.ts';
import { type Prepared, sizeOf } from './prepared.ts';

/** What is kept of an address: its answers in the forms that were asked for. */
export interface Kept {
  /** The name of its endpoint. */
  readonly route: string;
  /** The forms it can be had in, the usual one first. */
  readonly offered: readonly Form[];
  readonly forms: Map<Form, Prepared>;
  /** What it was reckoned to take when last measured. */
  bytes: number;
}

/** Of about how many addresses it is known that they were asked for. */
const ASKED = 4000;

/** Longer addresses are not kept. */
const LONGEST_ADDRESS = 1000;

export class AnswerCache {
  readonly mostBytes: number;
  readonly #kept = new Map<string, Kept>();
  readonly #asked = new AskedBefore(ASKED);
  #bytes = 0;
  #newest: string | undefined;

  constructor(mostBytes: number) {
    this.mostBytes = mostBytes;
  }

  get bytes(): number {
    return this.#bytes;
  }

  get size(): number {
    return this.#kept.size;
  }

  /** What is kept of an address, which is now the last to go. */
  get(url: string): Kept | undefined {
    const kept = this.#kept.get(url);
    if (kept !== undefined && this.#newest !== url) {
      this.#kept.delete(url);
      this.#kept.set(url, kept);
      this.#newest = url;
    }
    return kept;
  }

  /** Keeps an answer that was asked for before, or measures it again after a packed copy of it was made. */
  keep(url: string, route: string, offered: readonly Form[], form: Form, prepared: Prepared): void {
    if (url.length > LONGEST_ADDRESS || sizeOf(prepared) > this.mostBytes / 8) return;
    if (!this.#kept.has(url) && !this.#asked.ask(url)) return;
    const kept = this.#kept.get(url) ?? { route, offered, forms: new Map<Form, Prepared>(), bytes: 0 };
    kept.forms.set(form, prepared);
    let bytes = 2 * url.length;
    for (const one of kept.forms.values()) bytes += sizeOf(one);
    this.#bytes += bytes - kept.bytes;
    kept.bytes = bytes;
    this.#kept.delete(url);
    this.#kept.set(url, kept);
    this.#newest = url;
    for (const [oldest, { bytes: freed }] of this.#kept) {
      if (this.#bytes <= this.mostBytes) break;
      this.#kept.delete(oldest);
      this.#bytes -= freed;
    }
  }
}
