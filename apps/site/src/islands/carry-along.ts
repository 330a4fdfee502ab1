/**
 * What was chosen, on pages that draw nothing: notes are named as chosen, and links carry on what the address
 * chooses.
 */
import { choosesAnything } from './choice-keys.ts';
import { carryLinks } from './links.ts';
import { playQuery } from './play-keys.ts';
import { readerChoices } from './reader-choices.ts';

/** Names the notes and rewrites the links of the page. */
export async function carryAlong(query: URLSearchParams): Promise<void> {
  const choices = readerChoices();
  if (choosesAnything(query) || playQuery(query).size > 0) carryLinks(document, query);
  if (choices.names !== 'english' || choices.accidentals !== 'signs')
    (await import('./naming.ts')).applyNaming(choices);
}
