import type { AstroPrerenderer, RouteData } from 'astro';
import { expect, test } from 'vitest';
import { sharedPages } from './shared-pages.ts';

const routeOf = (path: string): RouteData =>
  ({
    route: path.replace(/\/$/, ''),
    type: path.endsWith('/') ? 'page' : 'endpoint',
  }) as RouteData;

/** Renders some addresses with a builder that is given some folders; what it asked for, and what it wrote. */
async function build(
  paths: readonly string[],
  given: readonly string[],
  answer = (path: string) => new Response(`at ${path}`),
) {
  const asked: string[] = [];
  const written = new Map<string, string>();
  const whole: AstroPrerenderer = {
    name: 'whole',
    getStaticPaths: async () => [],
    render: async ({ url }) => answer(new URL(url).pathname),
  };
  const made: AstroPrerenderer[] = [];
  const { hooks } = sharedPages(
    async (folder) => {
      asked.push(folder);
      return given.includes(folder);
    },
    (path, content) => {
      written.set(path, new TextDecoder().decode(content));
    },
  );
  await hooks['astro:build:start']?.({
    setPrerenderer: (make) => {
      made.push(typeof make === 'function' ? make(whole) : make);
    },
    // Nothing is logged.
    logger: undefined as never,
  });
  const left: unknown[] = [];
  for (const path of paths) {
    const rendered = await made[0]?.render(new Request(`http://site${path}`), { routeData: routeOf(path) });
    left.push(rendered instanceof Response ? rendered.body : rendered);
  }
  return { asked, written, left };
}

test('pages are written where they are looked for, and nothing is left to write', async () => {
  const paths = ['/', '/map/', '/modes/dorian/a/', '/de/map/', '/data/search.json', '/404/'];
  const { written, left } = await build(paths, [
    '/',
    '/map/',
    '/modes/dorian',
    '/de/map',
    '/data/search.json',
    '/404/',
  ]);
  expect([...written]).toEqual([
    ['/index.html', 'at /'],
    ['/map/index.html', 'at /map/'],
    ['/modes/dorian/a/index.html', 'at /modes/dorian/a/'],
    ['/de/map/index.html', 'at /de/map/'],
    ['/data/search.json', 'at /data/search.json'],
    ['/404.html', 'at /404/'],
  ]);
  expect(left).toEqual(paths.map(() => null));
});

test('what another builder was given is left out: a mode with its roots, a family with its rounds', async () => {
  const paths = [
    '/modes/dorian/',
    '/modes/dorian/a/',
    '/modes/lydian/a/',
    '/rounds/major/a/',
    '/rounds/major/b/',
  ];
  const { asked, written, left } = await build(paths, ['/modes/lydian', '/rounds/major']);
  expect(asked).toEqual([
    '/modes/dorian',
    '/modes/dorian',
    '/modes/lydian',
    '/rounds/major',
    '/rounds/major',
  ]);
  expect([...written.keys()]).toEqual([
    '/modes/lydian/a/index.html',
    '/rounds/major/a/index.html',
    '/rounds/major/b/index.html',
  ]);
  expect(left).toEqual(paths.map(() => null));
});

test.each([301, 404, 500])('a page that answers %i stops the build', async (status) => {
  const refused = build(['/map/'], ['/map/'], () => new Response('', { status }));
  await expect(refused).rejects.toThrow(`/map/ cannot be built: it answers ${status}`);
});

test('the page for lost readers may say that it is not found', async () => {
  const { written } = await build(['/404/'], ['/404/'], () => new Response('lost', { status: 404 }));
  expect([...written]).toEqual([['/404.html', 'lost']]);
});
