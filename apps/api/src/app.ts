/**
 * The server: the API under /v1 and the built site beside it. Stateless; every handler is parse, ask core,
 * answer.
 */
import { existsSync } from 'node:fs';
import { ENDPOINTS, type EndpointName, openApiDocument } from '@stillroot/contract';
import Fastify, { type FastifyInstance, type FastifyReply } from 'fastify';
import { bindEndpoint } from './endpoint-routes.ts';
import { ProblemReply } from './problem-reply.ts';
import { refuseMalformed, refuseUnknown, sendJson, sendProblem } from './replies.ts';
import { serveSite } from './site.ts';

/** How the server is set up. */
export interface AppOptions {
  /** The folder of the built site; without it only the API answers. */
  readonly siteFolder?: string;
  /** Whether requests are logged. */
  readonly logger?: boolean;
}

/** Builds the server without listening. */
export async function buildApp({ siteFolder, logger = false }: AppOptions = {}): Promise<FastifyInstance> {
  const app = Fastify({
    logger,
    routerOptions: { maxParamLength: 4000, ignoreTrailingSlash: false },
    clientErrorHandler: refuseMalformed,
    frameworkErrors: (_error, _request, reply) => {
      sendProblem(reply as FastifyReply, 'badInput', [
        { field: 'path', value: '', expected: 'an address with valid percent-encoding' },
      ]);
    },
  });
  app.addHook('onSend', async (_request, reply, payload) => {
    reply.header('x-content-type-options', 'nosniff');
    reply.header('access-control-allow-origin', '*');
    return payload;
  });
  app.setErrorHandler((error, request, reply) => {
    if (error instanceof ProblemReply) return sendProblem(reply, error.kind, error.problems);
    request.log.error(error);
    return sendProblem(reply, 'ourFault');
  });
  for (const name of Object.keys(ENDPOINTS) as EndpointName[]) bindEndpoint(app, name);
  const document = JSON.stringify(openApiDocument());
  app.get('/v1/openapi.json', (_request, reply) => sendJson(reply, document));
  if (siteFolder !== undefined && existsSync(siteFolder)) await serveSite(app, siteFolder);
  else app.setNotFoundHandler(refuseUnknown);
  return app;
}
