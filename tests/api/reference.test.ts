/**
 * The reference for people: one page, whole without a script, that says of every answer what it holds.
 */
import { createHash } from 'node:crypto';
import { openApiDocument } from '@stillroot/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ask, type Served, serve } from './server.ts';

const ORIGIN = 'https://scales.example.org';
let served: Served;
let text = '';
beforeAll(async () => {
  served = await serve({ origin: ORIGIN });
  ({ text } = await ask(served.origin, '/v1/docs'));
});
afterAll(() => served.close());

test('the reference is one page without scripts, and its style is the only one that is allowed', async () => {
  const { status, type, headers } = await ask(served.origin, '/v1/docs', {
    headers: { accept: 'text/html' },
  });
  expect([status, type]).toEqual([200, 'text/html; charset=utf-8']);
  expect(text.replaceAll(ORIGIN, '')).not.toMatch(
    /<script|\son\w+=|style="|<link|<img|@import|url\(|https?:\/\//,
  );
  const [, style = ''] = /<style>(.*?)<\/style>/s.exec(text) ?? [];
  const digest = createHash('sha256').update(style).digest('base64');
  expect(headers.get('content-security-policy')).toContain(`style-src 'sha256-${digest}'`);
  const links = [...text.matchAll(/Try: <a href="([^"]+)"/g)].map((one) =>
    (one[1] ?? '').replaceAll('&amp;', '&'),
  );
  expect(links.length).toBeGreaterThan(20);
  for (const link of links) expect((await ask(served.origin, link)).status, link).toBe(200);
  for (const path of ['/v1', '/v1/']) expect((await ask(served.origin, path)).text).toBe(text);
});

test('every link within it leads somewhere, and no place has the name of another', () => {
  const ids = [...text.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
  const targets = [...text.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id);
  expect(targets.length).toBeGreaterThan(50);
  expect(targets.filter((target) => !ids.includes(target))).toEqual([]);
  expect(new Set(ids).size).toBe(ids.length);
});

test('every field that an answer has is told with what it is', () => {
  const fields = fieldsOf(openApiDocument());
  expect(fields.length).toBeGreaterThan(150);
  for (const [name, description] of fields) {
    const told = `<dt><code>${name}</code>`;
    expect(text, name).toContain(told);
    expect(description, name).toMatch(/.{4}/);
  }
});

test('its samples are for the place where the server is found', () => {
  expect(text).toContain(
    `curl --silent --show-error --fail &#39;${ORIGIN}/v1/modes/phrygian-dominant/A&#39;`,
  );
  expect(text).not.toContain('127.0.0.1');
});

/** The fields in all schemas of answers, with their descriptions or those of what they refer to. */
function fieldsOf(document: Readonly<Record<string, unknown>>): readonly [string, string][] {
  const { components, paths } = document as {
    components: { schemas: Record<string, Schema> };
    paths: Record<
      string,
      { get?: { responses: Record<string, { content?: Record<string, { schema: Schema }> }> } }
    >;
  };
  const whole = Object.values(paths).flatMap(
    ({ get }) => get?.responses['200']?.content?.['application/json']?.schema ?? [],
  );
  const within = (schema: Schema): [string, string][] => [
    ...Object.entries(schema.properties ?? {}).flatMap(([name, part]): [string, string][] => [
      [name, part.description ?? components.schemas[part.$ref?.split('/').at(-1) ?? '']?.description ?? ''],
      ...within(part),
    ]),
    ...(schema.items ? within(schema.items) : []),
    ...(schema.anyOf ?? []).flatMap(within),
  ];
  return [...whole, ...Object.values(components.schemas)].flatMap(within);
}

interface Schema {
  readonly $ref?: string;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
}
