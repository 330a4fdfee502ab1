/**
 * Rate limits: how much one client may ask in a minute. Counted in this process, so that asking is never
 * held up; a count that is shared between processes is told of it and asked for the sum, four times a second.
 */

/** A count that several processes share. */
export interface SharedCount {
  /**
   * Adds what this process counted in a window, and gives the sums of all processes.
   * @throws when it cannot be reached
   */
  add(window: number, counts: ReadonlyMap<string, number>): Promise<ReadonlyMap<string, number>>;
  close(): Promise<void>;
}

/** How a limit is set up. */
export interface RateLimitOptions {
  /** What one client may ask in a minute. */
  readonly perMinute: number;
  readonly shared?: SharedCount;
  /** Told when the shared count is lost and found again. */
  readonly onShared?: (isReached: boolean, error?: unknown) => void;
  /** Milliseconds since any moment. */
  readonly now?: () => number;
}

interface Client {
  /** Counted here, and how much of it the shared count knows. */
  own: number;
  told: number;
  /** Counted by the others, as last heard. */
  elsewhere: number;
}

const WINDOW_MS = 60_000;
const TELL_EVERY_MS = 250;
/** Beyond so many clients in a minute, new ones are counted as one. */
const MOST_CLIENTS = 50_000;
const ALL_OTHERS = 'others';

export class RateLimit {
  readonly #perMinute: number;
  readonly #now: () => number;
  readonly #shared: SharedCount | undefined;
  readonly #onShared: (isReached: boolean, error?: unknown) => void;
  readonly #timer: NodeJS.Timeout | undefined;
  #window = -1;
  #clients = new Map<string, Client>();
  #isReached = true;
  #isTelling = false;

  constructor({ perMinute, shared, onShared = () => {}, now = Date.now }: RateLimitOptions) {
    this.#perMinute = perMinute;
    this.#shared = shared;
    this.#onShared = onShared;
    this.#now = now;
    if (shared) this.#timer = setInterval(() => void this.tell(), TELL_EVERY_MS).unref();
  }

  /** Where requests are counted. */
  get counting(): 'in-memory' | 'shared' | 'shared-lost' {
    if (!this.#shared) return 'in-memory';
    return this.#isReached ? 'shared' : 'shared-lost';
  }

  /** Counts requests of a client; gives the seconds it has to wait, 0 where it may go on. */
  take(key: string, requests = 1): number {
    const now = this.#now();
    this.#turn(now);
    const client = this.#clientOf(key);
    client.own += requests;
    if (client.own + client.elsewhere <= this.#perMinute) return 0;
    return Math.max(1, Math.ceil(((this.#window + 1) * WINDOW_MS - now) / 1000));
  }

  /** Tells the shared count what is new, and hears the sums. */
  async tell(): Promise<void> {
    if (!this.#shared || this.#isTelling) return;
    this.#isTelling = true;
    const window = this.#window;
    const clients = this.#clients;
    // Those that are over the limit by themselves need no sum; those that asked lately do.
    const news = new Map([...clients].map(([key, { own, told }]) => [key, own - told] as const));
    try {
      const sums = news.size === 0 ? new Map<string, number>() : await this.#shared.add(window, news);
      for (const [key, sum] of sums) {
        const client = clients.get(key);
        if (!client) continue;
        client.told += news.get(key) ?? 0;
        client.elsewhere = Math.max(0, sum - client.told);
      }
      this.#reach(true);
    } catch (error) {
      this.#reach(false, error);
    } finally {
      this.#isTelling = false;
    }
  }

  async close(): Promise<void> {
    clearInterval(this.#timer);
    await this.#shared?.close();
  }

  #turn(now: number): void {
    const window = Math.floor(now / WINDOW_MS);
    if (window === this.#window) return;
    this.#window = window;
    this.#clients = new Map();
  }

  #clientOf(key: string): Client {
    const known = this.#clients.get(key);
    if (known) return known;
    const name = this.#clients.size < MOST_CLIENTS ? key : ALL_OTHERS;
    const client = this.#clients.get(name) ?? { own: 0, told: 0, elsewhere: 0 };
    this.#clients.set(name, client);
    return client;
  }

  #reach(isReached: boolean, error?: unknown): void {
    if (isReached === this.#isReached) return;
    this.#isReached = isReached;
    this.#onShared(isReached, error);
  }
}
