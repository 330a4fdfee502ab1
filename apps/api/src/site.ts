/**
 * The built site, served beside the API.
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import { findFamily } from '@stillroot/catalog';
import { parseRoot } from '@stillroot/core';
import type { FastifyInstance } from 'fastify';
import { refuseUnknown } from './replies.ts';

/**
 * Serves a folder of pages; what is in none of them gets the site's own 404 page. The home page's form
 * comes to `/rounds/` where there is no JavaScript, and is sent on to the page of its round.
 */
export async function serveSite(app: FastifyInstance, siteFolder: string): Promise<void> {
  const notFoundPage = await readFile(join(siteFolder, '404.html'), 'utf8').catch(() => undefined);
  app.get('/rounds/', (request, reply) => {
    const target = roundAddress(request.query as Record<string, unknown>);
    return target === undefined ? reply.sendFile('rounds/index.html') : reply.redirect(target, 303);
  });
  await app.register(fastifyStatic, { root: siteFolder, redirect: true, cacheControl: true, maxAge: '1h' });
  app.setNotFoundHandler((request, reply) => {
    const isPage = !request.url.startsWith('/v1') && request.method === 'GET';
    if (!isPage || notFoundPage === undefined) return refuseUnknown(request, reply);
    return reply.code(404).type('text/html; charset=utf-8').send(notFoundPage);
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
