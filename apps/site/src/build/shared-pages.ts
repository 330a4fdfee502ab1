/**
 * One edition built by several builders at once: each knows all its pages, and renders those that it is given.
 */
import type { AstroIntegration } from 'astro';

/** Asks for the pages of a folder of the site; resolves to whether this builder is to render them. */
export type AskForFolder = (folder: string) => Promise<boolean>;

/** Writes a file of the site, by its address. */
export type WriteFile = (path: string, content: Uint8Array) => void;

/** The page that is shown where there is none. */
const LOST = '/404';

/** What Astro is left to write of a page: those that are ours are written here, in one go. */
const NOTHING = new Response(null);

/** Renders and writes the pages of the folders that this builder is given, and leaves the others out. */
export function sharedPages(ask: AskForFolder, write: WriteFile): AstroIntegration {
  return {
    name: 'shared-pages',
    hooks: {
      'astro:build:start': ({ setPrerenderer }) =>
        setPrerenderer((whole) => ({
          ...whole,
          render: async (request, options) => {
            const path = decodeURI(new URL(request.url).pathname);
            if (!(await ask(folderOf(path)))) return NOTHING;
            const answer = await whole.render(request, options);
            const response = answer instanceof Response ? answer : answer.response;
            const { route, type } = options.routeData;
            if (!response.ok && route !== LOST)
              throw new Error(`${path} cannot be built: it answers ${response.status}`);
            write(type === 'page' ? fileOf(path, route) : path, await response.bytes());
            return NOTHING;
          },
        })),
    },
  };
}

/** What is handed out as one: a mode with its pages on all roots, a family's rounds, a page by itself. */
function folderOf(path: string): string {
  return path.split('/', 3).join('/');
}

/** Where a page is looked for: in a folder of its own; the one for lost readers beside the folders. */
function fileOf(path: string, route: string): string {
  return route === LOST ? path.replace(/\/$/, '.html') : `${path}index.html`;
}
