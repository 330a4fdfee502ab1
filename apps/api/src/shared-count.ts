/**
 * A count in Redis or Valkey, shared by all processes that are given its address.
 */
import { createClient } from '@redis/client';
import type { SharedCount } from './rate-limit.ts';

/** A window is a minute; a count outlives it by another. */
const EXPIRES_S = 120;
/** Longer than any answer of a count nearby. */
const PATIENCE_MS = 1000;
const RECONNECT_MS = 500;

/** Connects to `redis://host:port`; what cannot be reached now is tried again and again. */
export function countInRedis(url: string): SharedCount {
  const client = createClient({
    url,
    disableOfflineQueue: true,
    socket: { connectTimeout: PATIENCE_MS, reconnectStrategy: () => RECONNECT_MS },
  });
  // Every failure shows in the next `add`; without a listener it would end the process.
  client.on('error', () => {});
  const connecting = client.connect().catch(() => undefined);
  return {
    async add(window, counts) {
      if (!client.isReady) throw new Error(`${url} cannot be reached`);
      const keys = [...counts.keys()];
      const batch = client.multi();
      for (const key of keys) {
        const name = `stillroot:asked:${window}:${key}`;
        batch.incrBy(name, counts.get(key) ?? 0).expire(name, EXPIRES_S);
      }
      const replies = await within(PATIENCE_MS, batch.exec());
      return new Map(keys.map((key, at) => [key, Number(replies[2 * at])]));
    },
    async close() {
      client.destroy();
      await connecting;
    },
  };
}

async function within<T>(ms: number, work: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const tooLong = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`no answer within ${ms} ms`)), ms);
  });
  try {
    return await Promise.race([work, tooLong]);
  } finally {
    clearTimeout(timer);
  }
}
