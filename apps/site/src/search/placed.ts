/**
 * Modes told by their place in a family: `4th mode of harmonic minor`, `harmonic minor mode 4`.
 */
import { placeOf } from './ordinals.ts';
import { wordsOf } from './words-of.ts';

/** A place in a family, as somebody told it. */
export interface Placed {
  /** 1 to 7. */
  readonly place: number;
  /** What names the family, perhaps with the root that the family stands on. */
  readonly parent: readonly string[];
  /** What stands apart from the family: perhaps the root of the mode itself. */
  readonly apart: readonly string[];
}

const MODE_WORDS: ReadonlySet<string> = new Set(['mode', 'modus', 'modo']);

/** What leads from a place to a family. */
const LEADS: ReadonlySet<string> = new Set(['of', 'from', 'the', 'von', 'der', 'des', 'de', 'la', 'del']);

/** What may be said beside a family's name and adds nothing to it. */
const FILLERS: ReadonlySet<string> = new Set(['the', 'der', 'el', 'scale', 'family', 'º', 'ª']);

/** Before a root that is the mode's own. */
const LEADS_TO_ROOT: ReadonlySet<string> = new Set(['in', 'on', 'auf', 'en', 'sobre']);

/**
 * The place that a text tells, and what is left of the text; undefined where it tells none.
 * @example placedIn('4th mode of harmonic minor')   // place 4, parent harmonic minor
 * @example placedIn('A 4th mode of harmonic minor') // the same, and A apart
 */
export function placedIn(text: string): Placed | undefined {
  const words = wordsOf(text).filter((word) => !FILLERS.has(word));
  // `4th of harmonic minor` leaves the mode out.
  if (placeOf(words[0]) !== undefined && words[1] === 'of') words.splice(1, 0, 'mode');
  const at = words.findIndex((word) => MODE_WORDS.has(word));
  if (at < 0) return undefined;
  const placeBefore = placeOf(words[at - 1]);
  const place = placeBefore ?? placeOf(words[at + 1]);
  if (place === undefined) return undefined;
  const before = words.slice(0, placeBefore ? at - 1 : at);
  const after = words.slice(placeBefore ? at + 1 : at + 2);
  const isLed = LEADS.has(after[0] ?? '');
  const rest = after.slice(isLed ? after.findIndex((word) => !LEADS.has(word)) : 0);
  const own = rest.findIndex((word) => LEADS_TO_ROOT.has(word));
  const told = own < 0 ? rest : rest.slice(0, own);
  const apart = own < 0 ? [] : rest.slice(own + 1);
  if (told.length === 0) return { place, parent: before, apart };
  return { place, parent: told, apart: [...before, ...apart] };
}
