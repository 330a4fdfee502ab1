/**
 * What an address that leads nowhere seems to have meant, as it would be typed into the search.
 */
import { parseRoot } from '@stillroot/core';

/** Rooms of the site, which say what kind of thing is meant but not which. */
const ROOMS = new Set(['modes', 'families', 'rounds', 'instruments', 'compare', 'routes', 'map', 'search']);

/**
 * The words of an address, with the root last where there is one.
 * @example askedByAddress('/modes/dorain-sharp4/f-sharp/') // 'dorain sharp4 in F#'
 */
export function askedByAddress(path: string): string {
  const [first = '', ...others] = path.split('/').filter((part) => part !== '' && !ROOMS.has(part));
  const name = decoded(first)
    .replace(/\.html?$/, '')
    .replaceAll(/[-_+]/g, ' ')
    .trim();
  const root = parseRoot(others[0] ?? '');
  return root.ok && name !== '' ? `${name} in ${root.value.name}` : name;
}

/** Without its percent signs; an address may hold some that encode nothing. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
