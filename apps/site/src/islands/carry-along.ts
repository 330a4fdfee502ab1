/**
 * What was chosen, on pages that draw nothing: notes are named as chosen, and links carry on what the address
 * chooses.
 */
import { choosesAnything } from './choice-keys.ts';
import { readChoices } from './choices.ts';
import { carryLinks } from './links.ts';
import { recall } from './memory.ts';
import { playQuery } from './play-keys.ts';

/** Names the notes and rewrites the links of the page. */
export async function carryAlong(query: URLSearchParams): Promise<void> {
  const isChosen = choosesAnything(query);
  const choices = readChoices(isChosen ? query : recall());
  if (isChosen || playQuery(query).size > 0) carryLinks(document, query);
  if (choices.names !== 'english' || choices.accidentals !== 'signs')
    (await import('./naming.ts')).applyNaming(choices);
}
