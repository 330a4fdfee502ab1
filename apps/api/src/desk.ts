/**
 * The desk: answers what is read of the API, at once where the answer is kept, before any framework is
 * asked. Everything else is left to the server behind it.
 */
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { FastifyBaseLogger } from 'fastify';
import { type Address, type Form, readAddress } from './address.ts';
import { AnswerCache } from './answer-cache.ts';
import type { ServerState } from './handlers.ts';
import { PREFLIGHT_FIELDS } from './header-fields.ts';
import { makeAnswer, makeProblem, notAcceptable, offeredBy } from './make-answer.ts';
import { Metrics } from './metrics.ts';
import { codingOf, formOf } from './negotiation.ts';
import { isUnchanged, type Packed, type Prepared, pack } from './prepared.ts';
import { ProblemReply } from './problem-reply.ts';
import type { RateLimit } from './rate-limit.ts';
import { methodsOf } from './replies.ts';
import { requestId } from './request-id.ts';
import { documentAt } from './service-documents.ts';

/** How a desk is set up. */
export interface DeskOptions {
  readonly dataVersion: string;
  readonly mostKeptBytes: number;
  readonly limit?: RateLimit;
  /** How many proxies stand in front, whose `X-Forwarded-For` is believed. */
  readonly trustedProxies: number;
  /** Where clients find the server. */
  readonly origin?: string;
}

/** Something that is to be sent, and the endpoint it is of. */
interface Found {
  readonly route: string;
  readonly prepared: Prepared;
}

/** The levels at which every request is logged. */
const REQUESTS_ARE_LOGGED: ReadonlySet<string> = new Set(['trace', 'debug', 'info']);

export class Desk {
  readonly cache: AnswerCache;
  readonly metrics = new Metrics();
  readonly dataVersion: string;
  readonly origin: string | undefined;
  readonly #limit: RateLimit | undefined;
  readonly #trustedProxies: number;
  isStopping = false;
  /** Where requests are logged; nowhere where absent. */
  log: FastifyBaseLogger | undefined;

  constructor({ dataVersion, mostKeptBytes, limit, trustedProxies, origin }: DeskOptions) {
    this.cache = new AnswerCache(mostKeptBytes);
    this.dataVersion = dataVersion;
    this.origin = origin;
    this.#limit = limit;
    this.#trustedProxies = trustedProxies;
  }

  get state(): ServerState {
    const { dataVersion, isStopping } = this;
    return { dataVersion, isStopping, counting: this.#limit?.counting ?? 'off' };
  }

  /** Answers a request, or leaves it to others and says so; those are logged and counted here, too. */
  receive(request: IncomingMessage, response: ServerResponse): boolean {
    const begun = performance.now();
    const { method, url = '/' } = request;
    const id = requestId(request.headers['x-request-id']);
    if (!isOfApi(url) || (method !== 'GET' && method !== 'HEAD' && method !== 'OPTIONS')) {
      response.setHeader('X-Request-Id', id);
      const route = isOfApi(url) ? 'other' : 'site';
      response.once('close', () => this.#note(request, response, route, begun, id));
      return false;
    }
    if (method === 'OPTIONS') {
      this.#preflight(url, response, id);
      this.#note(request, response, 'options', begun, id);
      return true;
    }
    const { route, prepared } = this.#findFor(request, url);
    const coding = prepared.isPackable ? codingOf(request.headers['accept-encoding']) : 'identity';
    const packed = coding === 'identity' ? prepared.identity : prepared[coding];
    if (packed) {
      this.#send(request, response, prepared, packed, id);
      this.#note(request, response, route, begun, id);
      return true;
    }
    pack(prepared, coding as 'br' | 'gzip')
      .catch(() => prepared.identity)
      .then((made) => {
        this.#send(request, response, prepared, made, id);
        this.#note(request, response, route, begun, id);
      });
    return true;
  }

  /** The answer to an address, kept or made; a problem where it cannot be answered. */
  answerTo(url: string, accept?: string): Found {
    const kept = this.cache.get(url);
    if (kept) {
      const form = formOf(accept, kept.offered);
      const prepared = form === null ? undefined : kept.forms.get(form);
      if (prepared) {
        this.metrics.hit();
        return { route: kept.route, prepared };
      }
    }
    let address: Address | undefined;
    try {
      address = readAddress(url);
      return { route: address.name, prepared: this.#make(address, url, accept) };
    } catch (error) {
      const problem = error instanceof ProblemReply ? error : new ProblemReply('ourFault', []);
      if (problem !== error) this.log?.error(error);
      return { route: address?.name ?? 'none', prepared: makeProblem(problem) };
    }
  }

  /** A problem for a client that asked too much; undefined where it may go on. */
  refuseTooMany(request: IncomingMessage, requests = 1): Prepared | undefined {
    const wait = this.#limit?.take(clientOf(request, this.#trustedProxies), requests) ?? 0;
    if (wait === 0) return undefined;
    const expected = `fewer requests; the next one in ${wait} seconds`;
    const problem = new ProblemReply('tooMany', [{ field: 'request', value: '', expected }]);
    return makeProblem(problem, ['Retry-After', String(wait)]);
  }

  #findFor(request: IncomingMessage, url: string): Found {
    const { accept } = request.headers;
    if (url.startsWith('/v1') && this.#limit) {
      const refused = this.refuseTooMany(request);
      if (refused) return { route: 'too-many', prepared: refused };
    }
    const document = documentAt(url, accept, this);
    if (document) return { route: 'service', prepared: document };
    return this.answerTo(url, accept);
  }

  #make(address: Address, url: string, accept: string | undefined): Prepared {
    const offered: readonly Form[] = offeredBy(address);
    const form = formOf(accept, offered);
    if (form === null) throw notAcceptable(accept ?? '', offered);
    const prepared = makeAnswer(address, form, this.state);
    if (!address.endpoint.isLive) this.cache.keep(url, address.name, offered, form, prepared);
    return prepared;
  }

  #send(
    request: IncomingMessage,
    response: ServerResponse,
    prepared: Prepared,
    { fields, body }: Packed,
    id: string,
  ): void {
    if (response.destroyed) return;
    const own = this.isStopping ? ['X-Request-Id', id, 'Connection', 'close'] : ['X-Request-Id', id];
    const unchanged = request.headers['if-none-match'];
    if (unchanged !== undefined && prepared.status === 200 && isUnchanged(unchanged, prepared.etag)) {
      const at = fields.indexOf('ETag');
      response.writeHead(304, [...prepared.kept, 'ETag', fields[at + 1] as string, ...own]).end();
      return;
    }
    response.writeHead(prepared.status, fields.concat(own));
    if (request.method === 'HEAD') response.end();
    else if (typeof body === 'string') response.end(body, 'latin1');
    else response.end(body);
  }

  #preflight(url: string, response: ServerResponse, id: string): void {
    response.writeHead(204, {
      allow: methodsOf(url),
      'access-control-allow-origin': '*',
      'cache-control': 'public, max-age=86400',
      'x-request-id': id,
      ...PREFLIGHT_FIELDS,
    });
    response.end();
  }

  #note(request: IncomingMessage, response: ServerResponse, route: string, begun: number, id: string): void {
    const took = performance.now() - begun;
    this.metrics.record(route, response.statusCode, took / 1000);
    if (!this.log || !REQUESTS_ARE_LOGGED.has(this.log.level)) return;
    const { method, url } = request;
    this.log.info({ id, method, url, route, status: response.statusCode, ms: Number(took.toFixed(3)) });
  }
}

/** Whether an address is of the API rather than of the site. */
export function isOfApi(url: string): boolean {
  return /^\/(v1|health|ready|metrics)(?=[/?]|$)/.test(url);
}

/** Whom a request is from, as far as the proxies in front can be believed. */
function clientOf({ headers, socket }: IncomingMessage, trustedProxies: number): string {
  const direct = socket.remoteAddress ?? 'unknown';
  const forwarded = headers['x-forwarded-for'];
  if (trustedProxies === 0 || typeof forwarded !== 'string') return direct;
  const hops = forwarded.split(',').map((hop) => hop.trim());
  return (hops.at(-trustedProxies) ?? direct).slice(0, 64);
}
