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

/** Refuses an address that is not there, or a method that is not read. */
export function refuseUnknown(request: FastifyRequest, reply: FastifyReply): FastifyReply {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    reply.header('allow', 'GET, HEAD, OPTIONS');
    return sendProblem(reply, 'wrongMethod');
  }
  return sendProblem(reply, 'unknownPath', [
    { field: 'path', value: shortened(request.url), expected: 'a path of /v1/openapi.json' },
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
    `HTTP/1.1 ${status} ${reason}\r\nContent-Type: ${PROBLEM_MEDIA_TYPE}\r\nContent-Length: ${Buffer.byteLength(body)}\r\nConnection: close\r\n\r\n${body}`,
  );
}
