/**
 * The address of the page, with the choices of the play-along in it.
 */
import { carryChosen } from './links.ts';
import { type PlayChoices, writePlayChoices } from './play-choices.ts';
import { playQuery } from './play-keys.ts';

/** What the address chooses now. */
export function here(): URLSearchParams {
  return new URLSearchParams(location.search);
}

/** Writes choices into the address, and into the links of the page. */
export function writeAddress(choices: PlayChoices): void {
  const query = here();
  for (const key of [...playQuery(query).keys()]) query.delete(key);
  const search = new URLSearchParams([...query, ...writePlayChoices(choices)]);
  history.replaceState(null, '', location.pathname + (search.size > 0 ? `?${search}` : '') + location.hash);
  carryChosen(document);
}
