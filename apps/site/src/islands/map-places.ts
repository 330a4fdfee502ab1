/**
 * The marks of the map as they stand on the page: where each mode is, and which lies next to it.
 */
import { type Mode, neighboursOf, UNIVERSE } from '@stillroot/core';
import type { MapMode } from '../markup/map-panel.ts';

/** A mark and where it is. */
export interface Mark extends MapMode {
  readonly link: SVGAElement;
  readonly family: Element;
  readonly x: number;
  readonly y: number;
}

/** All marks by the ids of their modes, in the order of the page: column by column, bright to dark. */
export function marksOf(map: Element): ReadonlyMap<string, Mark> {
  const marks = [...map.querySelectorAll<SVGAElement>('.family > a[id]')].flatMap((link) => {
    const mode = UNIVERSE.modesById.get(link.id);
    const family = link.parentElement;
    return mode && family ? [[mode.id, markOf(link, mode, family)] as const] : [];
  });
  return new Map(marks);
}

/** The mark that an arrow key leads to; undefined at an edge. */
export function markTowards(key: string, from: Mark, marks: ReadonlyMap<string, Mark>): Mark | undefined {
  const all = [...marks.values()];
  if (key === 'ArrowUp' || key === 'ArrowDown') {
    const column = all.filter(({ family }) => family === from.family);
    return column[column.indexOf(from) + (key === 'ArrowUp' ? -1 : 1)];
  }
  const columns = [...new Set(all.map(({ family }) => family))];
  const at = columns.indexOf(from.family);
  const to = { ArrowLeft: at - 1, ArrowRight: at + 1, Home: 0, End: columns.length - 1 }[key];
  const family = to === undefined ? undefined : columns[to];
  if (!family || family === from.family) return undefined;
  return all
    .filter((mark) => mark.family === family)
    .toSorted((a, b) => Math.abs(a.y - from.y) - Math.abs(b.y - from.y))[0];
}

/** The marks of a mode's neighbours. */
export function marksNextTo({ mode }: Mark, marks: ReadonlyMap<string, Mark>): readonly Mark[] {
  return neighboursOf(mode).flatMap((neighbour) => marks.get(neighbour.mode.id) ?? []);
}

function markOf(link: SVGAElement, mode: Mode, family: Element): Mark {
  const use = link.querySelector('use');
  const [name = '', ...place] = (link.querySelector('title')?.textContent ?? '').split(', ');
  return {
    mode,
    name,
    slug: link.getAttribute('href')?.split('/').at(-2) ?? '',
    place: place.join(', '),
    link,
    family,
    x: Number(use?.getAttribute('x')),
    y: Number(use?.getAttribute('y')),
  };
}
