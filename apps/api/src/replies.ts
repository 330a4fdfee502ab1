/**
 * Replies that are problems, of every kind.
 */
import type { Socket } from 'node:net';
import type { ProblemName } from '@stillroot/contract';
import type { Problem } from '@stillroot/core';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { PROBLEM_MEDIA_TYPE, problemBody, shortened } from './problem-reply.ts';

/** Sends a problem. */
export function sendProblem(
  reply: FastifyReply,
  kind: ProblemName,
  problems: readonly Problem[] = [],
): FastifyReply {
  const { status, body } = problemBody(kind, problems);
  return reply.code(status).type(PROBLEM_MEDIA_TYPE).send(body);
}

/** What an unknown address should have been. */
export const KNOWN_PATH =
  'an address of /v1/openapi.json (/v1/docs shows them), or another form of one, such as /v1/rounds/major/A.svg';

/** The methods that an address takes, as `Allow` has them. */
export function methodsOf(url: string): string {
  return url.split('?')[0] === '/v1/batch' ? 'POST, OPTIONS' : 'GET, HEAD, OPTIONS';
}

/** The problem of a method that an address does not take. */
export function wrongMethod(method: string, url: string): Problem {
  return { field: 'method', value: shortened(method), expected: `one of ${methodsOf(url)}` };
}

/** Refuses an address that is not there, or a method that is not read. */
export function refuseUnknown(request: FastifyRequest, reply: FastifyReply): FastifyReply {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    reply.header('allow', methodsOf(request.url));
    return sendProblem(reply, 'wrongMethod', [wrongMethod(request.method, request.url)]);
  }
  return sendProblem(reply, 'unknownPath', [
    { field: 'path', value: shortened(request.url), expected: KNOWN_PATH },
  ]);
}

/** Requests that never become one: too long, or not HTTP. */
export function refuseMalformed(error: NodeJS.ErrnoException, socket: Socket): void {
  if (!socket.writable) return;
  const isTooLong = error.code === 'HPE_HEADER_OVERFLOW';
  const { status, body } = problemBody(isTooLong ? 'tooLong' : 'badInput', [
    {
      field: 'request',
      value: '',
      expected: isTooLong ? 'an address and headers of less than 16 KB' : 'an HTTP/1.1 request',
    },
  ]);
  const reason = isTooLong ? 'Request Header Fields Too Large' : 'Bad Request';
  socket.end(
    `HTTP/1.1 ${status} ${reason}\r\nContent-Type: ${PROBLEM_MEDIA_TYPE}\r\nContent-Length: ${Buffer.byteLength(body)}\r\nAccess-Control-Allow-Origin: *\r\nConnection: close\r\n\r\n${body}`,
  );
}
