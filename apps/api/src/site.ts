/**
 * The built site, served beside the API.
 */
import { readFile } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { constants } from 'node:zlib';
import fastifyCompress from '@fastify/compress';
import fastifyStatic from '@fastify/static';
import { findFamily } from '@stillroot/catalog';
import { parseRoot } from '@stillroot/core';
import type { FastifyInstance } from 'fastify';
import { serveOembed } from './oembed.ts';
import { refuseUnknown } from './replies.ts';

/** The folders of the languages: English has the whole site. */
const EDITIONS = ['', 'de', 'es'] as const;

/** Files whose names change with what is in them. */
const NAMED_BY_CONTENT = `${sep}_astro${sep}`;

/**
 * Serves a folder of pages, packed for those who take it so; what is in none of them gets the site's own 404
 * page in its language. The home page's form comes to `/rounds/` where there is no JavaScript, and is sent on
 * to the page of its round.
 */
export async function serveSite(app: FastifyInstance, siteFolder: string): Promise<void> {
  const lostPages = new Map<string, string>();
  for (const edition of EDITIONS) {
    const page = await readFile(join(siteFolder, edition, '404.html'), 'utf8').catch(() => undefined);
    if (page !== undefined) lostPages.set(edition, page);
    const path = edition === '' ? 'rounds/' : `${edition}/rounds/`;
    app.get(`/${path}`, (request, reply) => {
      const target = roundAddress(request.query as Record<string, unknown>);
      return target === undefined ? reply.sendFile(`${path}index.html`) : reply.redirect(target, 303);
    });
  }
  serveOembed(app);
  await app.register(fastifyCompress, {
    encodings: ['br', 'gzip'],
    brotliOptions: { params: { [constants.BROTLI_PARAM_QUALITY]: 6 } },
  });
  await app.register(fastifyStatic, {
    root: siteFolder,
    redirect: true,
    cacheControl: false,
    setHeaders: (reply, path) => {
      const age = path.includes(NAMED_BY_CONTENT) ? 'max-age=31536000, immutable' : 'max-age=3600';
      reply.header('cache-control', `public, ${age}`);
    },
  });
  app.setNotFoundHandler((request, reply) => {
    const isPage = !request.url.startsWith('/v1') && request.method === 'GET';
    const lost = lostPages.get(/^\/(de|es)\//.exec(request.url)?.[1] ?? '') ?? lostPages.get('');
    if (!isPage || lost === undefined) return refuseUnknown(request, reply);
    return reply.code(404).type('text/html; charset=utf-8').send(lost);
  });
}

/** The page of the round that a form asks for, its other choices kept in the query. */
function roundAddress(query: Record<string, unknown>): string | undefined {
  const { family, root, ...choices } = query;
  const entry = typeof family === 'string' ? findFamily(family) : undefined;
  const parsed = typeof root === 'string' ? parseRoot(root) : undefined;
  if (!entry || !parsed?.ok) return undefined;
  const kept = Object.entries(choices).filter(
    (choice): choice is [string, string] => typeof choice[1] === 'string' && choice[1] !== '',
  );
  const search = new URLSearchParams(kept).toString();
  return `/rounds/${entry.slug}/${parsed.value.slug}/${search === '' ? '' : `?${search}`}`;
}
