/**
 * Many answers at once: `POST /v1/batch` with up to 50 addresses.
 */
import { answers } from '@stillroot/contract';
import type { FastifyInstance } from 'fastify';
import type { Desk } from './desk.ts';
import { makeProblem } from './make-answer.ts';
import { bytesOf, type Prepared } from './prepared.ts';
import { ProblemReply, shortened } from './problem-reply.ts';

const MOST_BODY_BYTES = 128 * 1024;

/** Adds the address to a server. */
export function serveBatch(app: FastifyInstance, desk: Desk): void {
  app.post('/v1/batch', { bodyLimit: MOST_BODY_BYTES }, (request, reply) => {
    const paths = pathsOf(request.body);
    const refused = desk.refuseTooMany(request.raw, paths.length);
    if (refused) {
      const { fields } = refused.identity;
      for (let at = 0; at < fields.length; at += 2) reply.header(fields[at] as string, fields[at + 1]);
      return reply.code(refused.status).send(bytesOf(refused.identity));
    }
    const parts = paths.map((path, at) => partOf(path, answerTo(desk, path, at)));
    return reply
      .header('cache-control', 'no-store')
      .header('data-version', desk.dataVersion)
      .type('application/json; charset=utf-8')
      .send(`{"answers":[${parts.join(',')}]}`);
  });
}

function pathsOf(body: unknown): readonly string[] {
  const read = answers.BatchRequest.safeParse(body);
  if (!read.success) {
    throw new ProblemReply(
      'badInput',
      read.error.issues.slice(0, 20).map(({ path }) => ({
        field:
          path.length === 0
            ? 'body'
            : path.reduce<string>((at, key) => at + (typeof key === 'number' ? `[${key}]` : String(key)), ''),
        value: shownAt(body, path),
        expected: '{"paths": [1 to 50 addresses below /v1/]}',
      })),
    );
  }
  return read.data.paths;
}

/** The answer to one address; the others have theirs, whatever is wrong with it. */
function answerTo(desk: Desk, path: string, at: number): Prepared {
  if (path.startsWith('/v1/')) return desk.answerTo(path).prepared;
  const problem = { field: `paths[${at}]`, value: shortened(path), expected: 'an address below /v1/' };
  return makeProblem(new ProblemReply('unknownPath', [problem]));
}

/** What stands at a place of the body, short enough to be sent back; nothing where nothing does. */
function shownAt(body: unknown, path: readonly PropertyKey[]): string {
  const value = path.reduce<unknown>(
    (at, key) => (at as Record<PropertyKey, unknown> | undefined)?.[key],
    body,
  );
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  return value === undefined ? '' : shortened(String(value));
}

/** One answer as JSON; a body that is JSON already is put in as it is. */
function partOf(path: string, { status, identity }: Prepared): string {
  const type = identity.fields[identity.fields.indexOf('Content-Type') + 1] ?? '';
  const head = `"path":${JSON.stringify(path)},"status":${status},"type":${JSON.stringify(type)}`;
  const bytes = bytesOf(identity);
  if (type.includes('json')) return `{${head},"body":${bytes.toString()}}`;
  const text = bytes.toString(type === 'audio/midi' ? 'base64' : 'utf8');
  return `{${head},"body":${JSON.stringify(text)}}`;
}
