/**
 * What another site needs to show a round or a scale of this one within a page of its own: oEmbed
 * (oembed.com, version 1.0).
 */
import { findFamily, findInstrument, findMode } from '@stillroot/catalog';
import { EVERYDAY_ROOTS, toSigns } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { ProblemReply, shortened } from './problem-reply.ts';
import { refusal } from './resolve.ts';

/** As wide and as high as a frame is unless less is asked for: a page that is read, with the first necks in sight. */
const FRAME = { widthPx: 960, heightPx: 640 } as const;

const TYPES = {
  json: 'application/json; charset=utf-8',
  xml: 'text/xml; charset=utf-8',
} as const;

/** Adds the address to a server that has the pages. */
export function serveOembed(app: FastifyInstance): void {
  app.get('/oembed', (request, reply) => {
    const query = new URL(request.url, 'http://localhost').searchParams;
    const format = formatIn(query);
    const answer = oembedOf(request, query);
    return reply
      .header('access-control-allow-origin', '*')
      .header('cache-control', 'public, max-age=3600')
      .type(TYPES[format])
      .send(format === 'json' ? JSON.stringify(answer) : asXml(answer));
  });
}

type Oembed = Readonly<Record<string, string | number>>;

function oembedOf(request: FastifyRequest, query: URLSearchParams): Oembed {
  const text = query.get('url') ?? '';
  const shown = URL.canParse(text) ? pageAt(new URL(text), request.host) : undefined;
  if (!shown) {
    const expected = `the address of a round or of a scale of this site, such as ${request.protocol}://${request.host}/rounds/harmonic-minor/a/`;
    const problem = { field: 'url', value: shortened(text), expected };
    throw new ProblemReply(text === '' ? 'badInput' : 'unknownPath', [problem]);
  }
  const width = sizeIn(query, 'maxwidth', FRAME.widthPx);
  const height = sizeIn(query, 'maxheight', FRAME.heightPx);
  const { origin } = new URL(text);
  const [source, title] = [origin + shown.path, shown.title].map(escapeXml);
  return {
    type: 'rich',
    version: '1.0',
    title: shown.title,
    provider_name: 'Stillroot',
    provider_url: `${origin}/`,
    cache_age: 3600,
    html: `<iframe src="${source}" title="${title}" width="${width}" height="${height}" loading="lazy"></iframe>`,
    width,
    height,
  };
}

/** The frame of a page of this site, with everything that is chosen in its address. */
function pageAt({ host, pathname, searchParams }: URL, ownHost: string) {
  if (host !== ownHost) return undefined;
  const [, room, slug = '', rootSlug] = /^\/(rounds|modes)\/([^/]+)\/([^/]+)\/?$/.exec(pathname) ?? [];
  const root = EVERYDAY_ROOTS.find((one) => one.slug === rootSlug);
  const entry = room === 'rounds' ? findFamily(slug) : findMode(slug);
  if (!root || entry?.slug !== slug) return undefined;
  const [kind, own] = room === 'rounds' ? ['round', 'family'] : ['scale', 'mode'];
  const chosen = new URLSearchParams([[own, slug] as [string, string], ['root', root.slug], ...searchParams]);
  const name = kind === 'round' ? `Round of ${entry.name} from ${root.name}` : `${root.name} ${entry.name}`;
  return { path: `/embed/${kind}/?${chosen}`, title: toSigns(name) + instrumentIn(searchParams) };
}

function instrumentIn(chosen: URLSearchParams): string {
  const instrument = findInstrument(chosen.get('instrument') ?? '');
  return instrument ? `, ${instrument.name}` : '';
}

function formatIn(query: URLSearchParams): keyof typeof TYPES {
  const format = query.get('format') ?? 'json';
  if (format === 'json' || format === 'xml') return format;
  throw new ProblemReply('notOffered', [
    { field: 'format', value: shortened(format), expected: 'json or xml' },
  ]);
}

/** A side of the frame: the usual, or what is allowed where that is less. */
function sizeIn(query: URLSearchParams, name: string, usualPx: number): number {
  const text = query.get(name);
  if (text === null) return usualPx;
  if (!/^[1-9]\d{0,5}$/.test(text)) throw refusal(name, shortened(text), 'a whole number of pixels from 1');
  return Math.min(usualPx, Number(text));
}

function asXml(answer: Oembed): string {
  const fields = Object.entries(answer).map(
    ([name, value]) => `<${name}>${escapeXml(String(value))}</${name}>`,
  );
  return `<?xml version="1.0" encoding="utf-8" standalone="yes"?>\n<oembed>${fields.join('')}</oembed>\n`;
}
