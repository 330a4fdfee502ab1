/**
 * How a reader names notes when typing: as was chosen, and else as is usual in the language of the page.
 */
import { OWN_NAMING } from '../words/language.ts';
import type { Naming } from '../words/note-names.ts';
import type { Choices } from './choices.ts';

/** The names in which a reader's texts are read first; numbers are degrees and steps wherever scales are meant. */
export function typedNaming({ names }: Pick<Choices, 'names'>): Exclude<Naming, 'numbers'> {
  if (names !== 'english' && names !== 'numbers') return names;
  return OWN_NAMING;
}

/** The names in which a tuning is typed, which may be numbers. */
export function tuningNaming(choices: Pick<Choices, 'names'>): Naming {
  return choices.names === 'numbers' ? 'numbers' : typedNaming(choices);
}
