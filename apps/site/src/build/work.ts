/**
 * The work that builders share. Each piece goes to the builder that asks for it first, so that all of them
 * end together, however fast each is.
 */
import type { ChildProcess } from 'node:child_process';

/** What a builder says: which piece it would do, and at last which files it wrote. */
type Said = { readonly asks: string } | { readonly wrote: readonly string[] };

/** What a builder is told of a piece that it asked for. */
interface Answer {
  readonly piece: string;
  readonly isYours: boolean;
}

/**
 * Hands out each piece once; resolves to the files that all builders wrote. Where one fails, the others are
 * ended too.
 */
export async function handOut(builders: readonly ChildProcess[]): Promise<ReadonlySet<string>> {
  const given = new Set<string>();
  try {
    return new Set((await Promise.all(builders.map((builder) => workWith(builder, given)))).flat());
  } catch (error) {
    for (const builder of builders) builder.kill();
    throw error;
  }
}

/** Answers a builder until it has done its work; resolves to the files that it wrote. */
function workWith(builder: ChildProcess, given: Set<string>): Promise<readonly string[]> {
  return new Promise((resolve, reject) => {
    builder.on('message', (said: Said) => {
      if ('wrote' in said) return resolve(said.wrote);
      const answer: Answer = { piece: said.asks, isYours: !given.has(said.asks) };
      given.add(said.asks);
      builder.send(answer);
    });
    builder.on('error', reject);
    builder.on('disconnect', () => reject(new Error('A builder ended before its work was done')));
  });
}

const asked = new Map<string, Promise<boolean>>();
const waiting = new Map<string, (isYours: boolean) => void>();

/** In a builder: asks for a piece of work; resolves to whether it is this builder's. */
export function askFor(piece: string): Promise<boolean> {
  const known = asked.get(piece);
  if (known) return known;
  if (asked.size === 0) process.on('message', ({ piece, isYours }: Answer) => waiting.get(piece)?.(isYours));
  const answer = new Promise<boolean>((resolve) => {
    waiting.set(piece, resolve);
  });
  asked.set(piece, answer);
  say({ asks: piece });
  return answer;
}

/** In a builder: ends its work, and tells which files it wrote. */
export function endWork(wrote: readonly string[]): void {
  say({ wrote }, () => process.disconnect());
}

function say(said: Said, onSaid?: () => void): void {
  process.send?.(said, undefined, undefined, onSaid);
}
