/**
 * Links that carry choices along, so that a bassist stays a bassist.
 */
import { CHOICE_KEYS } from './choice-keys.ts';
import { carryChoices } from './choices.ts';
import { playQuery } from './play-keys.ts';

const plain = new WeakMap<HTMLAnchorElement, string>();

/** Rewrites the links of this site below `inside`, each from what it said at first; a lesson's stay as they are. */
export function carryLinks(inside: ParentNode, query: URLSearchParams): void {
  const chosen = [...query].filter(([key]) => CHOICE_KEYS.some((one) => one === key));
  const choices = new URLSearchParams([...chosen, ...playQuery(query)]);
  for (const link of inside.querySelectorAll<HTMLAnchorElement>('a[href^="/"]:not([data-exact])')) {
    const href = plain.get(link) ?? link.getAttribute('href') ?? '';
    plain.set(link, href);
    link.setAttribute('href', carryChoices(href, choices, location.origin));
  }
}

/** Links below `inside` carry what the address chooses. */
export function carryChosen(inside: ParentNode): void {
  carryLinks(inside, new URLSearchParams(location.search));
}

/** A query in which a link has chosen as well. */
export function chosenBy(link: HTMLAnchorElement, query: URLSearchParams): URLSearchParams {
  const chosen = new URLSearchParams(query);
  for (const [key, value] of new URL(link.href).searchParams) chosen.set(key, value);
  return chosen;
}

/** In a frame of another site, links to pages open beside it. */
export function openOutside(inside: ParentNode): void {
  for (const link of inside.querySelectorAll<HTMLAnchorElement>('a[href^="/"]')) link.target = '_blank';
}
