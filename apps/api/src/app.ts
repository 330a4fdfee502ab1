/**
 * The server: the API under /v1 and the built site beside it. Stateless; every handler is parse, ask core,
 * answer.
 */
import { existsSync } from 'node:fs';
import type { RequestListener, Server } from 'node:http';
import type { ProblemName } from '@stillroot/contract';
import Fastify, { type FastifyError, type FastifyInstance, type FastifyReply, LogController } from 'fastify';
import { serveBatch } from './batch.ts';
import { digestSources } from './data-version.ts';
import { Desk, isOfApi } from './desk.ts';
import { API_FIELDS, siteFields } from './header-fields.ts';
import { ProblemReply } from './problem-reply.ts';
import { RateLimit } from './rate-limit.ts';
import { refuseMalformed, refuseUnknown, sendProblem } from './replies.ts';
import { USUAL_KEPT_BYTES } from './settings.ts';
import { serveSite } from './site.ts';

/** How the server is set up. */
export interface AppOptions {
  /** The folder of the built site; without it only the API answers. */
  readonly siteFolder?: string;
  /** From which level on is logged, and where to; nothing where absent. */
  readonly log?: { readonly level: string; readonly stream?: { write(line: string): void } };
  /** What one client may ask in a minute; anything where absent or 0. */
  readonly requestsPerMinute?: number;
  /** Where several processes count together: `redis://host:port`. */
  readonly redisUrl?: string;
  readonly trustedProxies?: number;
  /** How much memory answers are kept in. */
  readonly mostKeptBytes?: number;
  /** Where clients find it; samples in the reference are written for it. */
  readonly origin?: string;
  /** What answers are called the same by; a digest of their sources where absent. */
  readonly dataVersion?: string;
}

/** A server, and what stops it. */
export interface App extends FastifyInstance {
  /** From now on every answer is the last of its connection, and the server is not ready. */
  beginStop(): void;
}

/** Clients that are slower than this are let go. */
const TIMEOUTS = { headersTimeout: 10_000, requestTimeout: 20_000, keepAliveTimeout: 65_000 } as const;
const MOST_HEADER_BYTES = 16 * 1024;

/** Builds the server without listening. */
export async function buildApp(options: AppOptions = {}): Promise<App> {
  const { siteFolder, log } = options;
  const limit = await limitOf(options, (isReached, error) => {
    if (isReached) app.log.info('the shared count is reached again');
    else app.log.error({ error: String(error) }, 'the shared count is lost; each process counts alone');
  });
  const desk = new Desk({
    dataVersion: options.dataVersion ?? digestSources(),
    mostKeptBytes: options.mostKeptBytes ?? USUAL_KEPT_BYTES,
    trustedProxies: options.trustedProxies ?? 0,
    ...(limit && { limit }),
    ...(options.origin !== undefined && { origin: options.origin }),
  });
  const app: FastifyInstance = Fastify({
    logger: log ?? false,
    logController: new LogController({ disableRequestLogging: true }),
    return503OnClosing: false,
    routerOptions: { maxParamLength: 4000, ignoreTrailingSlash: false },
    serverFactory: (handler) => serverOf(desk, handler),
    clientErrorHandler: refuseMalformed,
    frameworkErrors: (_error, _request, reply) => {
      sendProblem(reply as FastifyReply, 'badInput', [
        { field: 'path', value: '', expected: 'an address with valid percent-encoding' },
      ]);
    },
  });
  if (log) desk.log = app.log;
  app.addHook('onSend', async (request, reply, payload) => {
    if (isOfApi(request.url)) {
      for (let at = 0; at < API_FIELDS.length; at += 2)
        reply.header(API_FIELDS[at] as string, API_FIELDS[at + 1]);
    } else {
      reply.headers(siteFields(request.url));
    }
    if (desk.isStopping) reply.header('connection', 'close');
    return payload;
  });
  app.addHook('onClose', () => limit?.close());
  app.setErrorHandler<FastifyError>((error, request, reply) => {
    if (error instanceof ProblemReply) return sendProblem(reply, error.kind, error.problems);
    const kind = KINDS_OF_STATUS.get(error.statusCode ?? 500);
    if (kind && isOfApi(request.url)) {
      return sendProblem(reply, kind, [{ field: 'body', value: '', expected: expectedBody(error) }]);
    }
    // An address of the site that no file can have.
    if ((error.statusCode ?? 500) < 500 || error.code === 'ERR_INVALID_ARG_VALUE')
      return refuseUnknown(request, reply);
    request.log.error(error);
    return sendProblem(reply, 'ourFault');
  });
  // Fastify reads plain text by itself; a batch is JSON.
  app.removeContentTypeParser('text/plain');
  serveBatch(app, desk);
  if (siteFolder !== undefined && existsSync(siteFolder)) await serveSite(app, siteFolder);
  else app.setNotFoundHandler(refuseUnknown);
  return Object.assign(app, {
    beginStop: () => {
      desk.isStopping = true;
    },
  });
}

const KINDS_OF_STATUS: ReadonlyMap<number, ProblemName> = new Map([
  [400, 'badInput'],
  [413, 'tooMuch'],
  [415, 'wrongMedia'],
]);

function expectedBody({ message }: FastifyError): string {
  return `{"paths": [1 to 50 addresses below /v1/]} as application/json: ${message}`;
}

async function limitOf(
  { requestsPerMinute = 0, redisUrl }: AppOptions,
  onShared: (isReached: boolean, error?: unknown) => void,
): Promise<RateLimit | undefined> {
  if (requestsPerMinute === 0) return undefined;
  if (redisUrl === undefined) return new RateLimit({ perMinute: requestsPerMinute });
  // Only those who share a count load the client for it.
  const { countInRedis } = await import('./shared-count.ts');
  return new RateLimit({ perMinute: requestsPerMinute, shared: countInRedis(redisUrl), onShared });
}

function serverOf(desk: Desk, handler: RequestListener): Server {
  // An import of this module would touch all that it holds, and load a client with its web sockets.
  return process
    .getBuiltinModule('node:http')
    .createServer(
      { maxHeaderSize: MOST_HEADER_BYTES, connectionsCheckingInterval: 2000, ...TIMEOUTS },
      (request, response) => {
        if (!desk.receive(request, response)) handler(request as never, response as never);
      },
    );
}
